// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/plot_view.hpp"

#include "app/desk/plots/plane_marks.hpp"
#include "app/desk/words.hpp"
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
constexpr double reach = 14.0; ///< pixels within which the pointer asks about a mark

/// Ticks every half or whole dioptre, sign always shown.
class DioptreTicker final : public QCPAxisTickerFixed
{
  protected:
    QString getTickLabel(double tick, const QLocale&, QChar, int) override { return ltr(dioptres(tick)); }
    int getSubTickCount(double) override { return 1; }
};

} // namespace

PlotView::PlotView(QWidget* parent) : QWidget(parent), plot_(new QCustomPlot(this))
{
    setObjectName(QStringLiteral("powerPlane"));
    setAccessibleName(tr("Power plane"));
    setAccessibleDescription(
        tr("A picture of the stock around this person's eyes; the same values stand in the table"));
    setLayoutDirection(Qt::LeftToRight);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(plot_);
    plot_->setFocusPolicy(Qt::NoFocus);
    plot_->setMinimumSize(260, 150);
    for (auto* axis : {plot_->xAxis, plot_->yAxis})
        axis->setTicker(QSharedPointer<QCPAxisTicker>(new DioptreTicker));
    connect(plot_, &QCustomPlot::afterLayout, this, &PlotView::keepScale);
    connect(plot_, &QCustomPlot::mouseMove, this, [this](QMouseEvent* event) { tellAbout(event->pos()); });
    connect(plot_, &QCustomPlot::mousePress, this, [this](QMouseEvent* event) {
        if (const int row = rowAt(event->pos()); row >= 0)
            Q_EMIT pairChosen(row);
    });
    restyle();
}

void PlotView::show(const PlotData& picture)
{
    picture_ = picture;
    pointed_ = -1;
    plot_->xAxis->setRange(picture_.mean.least, picture_.mean.most);
    plot_->yAxis->setRange(picture_.astigmatism.least, picture_.astigmatism.most);
    draw();
}

/// Only the ring of the pair pointed at changes.
void PlotView::pointAt(int row)
{
    if (row == pointed_)
        return;
    pointed_ = row;
    draw();
}

int PlotView::rowAt(QPoint place) const
{
    const PlanePoint point{plot_->xAxis->pixelToCoord(place.x()), plot_->yAxis->pixelToCoord(place.y())};
    const double perPixel = plot_->xAxis->range().size() / std::max(1, plot_->axisRect()->width());
    return pairNear(picture_, point, reach * perPixel);
}

void PlotView::restyle()
{
    colours_ = coloursOf(themeNow());
    plot_->setBackground(colours_.base);
    auto grid = colours_.border;
    grid.setAlphaF(0.6F);
    for (auto* axis : {plot_->xAxis, plot_->yAxis}) {
        axis->setBasePen(QPen(colours_.border));
        axis->setTickPen(QPen(colours_.border));
        axis->setSubTickPen(QPen(colours_.border));
        axis->setTickLabelColor(colours_.muted);
        axis->setLabelColor(colours_.muted);
        axis->setLabelFont(font());
        auto small = font();
        small.setPointSizeF(std::max(8.0, font().pointSizeF() * 0.85));
        axis->setTickLabelFont(small);
        axis->grid()->setPen(QPen(grid, 1));
        axis->grid()->setZeroLinePen(QPen(colours_.muted, 1.2));
    }
    plot_->xAxis->setLabel(tr("mean power (D)"));
    plot_->yAxis->setLabel(tr("half the cylinder (D)"));
    draw();
}

/// Equal dioptres on both axes: a ring is a circle, a distance is a blur.
void PlotView::keepScale()
{
    plot_->yAxis->setScaleRatio(plot_->xAxis, 1.0);
    const double halves = plot_->xAxis->range().size() / 0.5;
    const int label = QFontMetrics(plot_->xAxis->tickLabelFont()).horizontalAdvance(QStringLiteral("+0.00 "));
    const double half = plot_->axisRect()->width() / halves;
    const double step = half > label ? 0.5 : 2.0 * half > label ? 1.0 : 2.0;
    for (auto* axis : {plot_->xAxis, plot_->yAxis})
        qSharedPointerCast<QCPAxisTickerFixed>(axis->ticker())->setTickStep(step);
    const auto size = plot_->yAxis->range().size();
    plot_->yAxis->setRange(picture_.astigmatism.least, picture_.astigmatism.least + size);
}

