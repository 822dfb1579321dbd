// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/shell/folding_splitter.hpp"

#include <QEvent>
#include <QLayout>

#include <algorithm>

namespace quarterstep
{

FoldingSplitter::FoldingSplitter(QWidget* parent) : QSplitter(Qt::Horizontal, parent)
{
    constexpr int border = 8; // pixels
    setHandleWidth(border);
    setChildrenCollapsible(false);
}

void FoldingSplitter::add(QWidget* part, int stretch, int characters)
{
    addWidget(part);
    setStretchFactor(count() - 1, stretch);
    characters_.push_back(characters);
}

QSize FoldingSplitter::minimumSizeHint() const
{
    int widest = 0;
    for (int at = 0; at < count(); ++at)
        widest = std::max(widest, widget(at)->minimumSizeHint().width());
    return {widest, QSplitter::minimumSizeHint().height()};
}

bool FoldingSplitter::event(QEvent* event)
{
    const bool done = QSplitter::event(event);
    if (event->type() == QEvent::LayoutRequest)
        fold();
    return done;
}

void FoldingSplitter::resizeEvent(QResizeEvent* event)
{
    fold();
    QSplitter::resizeEvent(event);
}

/// Of a part as wide as this; words that wrap need more where it is narrow.
int FoldingSplitter::leastHeight(int part) const
{
    const auto* layout = widget(part)->layout();
    const int wrapped =
        layout && layout->hasHeightForWidth() ? layout->totalMinimumHeightForWidth(width()) : 0;
    return std::max(wrapped, widget(part)->minimumSizeHint().height());
}

void FoldingSplitter::fold()
{
    int needed = (count() - 1) * handleWidth();
    for (int at = 0; at < count(); ++at)
        needed += std::max(widget(at)->minimumSizeHint().width(),
                           characters_[static_cast<std::size_t>(at)] * fontMetrics().averageCharWidth());
    const auto direction = needed <= width() ? Qt::Horizontal : Qt::Vertical;
    if (direction != orientation())
        setOrientation(direction);
    // From right to left the base places each part one pixel too far to the right: its border is cut there.
    const QMargins around(0, 0, isRightToLeft() && direction == Qt::Horizontal ? 1 : 0, 0);
    if (contentsMargins() != around)
        setContentsMargins(around);
    int least = 0; // beside each other they share the height there is
    for (int at = 0; at < count(); ++at) {
        const int height = direction == Qt::Vertical ? leastHeight(at) : 0;
        widget(at)->setMinimumHeight(height); // the splitter asks for no height by width
        least += height > 0 ? height + handleWidth() : 0;
    }
    if (minimumHeight() != least)
        setMinimumHeight(least); // said outright: whoever scrolls this asks for the least height only
}

} // namespace quarterstep
