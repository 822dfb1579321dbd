// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/cross_view.hpp"

#include "app/desk/theme.hpp"
#include "app/session/wording.hpp"

#include <QPainter>

#include <cmath>
#include <numbers>

namespace quarterstep
{

namespace
{
/// Screen coordinates: down is positive.
QPointF alongMeridian(double degrees)
{
    const double angle = degrees * std::numbers::pi / 180.0;
    return {std::cos(angle), -std::sin(angle)};
}

struct CrossPaint {
    QPainter& painter;
    Colours colours;
    QFont small;
};

/// Beside the end of the arm, to its right; of an upright arm clear of what stands beside the level one.
void drawValue(const CrossPaint& paint, const QPointF& middle, const QPointF& end, double power)
{
    const QFontMetricsF metrics(paint.small);
    const auto text = dioptres(power);
    QRectF box(0, 0, metrics.horizontalAdvance(text) + 2, metrics.height());
    box.moveCenter(end);
    box.moveLeft(end.x() + 4.0);
    const auto arm = end - middle;
    if (std::abs(arm.y()) > std::abs(arm.x()) && arm.y() < 0)
        box.moveBottom(std::min(box.bottom(), middle.y() - box.height() / 2.0));
    else if (std::abs(arm.y()) > std::abs(arm.x()))
        box.moveTop(std::max(box.top(), middle.y() + box.height() / 2.0));
    paint.painter.setPen(paint.colours.text);
    paint.painter.drawText(box, Qt::AlignCenter, text);
}

/// Both ends of each arm are drawn, the power stands at one: the right one, or the upper; hence the cross
/// stands to the left in its cell.
void drawCross(const CrossPaint& paint, const QRectF& cell, const OpticalCross& cross, bool error)
{
    const QFontMetricsF metrics(paint.small);
    const double wide = metrics.horizontalAdvance(QStringLiteral("+00.00")) + 6.0;
    const double length =
        std::max(8.0, std::min((cell.width() - wide) / 2.0, (cell.height() - metrics.height()) / 2.0) - 3.0);
    const QPointF middle(cell.center().x() - wide / 2.0, cell.center().y());
    const auto arms = armsOf(cross);
    const std::pair<QPointF, double> ends[] = {{arms.higher, cross.principal.higher},
                                               {arms.lower, cross.principal.lower}};
    for (const auto& [direction, power] : ends) {
        paint.painter.setPen(QPen(error ? paint.colours.caution : paint.colours.accent, 2.0,
                                  error ? Qt::DashLine : Qt::SolidLine));
        paint.painter.drawLine(middle - direction * length, middle + direction * length);
        drawValue(paint, middle, middle + direction * length, power);
    }
}
} // namespace

CrossArms armsOf(const OpticalCross& cross)
{
    const auto shownEnd = [](double meridian) {
        const auto end = alongMeridian(meridian);
        return end.x() < -1e-9 ? -end : end; // right of the middle; straight up where upright
    };
    return {shownEnd(cross.principal.higherMeridian), shownEnd(cross.principal.lowerMeridian)};
}

CrossView::CrossView(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("crossView"));
    setAccessibleName(tr("Optical crosses"));
    setAccessibleDescription(
        tr("A picture of need, pair and what is left; the same values stand in the table"));
    setLayoutDirection(Qt::LeftToRight);
    setToolTip(tr("Powers in dioptres on the meridians they act in, as the examiner sees the eyes"));
}

void CrossView::show(const PerEye<std::optional<EyeCrosses>>& crosses)
{
    crosses_ = crosses;
    update();
}

void CrossView::clear()
{
    crosses_ = {};
    update();
}

QSize CrossView::minimumSizeHint() const
{
    const QFontMetrics metrics(font());
    return {metrics.averageCharWidth() * 24, metrics.height() * 9};
}

void CrossView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setLayoutDirection(Qt::LeftToRight);
    CrossPaint paint{painter, coloursOf(themeNow()), font()};
    paint.small.setPointSizeF(std::max(8.0, font().pointSizeF() * 0.9));
    painter.setFont(paint.small);
    const QFontMetricsF metrics(paint.small);
    const double top = metrics.height() + 2.0;
    const double side = metrics.height() * 1.2;
    const double width = (this->width() - side) / 3.0;
    const double height = (this->height() - top) / 2.0;
    painter.setPen(paint.colours.muted);
    const QString heads[] = {tr("need"), tr("pair"), tr("left over")};
    for (int column = 0; column < 3; ++column)
        painter.drawText(QRectF(side + column * width, 0, width, top), Qt::AlignCenter, heads[column]);
    int rowAt = 0;
    for (const auto eye : bothEyes) {
        const double y = top + rowAt++ * height;
        painter.setPen(paint.colours.text);
        painter.drawText(QRectF(0, y, side, height), Qt::AlignCenter,
                         eye == Eye::right ? QStringLiteral("R") : QStringLiteral("L"));
        const auto& of = crosses_.of(eye);
        if (!of)
            continue;
        const OpticalCross* cells[] = {&of->need, &of->pair, &of->error};
        for (int column = 0; column < 3; ++column)
            drawCross(paint, QRectF(side + column * width, y, width, height), *cells[column], column == 2);
    }
}

} // namespace quarterstep
