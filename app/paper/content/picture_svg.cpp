// SPDX-License-Identifier: GPL-3.0-or-later
// A picture as SVG, for a page read in a browser.
#include "app/paper/content/picture.hpp"

#include "app/paper/content/html_page.hpp"
#include "app/paper/content/plain_text.hpp"

namespace quarterstep
{

namespace
{

QString formatted(QPointF point)
{
    return QString::number(point.x(), 'f', 2) + QLatin1Char(',') + QString::number(point.y(), 'f', 2);
}

const char* classOf(PictureRole role)
{
    constexpr const char* words[] = {"axis", "centre", "alert", "alarm", "plain", "early", "beyond"};
    return words[static_cast<std::size_t>(role)];
}

QString markShape(const PicturePart& part)
{
    const auto at = part.points.front();
    switch (part.role) {
    case PictureRole::early:
        return QStringLiteral("<rect x=\"%1\" y=\"%2\" width=\"2.4\" height=\"2.4\"/>")
            .arg(at.x() - 1.2, 0, 'f', 2)
            .arg(at.y() - 1.2, 0, 'f', 2);
    case PictureRole::beyond:
        return QStringLiteral("<path d=\"M%1 l1.8,1.8 l-1.8,1.8 l-1.8,-1.8 z\"/>")
            .arg(formatted(at - QPointF(0.0, 1.8)));
    default:
        return QStringLiteral("<circle cx=\"%1\" cy=\"%2\" r=\"1.1\"/>")
            .arg(at.x(), 0, 'f', 2)
            .arg(at.y(), 0, 'f', 2);
    }
}

QString svgPart(const PicturePart& part)
{
    const auto role = QLatin1String(classOf(part.role));
    if (part.kind == PicturePart::Kind::words) {
        const char* anchor = part.anchor < 0 ? "start" : part.anchor > 0 ? "end" : "middle";
        return QStringLiteral("<text x=\"%1\" y=\"%2\" text-anchor=\"%3\">%4</text>")
            .arg(part.points.front().x(), 0, 'f', 2)
            .arg(part.points.front().y(), 0, 'f', 2)
            .arg(QLatin1String(anchor), withoutIsolates(part.text).toHtmlEscaped());
    }
    if (part.kind == PicturePart::Kind::mark) {
        const auto row = withoutIsolates(part.row.join(QStringLiteral(" | "))).toHtmlEscaped();
        return QStringLiteral("<g class=\"%1\" data-row=\"%2\"><title>%2</title>%3</g>")
            .arg(role, row, markShape(part));
    }
    QStringList points;
    for (const auto& point : part.points)
        points << formatted(point);
    return QStringLiteral("<polyline class=\"%1\" points=\"%2\"/>").arg(role, points.join(QLatin1Char(' ')));
}

} // namespace

QString svgOf(const Picture& picture)
{
    auto svg = QStringLiteral("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %1 %2\" role=\"img\" "
                              "direction=\"ltr\"><title>%3</title><desc>%4</desc>")
                   .arg(picture.width)
                   .arg(picture.height)
                   .arg(withoutIsolates(picture.title).toHtmlEscaped(),
                        withoutIsolates(picture.says).toHtmlEscaped());
    for (const auto& part : picture.parts)
        svg += svgPart(part);
    return svg + QStringLiteral("</svg>");
}

} // namespace quarterstep
