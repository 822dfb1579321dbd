// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/ladder_view.hpp"

#include "app/session/wording.hpp"

#include <qcustomplot.h>

#include <QMouseEvent>
#include <QToolTip>
#include <QVBoxLayout>

#include <cmath>

namespace quarterstep
{

namespace
{
constexpr double barWidth = 0.19; ///< dioptres, of rungs a quarter apart

/// Whole dioptres, sign always shown.
class PowerTicker final : public QCPAxisTickerFixed
{
  protected:
    QString getTickLabel(double tick, const QLocale&, QChar, int) override { return ltr(dioptres(tick)); }
    int getSubTickCount(double) override { return 3; }
};
} // namespace

LadderView::LadderView(QWidget* parent) : QWidget(parent), plot_(new QCustomPlot(this))
{
    setObjectName(QStringLiteral("stockLadder"));
    setAccessibleName(tr("Stock ladder"));
    setAccessibleDescription(
        tr("A picture of how many pieces of each power there are; the same numbers stand "
           "in the table of lines"));
    setLayoutDirection(Qt::LeftToRight);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(plot_);
    plot_->setFocusPolicy(Qt::NoFocus);
    plot_->yAxis->setTicker(QSharedPointer<QCPAxisTicker>(new QCPAxisTickerFixed)); // whole pieces
    plot_->xAxis->setTicker(QSharedPointer<QCPAxisTicker>(new PowerTicker));
    connect(plot_, &QCustomPlot::mouseMove, this, [this](QMouseEvent* event) { tellAbout(event->pos()); });
    connect(plot_, &QCustomPlot::mousePress, this, [this](QMouseEvent* event) {
        if (const auto* rung = rungAt(event->pos()))
            Q_EMIT powerChosen(rung->power);
    });
    restyle();
}

void LadderView::show(const LadderData& ladder)
{
    ladder_ = ladder;
    draw();
}

void LadderView::restyle()
{
    constexpr int leastLines = 7; // axis and its words take three
    plot_->setMinimumSize(260, leastLines * fontMetrics().height());
    const auto colours = coloursOf(themeNow());
    plot_->setBackground(colours.base);
    auto grid = colours.border;
    grid.setAlphaF(0.6F);
    for (auto* axis : {plot_->xAxis, plot_->yAxis}) {
        axis->setBasePen(QPen(colours.border));
        axis->setTickPen(QPen(colours.border));
        axis->setSubTickPen(QPen(colours.border));
        axis->setTickLabelColor(colours.muted);
        axis->setLabelColor(colours.muted);
        axis->setLabelFont(font());
        auto small = font();
        small.setPointSizeF(std::max(8.0, font().pointSizeF() * 0.85));
        axis->setTickLabelFont(small);
        axis->grid()->setPen(QPen(grid, 1));
        axis->grid()->setZeroLinePen(QPen(colours.muted, 1.2));
    }
    plot_->xAxis->grid()->setVisible(false);
    plot_->xAxis->setLabel(tr("power (D)"));
    plot_->yAxis->setLabel(tr("pieces"));
    draw();
}

/// Bars of what is available, kept-aside pieces hatched on top, and a step line at what should be kept.
void LadderView::draw()
{
    const auto colours = coloursOf(themeNow());
    plot_->clearPlottables();
    auto* available = new QCPBars(plot_->xAxis, plot_->yAxis);
    auto* aside = new QCPBars(plot_->xAxis, plot_->yAxis);
    const bool sun = themeNow() == Theme::sun; // black alone: a filled bar would hide the line across it
    auto fill = sun ? colours.base : colours.accent;
    fill.setAlphaF(sun ? 1.0F : 0.75F);
    available->setPen(QPen(colours.accent, sun ? 1.6 : 1.0));
    available->setBrush(fill);
    aside->setPen(QPen(colours.accent));
    aside->setBrush(QBrush(colours.accent, Qt::BDiagPattern));
    for (auto* bars : {available, aside})
        bars->setWidth(barWidth);
    aside->moveAbove(available);
    auto* least = new QCPErrorBars(plot_->xAxis, plot_->yAxis);
    auto* marks = plot_->addGraph();
    marks->setLineStyle(QCPGraph::lsNone);
    marks->setScatterStyle(QCPScatterStyle::ssNone);
    least->setErrorType(QCPErrorBars::etKeyError);
    least->setDataPlottable(marks);
    least->setPen(QPen(colours.caution, 2.4));
    least->setWhiskerWidth(0);
    least->setSymbolGap(0);
    QVector<double> half;
    for (const auto& rung : ladder_.rungs) {
        available->addData(rung.power, rung.available);
        aside->addData(rung.power, rung.aside);
        if (rung.least > 0) {
            marks->addData(rung.power, rung.least);
            half << barWidth * 0.62;
        }
    }
    least->setData(half);
    const double first = ladder_.rungs.empty() ? -2.0 : ladder_.rungs.front().power;
    const double last = ladder_.rungs.empty() ? 2.0 : ladder_.rungs.back().power;
    plot_->xAxis->setRange(first - 0.5, last + 0.5);
    plot_->yAxis->setRange(0, std::max(4.0, ladder_.tallest * 1.08));
    spacePowers();
    const double step = std::ceil(std::max(4.0, ladder_.tallest * 1.08) / 40.0) * 5.0;
    qSharedPointerCast<QCPAxisTickerFixed>(plot_->yAxis->ticker())
        ->setTickStep(ladder_.tallest <= 8 ? 2.0 : step);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void LadderView::spacePowers()
{
    const QFontMetrics letters(plot_->xAxis->tickLabelFont());
    const int word = letters.horizontalAdvance(QStringLiteral("+0.00 "));
    const double step = rungStep(plot_->xAxis->range().size(), plot_->width() - 2 * word, word);
    qSharedPointerCast<QCPAxisTickerFixed>(plot_->xAxis->ticker())->setTickStep(step);
}

void LadderView::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    spacePowers();
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

const Rung* LadderView::rungAt(QPoint place) const
{
    const double power = plot_->xAxis->pixelToCoord(place.x());
    for (const auto& rung : ladder_.rungs)
        if (std::abs(rung.power - power) <= 0.125)
            return &rung;
    return nullptr;
}

void LadderView::tellAbout(QPoint place)
{
    if (const auto* rung = rungAt(place))
        QToolTip::showText(plot_->mapToGlobal(place),
                           tr("%1: available %2, kept aside %3, keep at least %4")
                               .arg(ltr(dioptres(rung->power)))
                               .arg(rung->available)
                               .arg(rung->aside)
                               .arg(rung->least),
                           plot_);
    else
        QToolTip::hideText();
}

} // namespace quarterstep
