// SPDX-License-Identifier: GPL-3.0-or-later
// Fusion with check boxes, choices and a place of the keyboard that can be seen in every look.
#pragma once

#include <QProxyStyle>

class QLabel;
class QPushButton;
class QStyleOptionHeader;
class QStyleOptionSlider;
class QStyleOptionSpinBox;
class QStyleOptionTab;

namespace quarterstep
{

class DeskStyle final : public QProxyStyle
{
    Q_OBJECT

  public:
    DeskStyle();

    using QProxyStyle::polish;
    void polish(QWidget* widget) override;
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawItemText(QPainter* painter, const QRect& rect, int flags, const QPalette& palette, bool enabled,
                      const QString& text, QPalette::ColorRole role) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
    [[nodiscard]] int pixelMetric(PixelMetric metric, const QStyleOption* option,
                                  const QWidget* widget) const override;
    [[nodiscard]] QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                         const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;

  private:
    [[nodiscard]] static int aboveTheLine(const QLabel& label);
    [[nodiscard]] static int flagsFor(int flags, const QString& text, const QPainter& painter);
    static void drawOutline(const QStyleOption& option, QPainter& painter);
    void drawSlider(const QStyleOptionSlider& slider, QPainter& painter, const QWidget* widget) const;
    void drawScrollBar(const QStyleOptionSlider& bar, QPainter& painter, const QWidget* widget) const;
    void drawSpinBox(const QStyleOptionSpinBox& box, QPainter& painter, const QWidget* widget) const;
    static void drawSortArrow(const QStyleOptionHeader& header, QPainter& painter);
    static void drawTab(const QStyleOptionTab& tab, QPainter& painter);
    static void drawRing(const QPushButton& button, QPainter& painter);
    static void drawFocus(const QStyleOption& option, QPainter& painter);
};

} // namespace quarterstep
