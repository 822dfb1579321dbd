// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/shell/wrap_layout.hpp"

#include <QStyle>
#include <QWidget>

#include <algorithm>

namespace quarterstep
{

WrapLayout::~WrapLayout()
{
    qDeleteAll(items_);
}

QLayoutItem* WrapLayout::takeAt(int index)
{
    return index >= 0 && index < count() ? items_.takeAt(index) : nullptr;
}

bool WrapLayout::shown(int index) const
{
    return !items_[index]->isEmpty();
}

QList<WrapLayout::Line> WrapLayout::linesIn(int width) const
{
    for (qsizetype gone = 0; gone <= mayGo_.size(); ++gone)
        if (auto lines = linesWithout(gone, width); lines.size() == 1)
            return lines;
    return linesWithout(0, width);
}

/// Without the first `gone` of what may go.
QList<WrapLayout::Line> WrapLayout::linesWithout(qsizetype gone, int width) const
{
    const int gap = std::max(0, spacing());
    QList<Line> lines{{}};
    for (int index = 0; index < count(); ++index) {
        if (const auto at = mayGo_.indexOf(index); !shown(index) || (at >= 0 && at < gone))
            continue;
        const auto size = items_[index]->sizeHint();
        const int needed = lines.back().items.isEmpty() ? size.width() : gap + size.width();
        if (!lines.back().items.isEmpty() && lines.back().width + needed > width)
            lines.append({{}, -gap, 0});
        auto& line = lines.back();
        line.width += line.items.isEmpty() && lines.size() == 1 ? size.width() : gap + size.width();
        line.height = std::max(line.height, size.height());
        line.items.append(index);
    }
    return lines;
}

int WrapLayout::heightForWidth(int width) const
{
    const auto margins = contentsMargins();
    int height = margins.top() + margins.bottom() - std::max(0, spacing());
    for (const auto& line : linesIn(width - margins.left() - margins.right()))
        height += line.height + std::max(0, spacing());
    return height;
}

QSize WrapLayout::sizeHint() const
{
    const auto margins = contentsMargins();
    int width = 0;
    int height = 0;
    for (const auto& line : linesIn(QWIDGETSIZE_MAX)) {
        width = std::max(width, line.width);
        height = std::max(height, line.height);
    }
    return {width + margins.left() + margins.right(), height + margins.top() + margins.bottom()};
}

QSize WrapLayout::minimumSize() const
{
    QSize least;
    for (int index = 0; index < count(); ++index)
        if (shown(index))
            least = least.expandedTo(items_[index]->minimumSize());
    const auto margins = contentsMargins();
    return least + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

void WrapLayout::setGeometry(const QRect& area)
{
    QLayout::setGeometry(area);
    const auto inside = area.marginsRemoved(contentsMargins());
    const auto direction = parentWidget() ? parentWidget()->layoutDirection() : Qt::LeftToRight;
    int y = inside.top();
    for (const int index : mayGo_)
        items_[index]->setGeometry({});
    for (const auto& line : linesIn(inside.width())) {
        int x = inside.left();
        bool moved = false;
        for (const int index : line.items) {
            if (trailing_ >= 0 && index >= trailing_ && !moved) {
                x += std::max(0, inside.width() - line.width);
                moved = true;
            }
            const auto size = items_[index]->sizeHint();
            const QRect place(x, y, std::min(size.width(), inside.width()), line.height);
            items_[index]->setGeometry(QStyle::visualRect(direction, inside, place));
            x += size.width() + std::max(0, spacing());
        }
        y += line.height + std::max(0, spacing());
    }
    // Said outright, since whoever lays out the parent may remember the height of another moment.
    if (auto* around = parentWidget(); around && around->minimumHeight() != heightForWidth(area.width()))
        around->setMinimumHeight(heightForWidth(area.width()));
}

} // namespace quarterstep
