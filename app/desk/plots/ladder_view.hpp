// SPDX-License-Identifier: GPL-3.0-or-later
// Paints the stock ladder. It shows a LadderData; the table of lines holds the same numbers.
#pragma once

#include "app/desk/plots/ladder_data.hpp"
#include "app/desk/theme.hpp"

#include <QWidget>

class QCustomPlot;

namespace quarterstep
{

class LadderView final : public QWidget
{
    Q_OBJECT

  public:
    explicit LadderView(QWidget* parent = nullptr);

    void show(const LadderData& ladder);
    void restyle();

  Q_SIGNALS:
    /// Somebody clicked on a rung.
    void powerChosen(double power);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void draw();
    /// As many powers written below the axis as have room beside each other.
    void spacePowers();
    void tellAbout(QPoint place);
    [[nodiscard]] const Rung* rungAt(QPoint place) const;

    QCustomPlot* plot_;
    LadderData ladder_;
};

} // namespace quarterstep
