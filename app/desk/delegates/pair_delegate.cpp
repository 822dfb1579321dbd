// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/delegates/pair_delegate.hpp"

#include "app/desk/models/pairs_model.hpp"
#include "app/desk/theme.hpp"

#include <QAbstractItemView>
#include <QPainter>

#include <algorithm>

namespace quarterstep
{

namespace
{
constexpr int edge = 8;
constexpr int shapeWidth = 22;

struct Texts {
    QString power, pull, count, verdict, left, reason, heading;
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
    texts.count = PairsModel::tr("%n here", nullptr, index.data(PairsModel::availableRole).toInt());
    texts.verdict = cell(index, PairsModel::verdictColumn);
    texts.reason = cell(index, PairsModel::reasonColumn);
    const auto right = cell(index, PairsModel::rightColumn);
    const auto left = cell(index, PairsModel::leftColumn);
    const auto prism = cell(index, PairsModel::prismColumn);
    texts.left = right == left ? PairsModel::tr("R and L %1 · prism %2").arg(right, prism)
                               : PairsModel::tr("R %1 · L %2 · prism %3").arg(right, left, prism);
    if (const auto chance = cell(index, PairsModel::chanceColumn); !chance.isEmpty())
        texts.left += PairsModel::tr(" · chance %1").arg(chance);
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

/// Broken at plain spaces only: names, bins and powers hold together.
QStringList broken(const QString& text, const QFont& font, int width)
{
    const QFontMetrics metrics(font);
    QStringList lines;
    for (const auto& word : text.split(QLatin1Char(' '))) {
        const auto longer = lines.isEmpty() ? word : lines.back() + QLatin1Char(' ') + word;
        if (lines.isEmpty())
            lines << word;
        else if (metrics.horizontalAdvance(longer) <= width)
            lines.back() = longer;
        else
            lines << word;
    }
    return lines;
}

/// One run of words on a card, placed as if left-to-right.
struct Words {
    QString text;
    QFont font;
    QColor colour;
    QRect rect;
    Qt::Alignment side = Qt::AlignLeft;
};

/// Where everything of one pair stands; its height follows from the width, so that no bin is ever cut off.
class PairLayout
{
  public:
    PairLayout(const Texts& texts, const QFont& font, int left, int top, int width)
        : colours_(coloursOf(themeNow())), left_(left + edge), width_(width - 2 * edge), y_(top),
          card_(left, top, width, 0)
    {
        const auto colour = colourOf(texts.band, colours_);
        const auto body = texts.band == Band::fails ? colours_.muted : colours_.text;
        if (!texts.heading.isEmpty()) {
            y_ += edge / 2;
            add(texts.heading, scaled(font, 1.0, true), colours_.muted, width_);
            y_ += edge / 2;
        }
        card_.setTop(y_ + 2);
        y_ += edge;
        shape_ = {left_, y_, shapeWidth - 6, QFontMetrics(scaled(font, 1.25, true)).height()};
        left_ += shapeWidth;
        width_ -= shapeWidth;
        const auto small = scaled(font, 0.95, false);
        const Words count{texts.count, font, colours_.muted, {}};
        const int verdictLine = y_;
        if (beside(texts.power, scaled(font, 1.25, true), body,
                   {texts.verdict, scaled(font, 1.0, true), colour, {}}, true)) {
            atEnd(count, verdictLine); // a line of its own has room for both
            add(texts.pull, font, body, width_);
        } else {
            beside(texts.pull, font, body, count, false);
        }
        add(texts.left, small, colours_.muted, width_);
        if (!texts.reason.isEmpty())
            add(texts.reason, small, colour, width_);
        y_ += edge;
        card_.setBottom(y_ - 2);
    }

    [[nodiscard]] int bottom() const { return y_; }
    [[nodiscard]] QRect card() const { return card_; }
    [[nodiscard]] QRect shape() const { return shape_; }
    [[nodiscard]] const std::vector<Words>& words() const { return words_; }
    [[nodiscard]] const Colours& colours() const { return colours_; }

