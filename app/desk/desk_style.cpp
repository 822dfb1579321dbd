// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/desk_style.hpp"

#include "app/desk/theme.hpp"

#include <QPainter>
#include <QPushButton>
#include <QStyleFactory>
#include <QStyleOption>
#include <QWidget>

#include <algorithm>

namespace quarterstep
{

DeskStyle::DeskStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

/// Enter presses the button that has the keyboard, as Space does.
void DeskStyle::polish(QWidget* widget)
{
    if (auto* button = qobject_cast<QPushButton*>(widget))
        button->setAutoDefault(true);
    QProxyStyle::polish(widget);
}

void DeskStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                              const QWidget* widget) const
{
    if (element == PE_FrameFocusRect)
        return drawFocus(*option, *painter);
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

/// Around a tab, the words beside a box to tick, a slider: where the keyboard is, whoever put it there.
void DeskStyle::drawFocus(const QStyleOption& option, QPainter& painter)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(coloursOf(themeNow()).accent, 2.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(option.rect).adjusted(1, 1, -1, -1), 3, 3);
    painter.restore();
}

/// The style below draws the place of the keyboard on a tab itself, too faintly to be seen.
void DeskStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                            const QWidget* widget) const
{
    const auto* tab = qstyleoption_cast<const QStyleOptionTab*>(option);
    if (element != CE_TabBarTabLabel || !tab || !tab->state.testFlag(State_HasFocus))
        return QProxyStyle::drawControl(element, option, painter, widget);
    auto plain = *tab;
    plain.state.setFlag(State_HasFocus, false);
    QProxyStyle::drawControl(element, &plain, painter, widget);
    plain.rect.adjust(2, 2, -2, -2);
    drawFocus(plain, *painter);
}

/// Boxes to tick grow with the letters beside them.
int DeskStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const
{
    const int usual = QProxyStyle::pixelMetric(metric, option, widget);
    if (metric != PM_IndicatorWidth && metric != PM_IndicatorHeight)
        return usual;
    return widget ? std::max(usual, widget->fontMetrics().ascent() + 2) : usual;
}

/// Whatever is pressed or chosen is at least as large as a fingertip needs: WCAG 2.2, 2.5.8.
QSize DeskStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                  const QWidget* widget) const
{
    constexpr int leastTarget = 24;
    const auto usual = QProxyStyle::sizeFromContents(type, option, size, widget);
    const bool pressed = type == CT_CheckBox || type == CT_RadioButton || type == CT_ComboBox ||
                         type == CT_PushButton || type == CT_ToolButton || type == CT_TabBarTab;
    return pressed ? usual.expandedTo({leastTarget, leastTarget}) : usual;
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
    const double line = focused ? 2.0 : 1.0; // whole pixels: its middle lies half of it inside
    const double inset = line / 2.0;
    painter->setPen(QPen(focused ? colours.accent : colours.muted, line));
    painter->setBrush(colours.base);
    painter->drawRoundedRect(QRectF(option->rect).adjusted(inset, inset, -inset, -inset), 4, 4);
    const auto place = visualRect(option->direction, option->rect,
                                  {option->rect.right() - 18, option->rect.top(), 14, option->rect.height()});
    const auto middle = QRectF(place).center();
    painter->setPen(QPen(colours.text, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->drawPolyline(
        QPolygonF{middle + QPointF(-4, -2), middle + QPointF(0, 2.5), middle + QPointF(4, -2)});
    painter->restore();
}

} // namespace quarterstep
