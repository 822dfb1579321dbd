// SPDX-License-Identifier: GPL-3.0-or-later
// Scroll bars, the arrows of fields for numbers and of sorted columns: those of the style below do not stand
// out from what is around them (WCAG 2.2, 1.4.11: 3 : 1).
#include "app/desk/desk_style.hpp"
#include "app/desk/theme.hpp"

#include <QPainter>
#include <QSpinBox>
#include <QStyleOption>

#include <algorithm>
#include <tuple>

namespace quarterstep
{

namespace
{
/// A filled arrow in the middle of its place.
/// @param towards  (-1, 0) left, (1, 0) right, (0, -1) up, (0, 1) down
void drawArrow(QPainter& painter, const QRectF& place, QPointF towards, const QColor& colour)
{
    const double room = std::min(place.width(), place.height()) / 2.0 - 1.0;
    const double half = std::min(std::max(3.5, painter.fontMetrics().height() / 5.0), room); // pixels
    const QPointF across(towards.y(), towards.x());
    const auto middle = place.center();
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(QPolygonF{middle + towards * half * 0.6,
                                  middle - towards * half * 0.6 + across * half,
                                  middle - towards * half * 0.6 - across * half});
}
} // namespace

/// Which column a list is sorted by, and which way.
void DeskStyle::drawSortArrow(const QStyleOptionHeader& header, QPainter& painter)
{
    const bool down = header.sortIndicator == QStyleOptionHeader::SortDown;
    if (header.sortIndicator == QStyleOptionHeader::None)
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    drawArrow(painter, QRectF(header.rect), {0.0, down ? 1.0 : -1.0}, coloursOf(themeNow()).text);
    painter.restore();
}

void DeskStyle::drawScrollBar(const QStyleOptionSlider& bar, QPainter& painter, const QWidget* widget) const
{
    const auto colours = coloursOf(themeNow());
    const auto part = [&](SubControl control) {
        return QRectF(proxy()->subControlRect(CC_ScrollBar, &bar, control, widget));
    };
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(bar.rect, colours.window);
    const auto middle = QRectF(bar.rect).center();
    for (const auto control : {SC_ScrollBarSubLine, SC_ScrollBarAddLine}) {
        const auto place = part(control);
        const auto way = bar.orientation == Qt::Horizontal
                             ? QPointF(place.center().x() < middle.x() ? -1.0 : 1.0, 0.0)
                             : QPointF(0.0, place.center().y() < middle.y() ? -1.0 : 1.0);
        drawArrow(painter, place, way, colours.muted);
    }
    const bool held = bar.activeSubControls.testFlag(SC_ScrollBarSlider) &&
                      (bar.state.testFlag(State_Sunken) || bar.state.testFlag(State_MouseOver));
    painter.setPen(Qt::NoPen);
    painter.setBrush(held ? colours.accent : colours.muted);
    if (bar.maximum > bar.minimum)
        painter.drawRoundedRect(part(SC_ScrollBarSlider).adjusted(2, 2, -2, -2), 4, 4);
    painter.restore();
}

void DeskStyle::drawSpinBox(const QStyleOptionSpinBox& box, QPainter& painter, const QWidget* widget) const
{
    const auto colours = coloursOf(themeNow());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(box.state.testFlag(State_Enabled) ? colours.base : colours.window);
    painter.drawRoundedRect(QRectF(box.rect).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    for (const auto& [control, step, way] :
         {std::tuple{SC_SpinBoxUp, QAbstractSpinBox::StepUpEnabled, -1.0},
          std::tuple{SC_SpinBoxDown, QAbstractSpinBox::StepDownEnabled, 1.0}}) {
        const auto place = QRectF(proxy()->subControlRect(CC_SpinBox, &box, control, widget));
        if (box.buttonSymbols == QAbstractSpinBox::NoButtons)
            break;
        const bool pressed = box.activeSubControls.testFlag(control) && box.state.testFlag(State_Sunken);
        const bool can = box.stepEnabled.testFlag(step) && box.state.testFlag(State_Enabled);
        drawArrow(painter, place, {0.0, way}, pressed ? colours.accent : can ? colours.text : colours.border);
    }
    drawOutline(box, painter);
    painter.restore();
}

} // namespace quarterstep
