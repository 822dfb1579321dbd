// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/plane_panel.hpp"

#include "app/desk/models/plane_model.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/plots/plot_view.hpp"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

PlanePanel::PlanePanel(QWidget* parent)
    : QFrame(parent), plane_(new PlaneModel(this)), plot_(new PlotView), pages_(new QStackedWidget),
      tableButton_(new QPushButton(tr("Table"), this))
{
    setObjectName(QStringLiteral("planeFrame"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->setSpacing(4);
    auto* heading = new QLabel(tr("Power plane"), this);
    heading->setProperty("role", QStringLiteral("heading"));
    tableButton_->setObjectName(QStringLiteral("planeTableButton"));
    tableButton_->setCheckable(true);
    tableButton_->setToolTip(tr("Shows the same values as a table (Ctrl+T)"));
    auto* top = new QHBoxLayout;
    top->addWidget(heading);
    top->addStretch(1);
    top->addWidget(tableButton_);
    column->addLayout(top);
    pages_->addWidget(plot_);
    auto* twin = tableOf(plane_, QStringLiteral("planeTable"), tr("Power plane as a table"));
    twin->setToolTip(tr("Powers in dioptres and how many can be given"));
    twin->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    pages_->addWidget(twin);
    column->addWidget(pages_, 1);
    legend_ = hinted(tr("R, L: the person's eyes · disc: pairs · diamond: lenses · cross: none left · "
                        "dot: ranks · open ring: chosen pair. The larger, the more there are."),
                     QStringLiteral("planeLegend"));
    pages_->setToolTip(legend_->text());
    column->addWidget(legend_);
    connect(tableButton_, &QPushButton::toggled, this, [this](bool on) {
        pages_->setCurrentIndex(on ? 1 : 0);
        tableButton_->setText(on ? tr("Picture") : tr("Table"));
    });
    connect(plot_, &PlotView::pairPointedAt, this, &PlanePanel::pairPointedAt);
    connect(plot_, &PlotView::pairChosen, this, &PlanePanel::pairChosen);
}

void PlanePanel::show(const PlotData& picture)
{
    plot_->show(picture);
    plane_->show(picture);
}

void PlanePanel::pointAt(int row)
{
    plot_->pointAt(row);
}

/// Where letters are large and the screen is small, the picture needs the room of its legend, which is said
/// by its tooltip as well.
void PlanePanel::resizeEvent(QResizeEvent* event)
{
    constexpr int leastLines = 20;
    QFrame::resizeEvent(event);
    legend_->setVisible(height() >= leastLines * fontMetrics().height());
}

void PlanePanel::toggleTable()
{
    tableButton_->toggle();
}

void PlanePanel::restyle()
{
    plot_->restyle();
}

} // namespace quarterstep
