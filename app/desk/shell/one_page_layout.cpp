// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/shell/one_page_layout.hpp"

namespace quarterstep
{

QSize OnePageLayout::minimumSize() const
{
    return shown() ? shown()->minimumSize() : QSize();
}

QSize OnePageLayout::sizeHint() const
{
    return shown() ? shown()->sizeHint() : QSize();
}

bool OnePageLayout::hasHeightForWidth() const
{
    return shown() && shown()->hasHeightForWidth();
}

int OnePageLayout::heightForWidth(int width) const
{
    return shown() ? shown()->heightForWidth(width) : -1;
}

} // namespace quarterstep
