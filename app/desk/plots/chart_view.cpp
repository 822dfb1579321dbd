// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/chart_view.hpp"

#include "app/desk/theme.hpp"
#include "app/session/wording.hpp"

#include <qcustomplot.h>

#include <QMouseEvent>
#include <QToolTip>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace quarterstep
{

namespace
{
/// Shares as the words beside the picture say them.
class ShareTicker final : public QCPAxisTicker
{
  protected:
    QString getTickLabel(double tick, const QLocale&, QChar, int) override { return shareTick(tick); }
};
} // namespace

ChartView::ChartView(QWidget* parent) : QWidget(parent), plot_(new QCustomPlot(this))
{
    setObjectName(QStringLiteral("auditChart"));
    setAccessibleName(tr("Chart of the audit"));
    setAccessibleDescription(tr("The same numbers stand in the table beside it"));
    setLayoutDirection(Qt::LeftToRight);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(plot_);
    plot_->setFocusPolicy(Qt::NoFocus);
    plot_->setMinimumSize(260, 160);
    connect(plot_, &QCustomPlot::mouseMove, this, [this](QMouseEvent* event) { tellAbout(event->pos()); });
    restyle();
}

void ChartView::show(const ChartData& chart)
{
    chart_ = chart;
    draw();
}

int ChartView::heightOfWords() const
{
    constexpr int across = 4; // lines: the figures and the words of the other axis, and some air
    return fontMetrics().horizontalAdvance(chart_.up) + across * fontMetrics().height();
}

void ChartView::restyle()
{
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
        axis->grid()->setPen(QPen(grid, 1));
        axis->grid()->setZeroLinePen(Qt::NoPen);
    }
    plot_->xAxis->grid()->setVisible(false);
    draw();
}

void ChartView::draw()
{
    plot_->clearPlottables();
    plot_->clearItems();
    double right = 1.0;
    double top = chart_.percent ? 0.05 : 1.0;
    for (const auto& dot : chart_.dots) {
        right = std::max(right, dot.across);
        top = std::max(top, dot.up);
    }
    for (const auto& line : chart_.lines)
        if (line.main)
            for (const auto& [across, up] : line.points) {
                right = std::max(right, across);
                top = std::max(top, up);
            }
    // Limits of tiny groups reach to the top of everything; the dots decide what is shown.
    plot_->xAxis->setRange(0.0, right * 1.06 + 0.5);
    plot_->yAxis->setRange(chart_.floor, !chart_.percent ? top * 1.25 + 1.0
                                         : chart_.floor > 0.0
                                             ? std::min(1.0, top + 0.4 * (top - chart_.floor))
                                             : std::min(1.0, top * 1.6 + 0.02));
    plot_->xAxis->setLabel(chart_.across);
    plot_->yAxis->setLabel(chart_.up);
    plot_->yAxis->setTicker(
        QSharedPointer<QCPAxisTicker>(chart_.percent ? new ShareTicker : new QCPAxisTicker));
    auto* ticker = new QCPAxisTickerFixed;
    ticker->setScaleStrategy(QCPAxisTickerFixed::ssMultiples);
    plot_->xAxis->setTicker(QSharedPointer<QCPAxisTicker>(ticker)); // whole numbers
    drawLines();
    drawDots();
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

/// The share of all is solid, the inner limit dashed, the outer dotted: told apart without colour.
void ChartView::drawLines()
{
    const auto colours = coloursOf(themeNow());
    for (const auto& line : chart_.lines) {
        auto* graph = plot_->addGraph();
        graph->setPen(line.main     ? QPen(colours.accent, 2.0)
                      : line.middle ? QPen(colours.muted, 1.4)
                      : line.outer  ? QPen(colours.outside, 1.6, Qt::DotLine)
                                    : QPen(colours.caution, 1.6, Qt::DashLine));
        for (const auto& [across, up] : line.points)
            graph->addData(across, up);
    }
}

/// Inside a circle, beyond the inner limit a triangle, beyond the outer a filled diamond.
void ChartView::drawDots()
{
    const auto colours = coloursOf(themeNow());
    const std::array looks{QCPScatterStyle(QCPScatterStyle::ssCircle, colours.accent, colours.base, 9),
                           QCPScatterStyle(QCPScatterStyle::ssTriangle, colours.caution, colours.base, 11),
                           QCPScatterStyle(QCPScatterStyle::ssDiamond, colours.outside, colours.outside, 12)};
    if (chart_.joined) {
        auto* way = plot_->addGraph();
        way->setPen(QPen(colours.accent, 1.2));
        for (const auto& dot : chart_.dots)
            way->addData(dot.across, dot.up);
    }
    for (std::size_t beyond = 0; beyond < looks.size(); ++beyond) {
        auto* dots = plot_->addGraph();
        dots->setLineStyle(QCPGraph::lsNone);
        dots->setScatterStyle(looks[beyond]);
        for (const auto& dot : chart_.dots)
            if (dot.beyond == static_cast<int>(beyond))
                dots->addData(dot.across, dot.up);
    }
}

void ChartView::tellAbout(QPoint place)
{
    constexpr double near = 12.0; // pixels
    for (const auto& dot : chart_.dots) {
        const QPointF at(plot_->xAxis->coordToPixel(dot.across), plot_->yAxis->coordToPixel(dot.up));
        if (QLineF(at, place).length() <= near) {
            QToolTip::showText(plot_->mapToGlobal(place), QStringLiteral("%1: %2").arg(dot.name, dot.words),
                               plot_);
            return;
        }
    }
    QToolTip::hideText();
}

} // namespace quarterstep
