// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/plane_marks.hpp"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{
/// Canvas of one mark, drawn about its middle.
template <class Draw>
QPixmap markOf(double radius, double ratio, Draw draw)
{
    const int side = static_cast<int>(std::ceil(radius * 2.0 + 4.0));
    QPixmap pixmap(static_cast<int>(side * ratio), static_cast<int>(side * ratio));
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(side / 2.0, side / 2.0);
    draw(painter, radius);
    return pixmap;
}

} // namespace

QPixmap stockMark(PlaneMarkKind kind, bool any, double radius, double ratio, const Colours& colours)
{
    return markOf(radius, ratio, [&](QPainter& painter, double r) {
        painter.setPen(QPen(colours.muted, any ? 1.2 : 1.6));
        auto fill = colours.muted;
        fill.setAlphaF(0.45F);
        painter.setBrush(any && kind == PlaneMarkKind::readyMade ? QBrush(fill) : QBrush(Qt::NoBrush));
        if (!any) {
            painter.drawLine(QPointF(-r, -r) * 0.7, QPointF(r, r) * 0.7);
            painter.drawLine(QPointF(-r, r) * 0.7, QPointF(r, -r) * 0.7);
        } else if (kind == PlaneMarkKind::readyMade) {
            painter.drawEllipse(QPointF(0, 0), r, r);
        } else {
            painter.drawPolygon(QPolygonF{QPointF(0, -r * 1.2), QPointF(r * 1.2, 0), QPointF(0, r * 1.2),
                                          QPointF(-r * 1.2, 0)});
        }
    });
}

QPixmap eyeMark(const PlaneEye& eye, double ratio, const Colours& colours, QFont font)
{
    const bool both = eye.right && eye.left;
    font.setBold(true);
    const auto text = both ? QStringLiteral("RL") : eye.right ? QStringLiteral("R") : QStringLiteral("L");
    const double radius = QFontMetricsF(font).height() * (both ? 0.85 : 0.72);
    return markOf(radius, ratio, [&](QPainter& painter, double r) {
        painter.setPen(QPen(colours.base, 1.5));
        painter.setBrush(colours.accent);
        const QRectF box(-r, -r, 2 * r, 2 * r);
        if (eye.left && !both)
            painter.drawRoundedRect(box.adjusted(1.5, 1.5, -1.5, -1.5), 4, 4);
        else
            painter.drawEllipse(box);
        painter.setFont(font);
        painter.setPen(colours.accentText);
        painter.drawText(box, Qt::AlignCenter, text);
    });
}

QPixmap choiceMark(double ratio, const Colours& colours, bool broken)
{
    return markOf(12.0, ratio, [&](QPainter& painter, double r) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colours.base, 5));
        painter.drawEllipse(QPointF(0, 0), r - 1.0, r - 1.0);
        painter.setPen(QPen(colours.caution, 2.6, broken ? Qt::DotLine : Qt::SolidLine));
        painter.drawEllipse(QPointF(0, 0), r - 1.0, r - 1.0);
    });
}

QPixmap rankedMark(double ratio, const Colours& colours)
{
    return markOf(2.6, ratio, [&](QPainter& painter, double r) {
        painter.setPen(QPen(colours.base, 1));
        painter.setBrush(colours.accent);
        painter.drawEllipse(QPointF(0, 0), r, r);
    });
}

double radiusFor(int available)
{
    return 3.5 + 1.7 * std::min(4.0, std::floor(std::log2(1.0 + available)));
}

} // namespace quarterstep
