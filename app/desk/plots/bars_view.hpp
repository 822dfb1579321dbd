// SPDX-License-Identifier: GPL-3.0-or-later
// Paints bars with their names and figures, one a row; in a right-to-left language from the right. What a bar
// is is told by its filling and by the sign of its figure; the table beside it holds the same rows.
#pragma once

#include "app/desk/plots/share_bars.hpp"

#include <QWidget>

namespace quarterstep
{

class BarsView final : public QWidget
{
    Q_OBJECT

  public:
    explicit BarsView(const QString& name, QWidget* parent = nullptr);

    void show(const ShareBars& picture);
    [[nodiscard]] const ShareBars& picture() const { return picture_; }
    /// Where the bar of a row is painted; empty beyond the rows.
    [[nodiscard]] QRect barRect(int row) const;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool event(QEvent* event) override;

  private:
    [[nodiscard]] int rowHeight() const;
    [[nodiscard]] int figureWidth() const;
    /// Part of a row that the bars share, as left to right.
    [[nodiscard]] QRect field(int row) const;
    [[nodiscard]] int placeOf(double value, const QRect& field) const;
    void paintRow(QPainter& painter, int row) const;
    void paintBar(QPainter& painter, const ShareBar& bar, const QRect& place) const;

    ShareBars picture_;
};

} // namespace quarterstep
