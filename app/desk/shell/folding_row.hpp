// SPDX-License-Identifier: GPL-3.0-or-later
// Parts beside each other, or below each other where the window is too narrow for the letters.
#pragma once

#include <QWidget>

class QBoxLayout;

namespace quarterstep
{

class FoldingRow final : public QWidget
{
    Q_OBJECT

  public:
    explicit FoldingRow(QWidget* parent = nullptr);

    /// @param stretch  how much of the room it takes beside the others
    void add(QWidget* part, int stretch = 1);
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fold();

    QBoxLayout* parts_;
};

} // namespace quarterstep