void PlotView::draw()
{
    plot_->clearItems();
    plot_->clearGraphs();
    drawRings();
    drawStock();
    drawPairs();
    drawChoice();
    drawBlurs();
    drawEyes();
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void PlotView::ring(const PlanePoint& centre, double radius, bool dashed)
{
    auto* circle = new QCPItemEllipse(plot_);
    circle->topLeft->setCoords(centre.mean - radius, centre.astigmatism + radius);
    circle->bottomRight->setCoords(centre.mean + radius, centre.astigmatism - radius);
    circle->setPen(QPen(colours_.accent, dashed ? 1.2 : 1.6, dashed ? Qt::DashLine : Qt::SolidLine));
    auto fill = colours_.accent;
    fill.setAlphaF(dashed ? 0.05F : 0.10F);
    circle->setBrush(themeNow() == Theme::sun ? QBrush(Qt::NoBrush) : QBrush(fill));
    circle->setLayer(QStringLiteral("background"));
}

void PlotView::word(const PlanePoint& at, const QString& text, Qt::Alignment alignment)
{
    auto* label = new QCPItemText(plot_);
    label->position->setCoords(at.mean, at.astigmatism);
    label->setPositionAlignment(alignment);
    label->setText(text);
    auto small = font();
    small.setPointSizeF(std::max(8.0, font().pointSizeF() * 0.9));
    label->setFont(small);
    label->setColor(colours_.text);
    auto behind = colours_.base;
    behind.setAlphaF(0.8F);
    label->setBrush(behind);
    label->setPadding(QMargins(2, 0, 2, 0));
}

void PlotView::drawRings()
{
    for (const auto& eye : picture_.eyes) {
        if (picture_.trialRing)
            ring(eye.at, *picture_.trialRing, true);
        if (picture_.fitsRing)
            ring(eye.at, *picture_.fitsRing, false);
    }
    if (picture_.eyes.empty())
        return;
    QStringList words; // above the larger ring, clear of the letters in the smaller one
    if (picture_.fitsRing)
        words << tr("fits %1").arg(ltr(DeskWords::size(*picture_.fitsRing)));
    if (picture_.trialRing)
        words << tr("on trial %1").arg(ltr(DeskWords::size(*picture_.trialRing)));
    double top = picture_.eyes.front().at.astigmatism;
    for (const auto& eye : picture_.eyes)
        top = std::max(top, eye.at.astigmatism);
    top += picture_.trialRing.value_or(picture_.fitsRing.value_or(0.0));
    const double middle = (picture_.mean.least + picture_.mean.most) / 2.0; // never cut at a side
    if (!words.isEmpty())
        word({middle, top}, words.join(QStringLiteral(" · ")), Qt::AlignHCenter | Qt::AlignBottom);
}

QCPGraph* PlotView::marks(const QPixmap& pixmap)
{
    auto* graph = plot_->addGraph();
    graph->setLineStyle(QCPGraph::lsNone);
    graph->setScatterStyle(QCPScatterStyle(pixmap));
    return graph;
}

void PlotView::drawStock()
{
    std::map<std::pair<PlaneMarkKind, double>, QCPGraph*> graphs; // radius 0: none left
    for (const auto& mark : picture_.stock) {
        const double radius = mark.available > 0 ? radiusFor(mark.available) : 0.0;
        auto& graph = graphs[{mark.kind, radius}];
        if (!graph)
            graph = marks(stockMark(mark.kind, mark.available > 0, radius > 0 ? radius : 4.0,
                                    devicePixelRatioF(), colours_));
        graph->addData(mark.at.mean, mark.at.astigmatism);
    }
}

/// A dot on each pair that ranks, and a broken ring round the one pointed at.
void PlotView::drawPairs()
{
    QCPGraph* dots = nullptr;
    for (const auto& pair : picture_.pairs) {
        if (pair.ranked && !dots)
            dots = marks(rankedMark(devicePixelRatioF(), colours_));
        for (const auto& eye : pair.eyes) {
            if (pair.ranked)
                dots->addData(eye.at.mean, eye.at.astigmatism);
            if (pair.row == pointed_)
                marks(choiceMark(devicePixelRatioF(), colours_, true))
                    ->addData(eye.at.mean, eye.at.astigmatism);
        }
    }
}

void PlotView::line(const PlanePoint& from, const PlanePoint& to, const QPen& pen)
{
    auto* drawn = new QCPItemLine(plot_);
    drawn->start->setCoords(from.mean, from.astigmatism);
    drawn->end->setCoords(to.mean, to.astigmatism);
    drawn->setPen(pen);
}

/// A line from each eye to what the pair gives it.
void PlotView::drawChoice()
{
    for (const auto& choice : picture_.choice) {
        for (const auto& eye : picture_.eyes)
            if (choice.eye == Eye::right ? eye.right : eye.left)
                line(eye.at, choice.at, QPen(colours_.caution, 2.0));
        marks(choiceMark(devicePixelRatioF(), colours_, false))
            ->addData(choice.at.mean, choice.at.astigmatism);
    }
}

/// Under the rings the blur that is left; under both eyes together where their words would meet.
void PlotView::drawBlurs()
{
    const double radius = picture_.trialRing.value_or(picture_.fitsRing.value_or(0.25));
    constexpr double wordShare = 0.28; // of the width shown, that two such words take side by side
    const auto& eyes = picture_.eyes;
    const bool together = eyes.size() == 2 && std::abs(eyes[0].at.mean - eyes[1].at.mean) <
                                                  (picture_.mean.most - picture_.mean.least) * wordShare;
    std::vector<std::pair<PlanePoint, QStringList>> words;
    for (const auto& eye : eyes) {
        const PlanePoint below{eye.at.mean, eye.at.astigmatism - radius};
        if (words.empty() || !together)
            words.push_back({below, {}});
        else
            words.front().first = {(words.front().first.mean + below.mean) / 2.0,
                                   std::min(words.front().first.astigmatism, below.astigmatism)};
        for (const auto& choice : picture_.choice)
            if (choice.eye == Eye::right ? eye.right : eye.left)
                words.back().second << (choice.eye == Eye::right ? tr("R %1 D") : tr("L %1 D"))
                                           .arg(ltr(DeskWords::size(choice.blur)));
    }
    for (const auto& [at, lines] : words)
        if (!lines.isEmpty())
            word(at, lines.join(QLatin1Char('\n')), Qt::AlignHCenter | Qt::AlignTop);
}

void PlotView::drawEyes()
{
    for (const auto& eye : picture_.eyes) {
        if (!(eye.letter == eye.at))
            line(eye.at, eye.letter, QPen(colours_.accent, 1.6));
        marks(rankedMark(devicePixelRatioF(), colours_))->addData(eye.at.mean, eye.at.astigmatism);
        marks(eyeMark(eye, devicePixelRatioF(), colours_, font()))
            ->addData(eye.letter.mean, eye.letter.astigmatism);
    }
}

void PlotView::tellAbout(QPoint place)
{
    const int row = rowAt(place);
    if (row != pointed_)
        Q_EMIT pairPointedAt(row);
    pointAt(row);
    for (const auto& mark : picture_.stock) {
        const QPointF at(plot_->xAxis->coordToPixel(mark.at.mean),
                         plot_->yAxis->coordToPixel(mark.at.astigmatism));
        if (QLineF(at, place).length() > reach)
            continue;
        const auto what = mark.kind == PlaneMarkKind::lens
                              ? tr("lenses %1: %n available", nullptr, mark.available)
                              : tr("pairs %1: %n available", nullptr, mark.available);
        QToolTip::showText(plot_->mapToGlobal(place), what.arg(ltr(dioptres(mark.at.mean))), plot_);
        return;
    }
    QToolTip::hideText();
}

} // namespace quarterstep
