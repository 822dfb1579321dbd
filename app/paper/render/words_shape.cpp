// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/render/words_shape.hpp"

#include <QPainter>
#include <QTextCharFormat>
#include <QTextOption>

#include <algorithm>
#include <cmath>

namespace quarterstep
{
namespace
{

constexpr double mmPerPoint = 25.4 / 72.0;

} // namespace

namespace
{

QFont fontOf(const QString& family, double points, bool bold)
{
    QFont font(family);
    font.setPixelSize(static_cast<int>(std::lround(points * mmPerPoint * unitsPerMm)));
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

/// Runs of Devanagari, each in a font that has it; powers and names beside them keep the font whose signs and
/// figures stand as people know them.
QList<QTextLayout::FormatRange> devanagariRuns(const QString& text, const QFont& font)
{
    QList<QTextLayout::FormatRange> runs;
    constexpr ushort danda = 0x0964; // shared by scripts, and in that font alone
    const auto belongs = [&](qsizetype at) {
        return text[at].script() == QChar::Script_Devanagari || text[at].unicode() == danda;
    };
    for (qsizetype at = 0; at < text.size(); ++at) {
        if (!belongs(at))
            continue;
        qsizetype end = at;
        while (end < text.size() &&
               (belongs(end) || text[end].isSpace() || text[end].script() == QChar::Script_Inherited))
            ++end;
        QTextLayout::FormatRange run;
        run.start = static_cast<int>(at);
        run.length = static_cast<int>(end - at);
        run.format.setFont(font);
        runs.append(run);
        at = end - 1;
    }
    return runs;
}

} // namespace

WordsShape::WordsShape(const Mark& mark)
{
    QString text = mark.text;
    text.replace(QLatin1Char('\n'), QChar::LineSeparator);
    layout_.setText(text);
    layout_.setFont(fontOf(QStringLiteral("DejaVu Sans"), mark.points, mark.bold));
    layout_.setFormats(
        devanagariRuns(text, fontOf(QStringLiteral("Lohit Devanagari"), mark.points, mark.bold)));
    QTextOption option(mark.alignment | Qt::AlignAbsolute);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setTextDirection(mark.rightToLeft ? Qt::RightToLeft : Qt::LeftToRight);
    layout_.setTextOption(option);
    layout_.setCacheEnabled(true);
    const double width = mark.place.width();
    lay(width, 0.0);
    // A line of two fonts may come out wider than asked for (seen with Devanagari, by half a millimetre).
    for (double narrower = width; widest_ > width && narrower > width / 2.0;) {
        narrower -= widest_ - width + 1.0;
        lay(narrower, mark.alignment & Qt::AlignRight ? width - narrower : 0.0);
    }
}

void WordsShape::lay(double width, double left)
{
    height_ = widest_ = 0.0;
    layout_.beginLayout();
    for (auto line = layout_.createLine(); line.isValid(); line = layout_.createLine()) {
        line.setLineWidth(width);
        line.setPosition({left, height_});
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
