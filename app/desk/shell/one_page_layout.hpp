// SPDX-License-Identifier: GPL-3.0-or-later
// Pages of which one is shown, as large as that one asks for: those out of sight ask for no room, neither for
// height at a width, which a stacked widget of Qt always takes from the tallest.
#pragma once

#include <QStackedLayout>

namespace quarterstep
{

class OnePageLayout final : public QStackedLayout
{
  public:
    using QStackedLayout::QStackedLayout;

    [[nodiscard]] QSize minimumSize() const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override;
    [[nodiscard]] int heightForWidth(int width) const override;

  private:
    [[nodiscard]] QLayoutItem* shown() const { return itemAt(currentIndex()); }
};

} // namespace quarterstep
