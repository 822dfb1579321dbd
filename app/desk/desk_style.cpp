// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/desk_style.hpp"

#include "app/desk/theme.hpp"

#include <QGuiApplication>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QStyleFactory>
#include <QStyleOption>
#include <QTextLayout>
#include <QTextOption>
#include <QWidget>

#include <algorithm>

namespace quarterstep
{

DeskStyle::DeskStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

/// Pixels by which letters that carry a sign reach above what their font says of its height: Arabic ones, and
/// in the title of the first page, which is twice as large as the rest, those of Devanagari.
int DeskStyle::aboveTheLine(const QLabel& label)
{
    const bool banner = label.property("role").toString() == QLatin1String("banner");
    const bool arabic = QGuiApplication::isRightToLeft();
    const auto text = label.text();
    const auto devanagari = [](QChar letter) { return letter.script() == QChar::Script_Devanagari; };
    if (!arabic && !(banner && std::any_of(text.begin(), text.end(), devanagari)))
        return 0;
    const auto highest =
        arabic ? QString(QChar(0x0623)) : QStringLiteral("\u0915\u094C"); // alef with hamza; kau
    const auto letters = label.fontMetrics();
    const int above = -letters.tightBoundingRect(highest).top() - letters.ascent() + 1;
    return std::max(0, banner ? 2 * above : above);
}

/// Enter presses the button that has the keyboard, as Space does. A label does not cut signs off its letters.
void DeskStyle::polish(QWidget* widget)
{
    if (auto* button = qobject_cast<QPushButton*>(widget))
        button->setAutoDefault(true);
    if (auto* label = qobject_cast<QLabel*>(widget))
        if (const int above = aboveTheLine(*label); above > 0)
            label->setContentsMargins(0, above, 0, 0);
    QProxyStyle::polish(widget);
}

void DeskStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                              const QWidget* widget) const
{
    if (element == PE_FrameFocusRect) {
        if (const auto* button = qobject_cast<const QPushButton*>(widget))
            drawRing(*button, *painter);
        else
            drawFocus(*option, *painter);
        return;
    }
    if (const auto* header = qstyleoption_cast<const QStyleOptionHeader*>(option);
        element == PE_IndicatorHeaderArrow && header)
        return drawSortArrow(*header, *painter);
    if (element == PE_PanelScrollAreaCorner)
        return painter->fillRect(option->rect, coloursOf(themeNow()).window);
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

/// In a filled button, whose border has the colour of its ground; that of the others says it.
void DeskStyle::drawRing(const QPushButton& button, QPainter& painter)
{
    if (!button.isChecked() && !button.property("primary").toBool())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(coloursOf(themeNow()).accentText, 2.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(button.rect()).adjusted(3, 3, -3, -3), 3, 3);
    painter.restore();
}

/// Words that begin with the name of a line are words of the window's language all the same: in a window from
/// right to left they are laid out so, and begin at its right. A name alone begins there too, as it reads.
int DeskStyle::flagsFor(int flags, const QString& text, const QPainter& painter)
{
    const bool plain = (flags & Qt::TextForceLeftToRight) != 0 && QGuiApplication::isRightToLeft();
    const auto turns = [](QChar letter) {
        return letter.direction() == QChar::DirR || letter.direction() == QChar::DirAL;
    };
    if (!plain)
        return flags;
    const auto* widget = dynamic_cast<const QWidget*>(painter.device());
    if (std::any_of(text.begin(), text.end(), turns))
        flags = (flags & ~Qt::TextForceLeftToRight) | Qt::TextForceRightToLeft;
    else if (!widget || !widget->isRightToLeft()) // a field of powers is never mirrored
        return flags;
    return (flags & Qt::AlignLeft) != 0 ? (flags & ~Qt::AlignLeft) | Qt::AlignRight : flags;
}

/// From right to left, the space at which a line was broken would stand before the line and push it out of
/// its place: lines are broken here, and drawn without it.
void DeskStyle::drawItemText(QPainter* painter, const QRect& rect, int flags, const QPalette& palette,
                             bool enabled, const QString& text, QPalette::ColorRole role) const
{
    flags = flagsFor(flags, text, *painter);
    if ((flags & Qt::TextWordWrap) == 0 || (flags & Qt::TextForceRightToLeft) == 0)
        return QProxyStyle::drawItemText(painter, rect, flags, palette, enabled, text, role);
    auto whole = text;
    whole.replace(QLatin1Char('\n'), QChar::LineSeparator);
    QTextLayout layout(whole, painter->font(), painter->device());
    QTextOption option;
    option.setWrapMode(QTextOption::WordWrap);
    option.setTextDirection(Qt::RightToLeft);
    layout.setTextOption(option);
    QStringList lines;
    layout.beginLayout();
    for (auto line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(rect.width());
        auto words = whole.mid(line.textStart(), line.textLength());
        while (!words.isEmpty() && words.back().isSpace()) // the separator of lines is one
            words.chop(1);
        lines << words;
    }
    layout.endLayout();
    QProxyStyle::drawItemText(painter, rect, flags & ~Qt::TextWordWrap, palette, enabled,
                              lines.join(QChar(QChar::LineSeparator)), role);
}

/// The style below draws the place of the keyboard on a tab itself, too faintly to be seen.
void DeskStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                            const QWidget* widget) const
{
    const auto* tab = qstyleoption_cast<const QStyleOptionTab*>(option);
    if (element == CE_TabBarTabShape && tab)
        return drawTab(*tab, *painter);
    if (element != CE_TabBarTabLabel || !tab || !tab->state.testFlag(State_HasFocus))
        return QProxyStyle::drawControl(element, option, painter, widget);
    auto plain = *tab;
    plain.state.setFlag(State_HasFocus, false);
    QProxyStyle::drawControl(element, &plain, painter, widget);
    plain.rect.adjust(2, 2, -2, -2);
    drawFocus(plain, *painter);
}

