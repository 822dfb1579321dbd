// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/shell/folding_row.hpp"

#include <QBoxLayout>
#include <QEvent>

#include <algorithm>

namespace quarterstep
{

FoldingRow::FoldingRow(QWidget* parent)
    : QWidget(parent), parts_(new QBoxLayout(QBoxLayout::LeftToRight, this))
{
    parts_->setContentsMargins(0, 0, 0, 0);
    parts_->setSpacing(10);
}

void FoldingRow::add(QWidget* part, int stretch, int least)
{
    parts_->addWidget(part, stretch);
    least_.push_back(least);
}

/// As narrow as its widest part, since it can fold.
QSize FoldingRow::minimumSizeHint() const
{
    int widest = 0;
    for (int at = 0; at < parts_->count(); ++at)
        if (!parts_->itemAt(at)->isEmpty())
            widest = std::max(widest, parts_->itemAt(at)->minimumSize().width());
    return {widest, parts_->totalMinimumSize().height()};
}

bool FoldingRow::event(QEvent* event)
{
    const bool done = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest)
        fold();
    return done;
}

void FoldingRow::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fold();
}

void FoldingRow::fold()
{
    int needed = 0;
    for (int at = 0; at < parts_->count(); ++at)
        if (!parts_->itemAt(at)->isEmpty())
            needed +=
                std::max(parts_->itemAt(at)->minimumSize().width(), least_[static_cast<std::size_t>(at)]) +
                parts_->spacing();
    const auto direction =
        needed - parts_->spacing() <= width() ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom;
    if (direction != parts_->direction())
        parts_->setDirection(direction);
    // Said outright: words that wrap need more height where it is narrow, and whoever scrolls this asks for
    // the least height only.
    setMinimumHeight(std::max(parts_->totalMinimumSize().height(), parts_->totalHeightForWidth(width())));
}

} // namespace quarterstep
