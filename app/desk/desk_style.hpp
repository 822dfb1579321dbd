// SPDX-License-Identifier: GPL-3.0-or-later
// Fusion with check boxes, choices and a place of the keyboard that can be seen in every look.
#pragma once

#include <QProxyStyle>

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
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
    [[nodiscard]] int pixelMetric(PixelMetric metric, const QStyleOption* option,
                                  const QWidget* widget) const override;
    [[nodiscard]] QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                         const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;

  private:
    static void drawFocus(const QStyleOption& option, QPainter& painter);
};

} // namespace quarterstep
