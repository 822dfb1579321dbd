// SPDX-License-Identifier: GPL-3.0-or-later
// Fusion with check boxes and choices whose outline can be seen in every look.
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
    [[nodiscard]] int pixelMetric(PixelMetric metric, const QStyleOption* option,
                                  const QWidget* widget) const override;
    [[nodiscard]] QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                         const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;
};

} // namespace quarterstep
