// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/render/paint_picture.hpp"

#include "app/paper/content/picture.hpp"
#include "app/paper/content/plain_text.hpp"
#include "app/paper/render/layout.hpp"
#include "app/paper/render/words_shape.hpp"

#include <QPainter>
#include <QPolygonF>

namespace quarterstep
{
namespace
{

constexpr double lettersMm = 3.2; ///< height of the words in the picture's own millimetres

QPen penOf(PictureRole role, double unit)
{
    const double width = role == PictureRole::alarm ? 0.5 : role == PictureRole::axis ? 0.2 : 0.3;
    return {Qt::black, width * unit, role == PictureRole::alert ? Qt::DashLine : Qt::SolidLine};
}

void paintWords(QPainter& painter, const PicturePart& part, QPointF at, double unit)
{
    Mark mark;
    mark.text = withoutIsolates(part.text);
    mark.points = lettersMm * unit / unitsPerMm * 72.0 / 25.4;
    mark.place = {0.0, 0.0, 1e6, 0.0};
    const double wide = WordsShape(mark).widest();
    const double shift = part.anchor < 0 ? 0.0 : part.anchor > 0 ? wide : wide / 2.0;
    const double high = WordsShape(mark).height();
    WordsShape(mark).paint(painter, at - QPointF(shift, high * 0.78)); // the place is that of the base line
}

void paintMarkAt(QPainter& painter, PictureRole role, QPointF at, double unit)
{
    const double half = 1.2 * unit;
    if (role == PictureRole::early)
        painter.drawRect(QRectF(at - QPointF(half, half), QSizeF(2.0 * half, 2.0 * half)));
    else if (role == PictureRole::beyond)
        painter.drawPolygon(QPolygonF{at - QPointF(0.0, 1.5 * half), at + QPointF(1.5 * half, 0.0),
                                      at + QPointF(0.0, 1.5 * half), at - QPointF(1.5 * half, 0.0)});
    else
        painter.drawEllipse(at, 0.9 * half, 0.9 * half);
}

} // namespace

void paintPicture(QPainter& painter, const Picture& picture, const QRectF& place)
{
    const double unit = place.width() / picture.width;
    const auto onPaper = [&](QPointF point) { return place.topLeft() + point * unit; };
    for (const auto& part : picture.parts) {
        painter.setPen(penOf(part.role, unit));
        painter.setBrush(Qt::NoBrush);
        if (part.kind == PicturePart::Kind::words) {
            paintWords(painter, part, onPaper(part.points.front()), unit);
        } else if (part.kind == PicturePart::Kind::mark) {
            painter.setBrush(Qt::black);
            paintMarkAt(painter, part.role, onPaper(part.points.front()), unit);
        } else {
            QPolygonF line;
            for (const auto& point : part.points)
                line << onPaper(point);
            painter.drawPolyline(line);
        }
    }
}

} // namespace quarterstep
