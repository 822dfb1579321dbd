// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/bars_view.hpp"

#include "app/desk/theme.hpp"

#include <QHelpEvent>
#include <QPainter>
#include <QStyle>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{
constexpr double nameShare = 0.40; ///< of the width, for the names
constexpr int gap = 6;             ///< pixels
} // namespace

BarsView::BarsView(const QString& name, QWidget* parent) : QWidget(parent)
{
    setObjectName(name);
    setAccessibleName(tr("Bars: why not"));
    setAccessibleDescription(tr("The same numbers stand in the table beside it"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Minimum);
}

void BarsView::show(const ShareBars& picture)
{
    picture_ = picture;
    updateGeometry();
    update();
}

void BarsView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        updateGeometry();
}

int BarsView::rowHeight() const
{
    constexpr int least = 24;
    return std::max(least, fontMetrics().height() + 8);
}

int BarsView::figureWidth() const
{
    int width = fontMetrics().horizontalAdvance(QStringLiteral("+0.000"));
    for (const auto& bar : picture_.bars)
        width = std::max(width, fontMetrics().horizontalAdvance(bar.figure));
    return width;
}

QSize BarsView::minimumSizeHint() const
{
    const int rows = static_cast<int>(picture_.bars.size()) + 1; // and the unit
    return {fontMetrics().averageCharWidth() * 18 + figureWidth() + 80, rows * rowHeight()};
}

QSize BarsView::sizeHint() const
{
    const auto least = minimumSizeHint();
    return {least.width() * 2, least.height()};
}

QRect BarsView::field(int row) const
{
    const int begin = static_cast<int>(nameShare * width()) + gap;
    const int end = width() - figureWidth() - 2 * gap;
    return {begin, row * rowHeight(), std::max(10, end - begin), rowHeight()};
}

int BarsView::placeOf(double value, const QRect& field) const
{
    return field.left() + static_cast<int>(std::lround(value / picture_.most * (field.width() - 1)));
}

QRect BarsView::barRect(int row) const
{
    if (row < 0 || row >= static_cast<int>(picture_.bars.size()))
        return {};
    const auto& bar = picture_.bars[static_cast<std::size_t>(row)];
    const auto room = field(row);
    const int begin = placeOf(std::min(bar.from, bar.to), room);
    const int end = placeOf(std::max(bar.from, bar.to), room);
    const QRect place(begin, room.top() + 4, std::max(2, end - begin), room.height() - 8);
    return QStyle::visualRect(layoutDirection(), rect(), place);
}

/// Whole: filled. Adds: lines one way. Takes away: lines the other way. Inside: dotted. Outside: filled, with
/// a diamond at its end.
void BarsView::paintBar(QPainter& painter, const ShareBar& bar, const QRect& place) const
{
    const auto colours = coloursOf(themeNow());
    const bool bad = bar.kind == ShareBar::Kind::more || bar.kind == ShareBar::Kind::beyond;
    const auto colour = bad ? colours.caution : colours.accent;
    constexpr Qt::BrushStyle fillings[] = {Qt::SolidPattern, Qt::BDiagPattern, Qt::FDiagPattern,
                                           Qt::Dense5Pattern, Qt::SolidPattern};
    painter.setPen(QPen(colour, 1.4));
    painter.setBrush(QBrush(colour, fillings[static_cast<std::size_t>(bar.kind)]));
    painter.drawRect(place);
    if (bar.kind != ShareBar::Kind::beyond)
        return;
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    const QPoint end(mirrored ? place.left() : place.right(), place.center().y());
    const int size = place.height() / 2 + 3;
    painter.setPen(QPen(colours.base, 2.0));
    painter.drawPolygon(QPolygon{end + QPoint(-size, 0), end + QPoint(0, -size), end + QPoint(size, 0),
                                 end + QPoint(0, size)});
}

void BarsView::paintRow(QPainter& painter, int row) const
{
    const auto colours = coloursOf(themeNow());
    const auto& bar = picture_.bars[static_cast<std::size_t>(row)];
    const auto mirrored = [this](const QRect& place) {
        return QStyle::visualRect(layoutDirection(), rect(), place);
    };
    const auto leading = QStyle::visualAlignment(layoutDirection(), Qt::AlignLeft) | Qt::AlignVCenter;
    const auto trailing = QStyle::visualAlignment(layoutDirection(), Qt::AlignRight) | Qt::AlignVCenter;
    const int top = row * rowHeight();
    auto font = this->font();
    font.setBold(bar.kind == ShareBar::Kind::whole || bar.kind == ShareBar::Kind::beyond);
    painter.setFont(font);
    painter.setPen(colours.text);
    const QRect name(0, top, static_cast<int>(nameShare * width()), rowHeight());
    painter.drawText(mirrored(name), static_cast<int>(leading),
                     QFontMetrics(font).elidedText(bar.name, Qt::ElideRight, name.width()));
    const QRect figure(width() - figureWidth() - gap, top, figureWidth() + gap, rowHeight());
    painter.drawText(mirrored(figure), static_cast<int>(trailing), bar.figure);
    paintBar(painter, bar, barRect(row));
    if (!picture_.steps || row + 1 >= static_cast<int>(picture_.bars.size()))
        return;
    const int at = placeOf(bar.to, field(row)); // leads to the beginning of the next step
    const auto link = mirrored({at, top + rowHeight() - 4, 1, 8});
    painter.setPen(QPen(colours.muted, 1.0, Qt::DotLine));
    painter.drawLine(link.topLeft(), link.bottomLeft());
}

void BarsView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const auto colours = coloursOf(themeNow());
    const int rows = static_cast<int>(picture_.bars.size());
    if (picture_.mark > 0.0 && rows > 0) {
        const auto line = QStyle::visualRect(layoutDirection(), rect(),
                                             {placeOf(picture_.mark, field(0)), 0, 1, rows * rowHeight()});
        painter.setPen(QPen(colours.text, 1.6, Qt::DashLine));
        painter.drawLine(line.topLeft(), line.bottomLeft());
    }
    for (int row = 0; row < rows; ++row)
        paintRow(painter, row);
    painter.setFont(font());
    painter.setPen(colours.muted);
    painter.drawText(QRect(0, rows * rowHeight(), width(), rowHeight()), Qt::AlignCenter,
                     fontMetrics().elidedText(picture_.unit, Qt::ElideRight, width()));
}

/// The whole name, where it was cut, and what the figure is made of.
bool BarsView::event(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    auto* help = static_cast<QHelpEvent*>(event);
    const int row = help->pos().y() / rowHeight();
    if (row < 0 || row >= static_cast<int>(picture_.bars.size())) {
        QToolTip::hideText();
        return true;
    }
    const auto& bar = picture_.bars[static_cast<std::size_t>(row)];
    QToolTip::showText(help->globalPos(),
                       bar.words.isEmpty()
                           ? QStringLiteral("%1: %2").arg(bar.name, bar.figure)
                           : QStringLiteral("%1: %2 (%3)").arg(bar.name, bar.figure, bar.words),
                       this);
    return true;
}

} // namespace quarterstep
