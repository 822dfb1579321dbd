// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/plot_view.hpp"

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

/// Canvas of one mark, drawn about its middle.
template <class Draw>
QPixmap markOf(double radius, double ratio, Draw draw)
{
    const int side = static_cast<int>(std::ceil(radius * 2.0 + 4.0));
    QPixmap pixmap(static_cast<int>(side * ratio), static_cast<int>(side * ratio));
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(side / 2.0, side / 2.0);
    draw(painter, radius);
    return pixmap;
}

QPixmap stockMark(PlaneMarkKind kind, bool any, double radius, double ratio, const Colours& colours)
{
    return markOf(radius, ratio, [&](QPainter& painter, double r) {
        painter.setPen(QPen(colours.muted, any ? 1.2 : 1.6));
        auto fill = colours.muted;
        fill.setAlphaF(0.45F);
        painter.setBrush(any && kind == PlaneMarkKind::readyMade ? QBrush(fill) : QBrush(Qt::NoBrush));
        if (!any) {
            painter.drawLine(QPointF(-r, -r) * 0.7, QPointF(r, r) * 0.7);
            painter.drawLine(QPointF(-r, r) * 0.7, QPointF(r, -r) * 0.7);
        } else if (kind == PlaneMarkKind::readyMade) {
            painter.drawEllipse(QPointF(0, 0), r, r);
        } else {
            painter.drawPolygon(QPolygonF{QPointF(0, -r * 1.2), QPointF(r * 1.2, 0), QPointF(0, r * 1.2),
                                          QPointF(-r * 1.2, 0)});
        }
    });
}

QPixmap eyeMark(const PlaneEye& eye, double ratio, const Colours& colours, QFont font)
{
    const bool both = eye.right && eye.left;
    font.setBold(true);
    const auto text = both ? QStringLiteral("RL") : eye.right ? QStringLiteral("R") : QStringLiteral("L");
    const double radius = QFontMetricsF(font).height() * (both ? 0.85 : 0.72);
    return markOf(radius, ratio, [&](QPainter& painter, double r) {
        painter.setPen(QPen(colours.base, 1.5));
        painter.setBrush(colours.accent);
        const QRectF box(-r, -r, 2 * r, 2 * r);
        if (eye.left && !both)
            painter.drawRoundedRect(box.adjusted(1.5, 1.5, -1.5, -1.5), 4, 4);
        else
            painter.drawEllipse(box);
        painter.setFont(font);
        painter.setPen(colours.accentText);
        painter.drawText(box, Qt::AlignCenter, text);
    });
}

QPixmap choiceMark(double ratio, const Colours& colours)
{
    return markOf(12.0, ratio, [&](QPainter& painter, double r) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colours.base, 5));
        painter.drawEllipse(QPointF(0, 0), r - 1.0, r - 1.0);
        painter.setPen(QPen(colours.caution, 2.6));
        painter.drawEllipse(QPointF(0, 0), r - 1.0, r - 1.0);
    });
}

/// Five sizes, so that a thousand marks share five pictures.
double radiusFor(int available)
{
    return 3.5 + 1.7 * std::min(4.0, std::floor(std::log2(1.0 + available)));
}
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
    restyle();
}

void PlotView::show(const PlotData& picture)
{
    picture_ = picture;
    plot_->xAxis->setRange(picture_.mean.least, picture_.mean.most);
    plot_->yAxis->setRange(picture_.astigmatism.least, picture_.astigmatism.most);
    draw();
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
    for (auto* axis : {plot_->xAxis, plot_->yAxis})
        qSharedPointerCast<QCPAxisTickerFixed>(axis->ticker())
            ->setTickStep(plot_->axisRect()->width() / halves > label ? 0.5 : 1.0);
    const auto size = plot_->yAxis->range().size();
    plot_->yAxis->setRange(picture_.astigmatism.least, picture_.astigmatism.least + size);
}

void PlotView::draw()
{
    plot_->clearItems();
    plot_->clearGraphs();
    drawRings();
    drawStock();
    drawChoice();
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
    const auto& first = picture_.eyes.front().at;
    if (picture_.fitsRing)
        word({first.mean, first.astigmatism + *picture_.fitsRing},
             tr("fits %1").arg(ltr(DeskWords::size(*picture_.fitsRing))), Qt::AlignHCenter | Qt::AlignTop);
    if (picture_.trialRing)
        word({first.mean, first.astigmatism + *picture_.trialRing},
             tr("on trial %1").arg(ltr(DeskWords::size(*picture_.trialRing))),
             Qt::AlignHCenter | Qt::AlignBottom);
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

/// A line from each eye to what the pair gives it, and under its rings the blur that is left.
void PlotView::drawChoice()
{
    for (const auto& choice : picture_.choice) {
        for (const auto& eye : picture_.eyes) {
            if (choice.eye == Eye::right ? !eye.right : !eye.left)
                continue;
            auto* line = new QCPItemLine(plot_);
            line->start->setCoords(eye.at.mean, eye.at.astigmatism);
            line->end->setCoords(choice.at.mean, choice.at.astigmatism);
            line->setPen(QPen(colours_.caution, 2.0));
        }
        marks(choiceMark(devicePixelRatioF(), colours_))->addData(choice.at.mean, choice.at.astigmatism);
    }
    for (const auto& eye : picture_.eyes) {
        const double below =
            eye.at.astigmatism - picture_.trialRing.value_or(picture_.fitsRing.value_or(0.25));
        QStringList blurs;
        for (const auto& choice : picture_.choice)
            if (choice.eye == Eye::right ? eye.right : eye.left)
                blurs << (choice.eye == Eye::right ? tr("R %1 D") : tr("L %1 D"))
                             .arg(ltr(DeskWords::size(choice.blur)));
        if (!blurs.isEmpty())
            word({eye.at.mean, below}, blurs.join(QLatin1Char('\n')), Qt::AlignHCenter | Qt::AlignTop);
    }
}

void PlotView::drawEyes()
{
    for (const auto& eye : picture_.eyes)
        marks(eyeMark(eye, devicePixelRatioF(), colours_, font()))->addData(eye.at.mean, eye.at.astigmatism);
}

void PlotView::tellAbout(QPoint place)
{
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
