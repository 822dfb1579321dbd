// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/render/words_shape.hpp"

#include <QPainter>
#include <QTextOption>

#include <algorithm>
#include <cmath>

namespace quarterstep
{
namespace
{

constexpr double mmPerPoint = 25.4 / 72.0;

} // namespace

QFont paperFont(double points, bool bold)
{
    QFont font;
    font.setFamilies({QStringLiteral("DejaVu Sans"), QStringLiteral("Lohit Devanagari")});
    font.setPixelSize(static_cast<int>(std::lround(points * mmPerPoint * unitsPerMm)));
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

WordsShape::WordsShape(const Mark& mark)
{
    QString text = mark.text;
    text.replace(QLatin1Char('\n'), QChar::LineSeparator);
    layout_.setText(text);
    layout_.setFont(paperFont(mark.points, mark.bold));
    QTextOption option(mark.alignment | Qt::AlignAbsolute);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setTextDirection(mark.rightToLeft ? Qt::RightToLeft : Qt::LeftToRight);
    layout_.setTextOption(option);
    layout_.setCacheEnabled(true);
    layout_.beginLayout();
    for (auto line = layout_.createLine(); line.isValid(); line = layout_.createLine()) {
        line.setLineWidth(mark.place.width());
        line.setPosition({0.0, height_});
        height_ += line.height();
        widest_ = std::max(widest_, line.naturalTextWidth());
    }
    layout_.endLayout();
}

void WordsShape::paint(QPainter& painter, QPointF topLeft) const
{
    painter.setPen(Qt::black);
    layout_.draw(&painter, topLeft);
}

} // namespace quarterstep
