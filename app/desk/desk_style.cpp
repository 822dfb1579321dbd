// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/desk_style.hpp"

#include "app/desk/theme.hpp"

#include <QPainter>
#include <QStyleFactory>
#include <QStyleOption>

namespace quarterstep
{

DeskStyle::DeskStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

void DeskStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                              const QWidget* widget) const
{
    if (element != PE_IndicatorCheckBox) {
        QProxyStyle::drawPrimitive(element, option, painter, widget);
        return;
    }
    const auto colours = coloursOf(themeNow());
    const bool focused = option->state.testFlag(State_HasFocus);
    const QRectF box = QRectF(option->rect).adjusted(1.5, 1.5, -1.5, -1.5);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(focused ? colours.accent : colours.muted, focused ? 2.0 : 1.2));
    painter->setBrush(colours.base);
    painter->drawRoundedRect(box, 2.5, 2.5);
    if (option->state.testFlag(State_On)) {
        painter->setPen(QPen(colours.accent, 2.2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        const auto at = [&box](double x, double y) {
            return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
        };
        painter->drawPolyline(QPolygonF{at(0.2, 0.55), at(0.42, 0.78), at(0.82, 0.25)});
    }
    painter->restore();
}

void DeskStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                   QPainter* painter, const QWidget* widget) const
{
    if (control != CC_ComboBox) {
        QProxyStyle::drawComplexControl(control, option, painter, widget);
        return;
    }
    const auto colours = coloursOf(themeNow());
    const bool focused = option->state.testFlag(State_HasFocus);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(focused ? colours.accent : colours.muted, focused ? 2.0 : 1.0));
    painter->setBrush(colours.base);
    painter->drawRoundedRect(QRectF(option->rect).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    const auto place = visualRect(option->direction, option->rect,
                                  {option->rect.right() - 18, option->rect.top(), 14, option->rect.height()});
    const auto middle = QRectF(place).center();
    painter->setPen(QPen(colours.text, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->drawPolyline(
        QPolygonF{middle + QPointF(-4, -2), middle + QPointF(0, 2.5), middle + QPointF(4, -2)});
    painter->restore();
}

} // namespace quarterstep