/// Of fields that are no plain ones: as the style sheet draws theirs.
void DeskStyle::drawOutline(const QStyleOption& option, QPainter& painter)
{
    const auto colours = coloursOf(themeNow());
    const bool focused = option.state.testFlag(State_HasFocus);
    const double line = focused ? 2.0 : 1.0; // whole pixels: its middle lies half of it inside
    const double inset = line / 2.0;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(focused ? colours.accent : colours.muted, line));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(option.rect).adjusted(inset, inset, -inset, -inset), 4, 4);
    painter.restore();
}

/// The chosen one stands on a bar; in a dark window the shades of the style below cannot be told apart.
void DeskStyle::drawTab(const QStyleOptionTab& tab, QPainter& painter)
{
    constexpr int bar = 3;
    const auto colours = coloursOf(themeNow());
    const bool chosen = tab.state.testFlag(State_Selected);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(chosen ? colours.muted : colours.border, 1.0));
    painter.setBrush(chosen ? colours.base : colours.window);
    painter.drawRoundedRect(QRectF(tab.rect).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    if (chosen)
        painter.fillRect(tab.rect.adjusted(1, tab.rect.height() - bar, -1, 0), colours.accent);
    painter.restore();
}

/// Boxes to tick grow with the letters beside them.
int DeskStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const
{
    const int usual = QProxyStyle::pixelMetric(metric, option, widget);
    if (metric == PM_TabBarTabHSpace) // pages of long names stay whole side by side
        return usual / 2;
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

/// Groove and knob; those of the style below do not stand out from a dark window (WCAG 2.2, 1.4.11: 3 : 1).
void DeskStyle::drawSlider(const QStyleOptionSlider& slider, QPainter& painter, const QWidget* widget) const
{
    const auto colours = coloursOf(themeNow());
    const auto groove = QRectF(proxy()->subControlRect(CC_Slider, &slider, SC_SliderGroove, widget));
    const auto knob = QRectF(proxy()->subControlRect(CC_Slider, &slider, SC_SliderHandle, widget));
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colours.muted, 2.0));
    painter.drawLine(QPointF(groove.left() + 2, groove.center().y()),
                     QPointF(groove.right() - 2, groove.center().y()));
    painter.setPen(QPen(colours.base, 1.0));
    painter.setBrush(slider.state.testFlag(State_Enabled) ? colours.accent : colours.muted);
    painter.drawRoundedRect(knob.adjusted(1, 1, -1, -1), 4, 4);
    painter.restore();
    if (slider.state.testFlag(State_HasFocus)) {
        auto whole = slider;
        whole.rect = proxy()->subElementRect(SE_SliderFocusRect, &slider, widget);
        drawFocus(whole, painter);
    }
}

void DeskStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                   QPainter* painter, const QWidget* widget) const
{
    const auto* slider = qstyleoption_cast<const QStyleOptionSlider*>(option);
    if (control == CC_Slider && slider && slider->orientation == Qt::Horizontal)
        return drawSlider(*slider, *painter, widget);
    if (control == CC_ScrollBar && slider)
        return drawScrollBar(*slider, *painter, widget);
    if (const auto* box = qstyleoption_cast<const QStyleOptionSpinBox*>(option); control == CC_SpinBox && box)
        return drawSpinBox(*box, *painter, widget);
    if (control != CC_ComboBox)
        return QProxyStyle::drawComplexControl(control, option, painter, widget);
    const auto colours = coloursOf(themeNow());
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(Qt::NoPen);
    painter->setBrush(colours.base);
    painter->drawRoundedRect(option->rect, 4, 4);
    drawOutline(*option, *painter);
    const auto place = visualRect(option->direction, option->rect,
                                  {option->rect.right() - 18, option->rect.top(), 14, option->rect.height()});
    const auto middle = QRectF(place).center();
    painter->setPen(QPen(colours.text, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->drawPolyline(
        QPolygonF{middle + QPointF(-4, -2), middle + QPointF(0, 2.5), middle + QPointF(4, -2)});
    painter->restore();
}

} // namespace quarterstep
