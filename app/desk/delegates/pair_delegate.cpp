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

/// Paints the texts of one pair into its rectangle, mirrored where the window is.
class PairPainter
{
  public:
    PairPainter(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index)
        : painter_(painter), option_(option), index_(index), texts_(textsOf(index)), fonts_(option.font),
          colours_(coloursOf(themeNow())), card_(option.rect)
    {
    }

    void paint()
    {
        painter_.setRenderHint(QPainter::Antialiasing);
        painter_.setLayoutDirection(option_.direction);
        heading();
        frame();
        lines();
    }

  private:
    /// Words in a rectangle given as if left-to-right.
    void words(const QFont& font, const QColor& colour, const QRect& rect, Qt::Alignment side,
               const QString& text)
    {
        painter_.setFont(font);
        painter_.setPen(colour);
        const auto alignment =
            QStyle::visualAlignment(option_.direction, side) | Qt::AlignAbsolute | Qt::AlignVCenter;
        painter_.drawText(QStyle::visualRect(option_.direction, option_.rect, rect),
                          static_cast<int>(alignment),
                          QFontMetrics(font).elidedText(text, Qt::ElideRight, rect.width()));
    }

    void heading()
    {
        if (texts_.heading.isEmpty())
            return;
        const QRect line(card_.left() + edge, card_.top() + edge / 2, card_.width() - 2 * edge,
                         heightOf(fonts_.verdict));
        words(fonts_.verdict, colours_.muted, line, Qt::AlignLeft, texts_.heading);
        card_.setTop(line.bottom() + edge / 2);
    }

    void frame()
    {
        const bool selected = option_.state.testFlag(QStyle::State_Selected);
        auto fill = colours_.accent;
        fill.setAlphaF(themeNow() == Theme::sun ? 0.0F : 0.10F);
        card_.adjust(2, 2, -2, -2);
        painter_.setPen(selected ? QPen(colours_.accent, 2.5) : QPen(colours_.border, 1));
        painter_.setBrush(selected ? fill : colours_.base);
        painter_.drawRoundedRect(card_, 6, 6);
    }

    void lines()
    {
        const auto colour = colourOf(texts_.band, colours_);
        const auto body = texts_.band == Band::fails ? colours_.muted : colours_.text;
        auto inner = card_.adjusted(edge, edge - 2, -edge, -edge + 2);
        const QRect shape(inner.left(), inner.top(), shapeWidth - 6, heightOf(fonts_.power));
        drawShape(painter_, QRectF(QStyle::visualRect(option_.direction, option_.rect, shape)).center(), 7.0,
                  texts_.band, colour);
        inner.setLeft(inner.left() + shapeWidth);
        QRect line(inner.left(), inner.top(), inner.width(), heightOf(fonts_.power));
        twoSides(line, fonts_.power, body, texts_.power, fonts_.verdict, colour, texts_.verdict);
        line = {inner.left(), line.bottom() + 3, inner.width(), heightOf(fonts_.plain)};
        const auto count = PairsModel::tr("%n here", nullptr, index_.data(PairsModel::availableRole).toInt());
        twoSides(line, fonts_.plain, body, texts_.pull, fonts_.plain, colours_.muted, count);
        line = {inner.left(), line.bottom() + 1, inner.width(), heightOf(fonts_.small)};
        words(fonts_.small, colours_.muted, line, Qt::AlignLeft, texts_.left);
        if (!texts_.reason.isEmpty())
            words(fonts_.small, colour, line.translated(0, heightOf(fonts_.small)), Qt::AlignLeft,
                  texts_.reason);
    }

    /// Words at the beginning and at the end of a line; those at the end are never cut.
    void twoSides(const QRect& line, const QFont& font, const QColor& colour, const QString& text,
                  const QFont& endFont, const QColor& endColour, const QString& endText)
    {
        const int width = std::min(QFontMetrics(endFont).horizontalAdvance(endText) + 4, line.width());
        words(endFont, endColour, {line.right() - width, line.top(), width, line.height()}, Qt::AlignRight,
              endText);
        words(font, colour, line.adjusted(0, 0, -width - edge, 0), Qt::AlignLeft, text);
    }

    QPainter& painter_;
    const QStyleOptionViewItem& option_;
    const QModelIndex& index_;
    Texts texts_;
    Fonts fonts_;
    Colours colours_;
    QRect card_;
};
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
    painter->save();
    PairPainter(*painter, option, index).paint();
    painter->restore();
}

} // namespace quarterstep
