// SPDX-License-Identifier: GPL-3.0-or-later
// Parts beside each other, or below each other where the window is too narrow for the letters.
#pragma once

#include <QWidget>

#include <vector>

class QBoxLayout;

namespace quarterstep
{

class FoldingRow final : public QWidget
{
    Q_OBJECT

  public:
    explicit FoldingRow(QWidget* parent = nullptr);

    /// @param stretch  how much of the room it takes beside the others
    /// @param least    pixels; where it would get less beside the others, the row folds
    void add(QWidget* part, int stretch = 1, int least = 0);
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fold();

    QBoxLayout* parts_;
    std::vector<int> least_; ///< of each part
};

} // namespace quarterstep
