// SPDX-License-Identifier: GPL-3.0-or-later
// Parts beside each other with a border that can be moved, or below each other where the window is too narrow
// for the letters.
#pragma once

#include <QSplitter>

#include <vector>

namespace quarterstep
{

class FoldingSplitter final : public QSplitter
{
    Q_OBJECT

  public:
    explicit FoldingSplitter(QWidget* parent = nullptr);

    /// @param stretch     how much of the room it takes beside the others
    /// @param characters  where it would have less width than these beside the others, they fold
    void add(QWidget* part, int stretch, int characters);
    /// As narrow as its widest part, since it can fold.
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fold();
    [[nodiscard]] int leastHeight(int part) const;

    std::vector<int> characters_; ///< of each part
};

} // namespace quarterstep
