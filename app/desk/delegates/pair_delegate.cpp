// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/delegates/pair_delegate.hpp"

#include "app/desk/models/pairs_model.hpp"
#include "app/desk/theme.hpp"

#include <QPainter>

#include <algorithm>

namespace quarterstep
{

namespace
{
constexpr int edge = 8;
constexpr int shapeWidth = 22;

struct Texts {
    QString power, pull, verdict, left, reason, heading;
    Band band = Band::fits;
};

QString cell(const QModelIndex& index, PairsModel::Column column)
{
    return index.siblingAtColumn(column).data().toString();
}

Texts textsOf(const QModelIndex& index)
{
    Texts texts;
    texts.power = cell(index, PairsModel::powerColumn);
    texts.pull = cell(index, PairsModel::pullColumn);
    texts.verdict = cell(index, PairsModel::verdictColumn);
    texts.reason = cell(index, PairsModel::reasonColumn);
    const auto right = cell(index, PairsModel::rightColumn);
    const auto left = cell(index, PairsModel::leftColumn);
    const auto prism = cell(index, PairsModel::prismColumn);
    texts.left = right == left ? PairsModel::tr("R and L %1  ·  prism %2").arg(right, prism)
                               : PairsModel::tr("R %1  ·  L %2  ·  prism %3").arg(right, left, prism);
    texts.band = static_cast<Band>(index.data(PairsModel::bandRole).toInt());
    if (index.data(PairsModel::firstMissRole).toBool())
        texts.heading = PairsModel::tr("Nearest outside the limits");
    return texts;
}

QFont scaled(const QFont& font, double factor, bool bold)
{
    auto result = font;
    result.setPointSizeF(font.pointSizeF() * factor);
    result.setBold(bold);
    return result;
}

QColor colourOf(Band band, const Colours& colours)
{
    switch (band) {
    case Band::caution:
        return colours.caution;
    case Band::onTrial:
        return colours.trial;
    case Band::fails:
        return colours.outside;
    default:
        return colours.accent;
    }
}

/// A shape for each verdict: disc, triangle, diamond, ring with a bar.
void drawShape(QPainter& painter, const QPointF& centre, double r, Band band, const QColor& colour)
{
    painter.setPen(QPen(colour, 2));
    painter.setBrush(band == Band::fails ? QBrush(Qt::NoBrush) : QBrush(colour));
    if (band == Band::caution) {
        painter.drawPolygon(
            QPolygonF{centre + QPointF(0, -r), centre + QPointF(r, r * 0.8), centre + QPointF(-r, r * 0.8)});
    } else if (band == Band::onTrial) {
        painter.drawPolygon(QPolygonF{centre + QPointF(0, -r), centre + QPointF(r, 0), centre + QPointF(0, r),
                                      centre + QPointF(-r, 0)});
    } else {
        painter.drawEllipse(centre, r * 0.85, r * 0.85);
        if (band == Band::fails)
            painter.drawLine(centre + QPointF(-r * 0.6, r * 0.6), centre + QPointF(r * 0.6, -r * 0.6));
    }
}

struct Fonts {
    QFont power, verdict, plain, small;

    explicit Fonts(const QFont& base)
        : power(scaled(base, 1.25, true)), verdict(scaled(base, 1.0, true)), plain(scaled(base, 1.0, false)),
          small(scaled(base, 0.95, false))
    {
    }
};

int heightOf(const QFont& font)
{
    return QFontMetrics(font).height();
}
} // namespace

QSize PairDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const Fonts fonts(option.font);
    const auto texts = textsOf(index);
    int height = 2 * edge + heightOf(fonts.power) + heightOf(fonts.plain) + heightOf(fonts.small) + 4;
    if (!texts.reason.isEmpty())
        height += heightOf(fonts.small);
    if (!texts.heading.isEmpty())
        height += heightOf(fonts.verdict) + edge;
    return {240, height};
}

void PairDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const
{
    const auto colours = coloursOf(themeNow());
    const Fonts fonts(option.font);
    const auto texts = textsOf(index);
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    const auto place = [&option](const QRect& rect, const QRect& within) {
        return QStyle::visualRect(option.direction, within, rect);
    };
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setLayoutDirection(option.direction);
    auto card = option.rect;
    if (!texts.heading.isEmpty()) {
        painter->setFont(fonts.verdict);
        painter->setPen(colours.muted);
        const auto line = card.adjusted(edge, edge / 2, -edge, 0);
        painter->drawText(line, Qt::AlignTop | QStyle::visualAlignment(Qt::LeftToRight, Qt::AlignLeft),
                          texts.heading);
        card.setTop(card.top() + heightOf(fonts.verdict) + edge);
    }
    card.adjust(2, 2, -2, -2);
    auto fill = colours.accent;
    fill.setAlphaF(themeNow() == Theme::sun ? 0.0F : 0.10F);
    painter->setPen(selected ? QPen(colours.accent, 2.5) : QPen(colours.border, 1));
    painter->setBrush(selected ? QBrush(fill) : QBrush(Qt::NoBrush));
    painter->drawRoundedRect(card, 6, 6);

    auto inner = card.adjusted(edge, edge - 2, -edge, -edge + 2);
    const auto full = inner;
    drawShape(
        *painter,
        QRectF(place({inner.left(), inner.top(), shapeWidth - 6, heightOf(fonts.power)}, full)).center(), 7.0,
        texts.band, colourOf(texts.band, colours));
    inner.setLeft(inner.left() + shapeWidth);
    const auto text = [&](const QFont& font, const QColor& colour, const QRect& rect, Qt::Alignment alignment,
                          const QString& words) {
        painter->setFont(font);
        painter->setPen(colour);
        painter->drawText(place(rect, full), int(alignment | Qt::AlignVCenter),
                          QFontMetrics(font).elidedText(words, Qt::ElideRight, rect.width()));
    };
    const auto body = texts.band == Band::fails ? colours.muted : colours.text;
    const int verdictWidth =
        std::min(QFontMetrics(fonts.verdict).horizontalAdvance(texts.verdict) + 4, inner.width());
    QRect line(inner.left(), inner.top(), inner.width() - verdictWidth - edge, heightOf(fonts.power));
    text(fonts.power, body, line, Qt::AlignLeft, texts.power);
    text(fonts.verdict, colourOf(texts.band, colours),
         {inner.right() - verdictWidth, line.top(), verdictWidth, line.height()}, Qt::AlignRight,
         texts.verdict);
    line = {inner.left(), line.bottom() + 3, inner.width(), heightOf(fonts.plain)};
    const auto count = PairsModel::tr("%n here", nullptr, index.data(PairsModel::availableRole).toInt());
    const int countWidth = QFontMetrics(fonts.plain).horizontalAdvance(count) + 4;
    text(fonts.plain, colours.muted, {inner.right() - countWidth, line.top(), countWidth, line.height()},
         Qt::AlignRight, count);
    text(fonts.plain, body, line.adjusted(0, 0, -countWidth - edge, 0), Qt::AlignLeft, texts.pull);
    line = {inner.left(), line.bottom() + 1, inner.width(), heightOf(fonts.small)};
    text(fonts.small, colours.muted, line, Qt::AlignLeft, texts.left);
    if (!texts.reason.isEmpty())
        text(fonts.small, colourOf(texts.band, colours), line.translated(0, heightOf(fonts.small)),
             Qt::AlignLeft, texts.reason);
    painter->restore();
}

} // namespace quarterstep
