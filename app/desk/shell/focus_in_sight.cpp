// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/shell/focus_in_sight.hpp"

#include <QApplication>
#include <QScrollArea>
#include <QScrollBar>

#include <algorithm>

namespace quarterstep
{

namespace
{
/// All of it, with the line of words above it where there is room: the area itself would be content with the
/// place of the cursor. What is higher than the area begins at its top.
void bringIntoSight(QScrollArea& area, const QWidget& widget)
{
    const QRect place(widget.mapTo(area.widget(), QPoint(0, 0)), widget.size());
    const int room = area.viewport()->height() - place.height();
    if (room < 0)
        return area.verticalScrollBar()->setValue(place.top());
    area.ensureVisible(place.center().x(), place.center().y(), (place.width() + 1) / 2 + 4,
                       (place.height() + 1) / 2 + std::min(room / 2, widget.fontMetrics().height() + 4));
}
} // namespace

void keepFocusInSight(QWidget& window)
{
    QObject::connect(qApp, &QApplication::focusChanged, &window, [&window](QWidget*, QWidget* now) {
        if (!now || now->window() != &window)
            return;
        for (auto* around = now->parentWidget(); around; around = around->parentWidget())
            if (auto* area = qobject_cast<QScrollArea*>(around); area && area->widget()->isAncestorOf(now))
                bringIntoSight(*area, *now);
    });
}

} // namespace quarterstep