  private:
    void add(const QString& text, const QFont& font, const QColor& colour, int width)
    {
        const auto lines = broken(text, font, width);
        const auto joined = lines.join(QLatin1Char('\n'));
        const QFontMetrics metrics(font); // a script from another font may stand taller than this one's lines
        const int height = std::max(metrics.height() * static_cast<int>(lines.size()),
                                    metrics.boundingRect(0, 0, width, 10000, Qt::AlignTop, joined).height());
        words_.push_back({joined, font, colour, {left_, y_, width, height}, Qt::AlignLeft});
        y_ += height + 2;
    }

    /// At the far side of the line that begins at `y`; its width.
    int atEnd(const Words& end, int y)
    {
        const QFontMetrics metrics(end.font);
        const int endWidth = metrics.horizontalAdvance(end.text) + 4;
        words_.push_back({end.text, end.font, end.colour,
                          QRect(left_ + width_ - endWidth, y, endWidth, metrics.height()), Qt::AlignRight});
        return endWidth;
    }

    /// `end` at the far side of the first line, or on a line of its own where `text` would have to be broken
    /// for it and `mayMove` says so; whether it was moved.
    bool beside(const QString& text, const QFont& font, const QColor& colour, const Words& end, bool mayMove)
    {
        const int endWidth = QFontMetrics(end.font).horizontalAdvance(end.text) + 4;
        if (mayMove && QFontMetrics(font).horizontalAdvance(text) + edge + endWidth > width_) {
            add(end.text, end.font, end.colour, width_);
            add(text, font, colour, width_);
            return true;
        }
        atEnd(end, y_);
        add(text, font, colour, width_ - endWidth - edge);
        return false;
    }

    Colours colours_;
    int left_;
    int width_;
    int y_;
    QRect card_;
    QRect shape_;
    std::vector<Words> words_;
};

int widthOf(const QStyleOptionViewItem& option)
{
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    return view ? view->viewport()->width() : std::max(option.rect.width(), 240);
}
} // namespace

QSize PairDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const int width = widthOf(option);
    return {width, PairLayout(textsOf(index), option.font, 0, 0, width).bottom()};
}

void PairDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const
{
    const auto texts = textsOf(index);
    const PairLayout layout(texts, option.font, option.rect.left(), option.rect.top(), option.rect.width());
    const auto& colours = layout.colours();
    const auto mirrored = [&option](const QRect& rect) {
        return QStyle::visualRect(option.direction, option.rect, rect);
    };
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    auto fill = colours.accent;
    fill.setAlphaF(themeNow() == Theme::sun ? 0.0F : 0.10F);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setLayoutDirection(option.direction);
    const auto card = layout.card().adjusted(2, 0, -2, 0);
    painter->setPen(QPen(colours.border, 1));
    painter->setBrush(colours.base);
    painter->drawRoundedRect(card, 6, 6);
    if (index.data(PairsModel::pointedRole).toBool()) {
        painter->setPen(QPen(colours.caution, 2, Qt::DashLine));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(card.adjusted(2, 2, -2, -2), 6, 6);
    }
    if (selected) {
        painter->setPen(QPen(colours.accent, 2.5));
        painter->setBrush(fill);
        painter->drawRoundedRect(card, 6, 6);
    }
    drawShape(*painter, QRectF(mirrored(layout.shape())).center(), 7.0, texts.band,
              colourOf(texts.band, colours));
    for (const auto& words : layout.words()) {
        painter->setFont(words.font);
        painter->setPen(words.colour);
        const auto side =
            QStyle::visualAlignment(option.direction, words.side) | Qt::AlignAbsolute | Qt::AlignVCenter;
        painter->drawText(mirrored(words.rect), static_cast<int>(side), words.text);
    }
    painter->restore();
}

} // namespace quarterstep
