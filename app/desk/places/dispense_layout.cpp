// SPDX-License-Identifier: GPL-3.0-or-later
// The widgets of the place Dispense and where they stand; what they do is in dispense_place.cpp.
#include "app/desk/card/prescription_card.hpp"
#include "app/desk/delegates/pair_delegate.hpp"
#include "app/desk/models/criteria_model.hpp"
#include "app/desk/models/pairs_model.hpp"
#include "app/desk/models/plane_model.hpp"
#include "app/desk/models/waiting_model.hpp"
#include "app/desk/places/answer_panel.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/hand_over_panel.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/plots/plot_view.hpp"

#include <QFrame>
#include <QHeaderView>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

QWidget* DispensePlace::buildLeft()
{
    QVBoxLayout* column = nullptr;
    auto* people = framed(QStringLiteral("waitingFrame"), tr("People of the table"), column);
    waitingView_ = tableOf(waiting_, QStringLiteral("waitingView"), tr("People of the table"));
    waitingView_->setToolTip(tr("Choose a person: the card fills and pairs are suggested"));
    waitingView_->horizontalHeader()->setSectionResizeMode(WaitingModel::personColumn,
                                                           QHeaderView::ResizeToContents);
    waitingView_->horizontalHeader()->setSectionResizeMode(WaitingModel::ageColumn,
                                                           QHeaderView::ResizeToContents);
    waitingView_->horizontalHeader()->setSectionResizeMode(WaitingModel::stateColumn, QHeaderView::Stretch);
    waitingHint_ = hinted({}, QStringLiteral("waitingHint"));
    column->addWidget(waitingHint_);
    column->addWidget(waitingView_, 1);

    QVBoxLayout* cardColumn = nullptr;
    auto* cardFrame = framed(QStringLiteral("cardFrame"), tr("Prescription"), cardColumn);
    card_ = new PrescriptionCard;
    cardScroll_ = new QScrollArea;
    cardScroll_->setObjectName(QStringLiteral("cardScroll"));
    cardScroll_->setWidgetResizable(true);
    cardScroll_->viewport()->setObjectName(QStringLiteral("cardViewport"));
    cardScroll_->setFrameShape(QFrame::NoFrame);
    cardScroll_->setFocusPolicy(Qt::NoFocus);
    cardScroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    cardScroll_->setWidget(card_);
    cardColumn->addWidget(cardScroll_, 1);
    auto* suggestButton = new QPushButton(tr("Suggest pairs"));
    suggestButton->setObjectName(QStringLiteral("suggestButton"));
    suggestButton->setProperty("primary", true);
    suggestButton->setToolTip(tr("Searches the stock for this prescription (Enter in any field)"));
    connect(suggestButton, &QPushButton::clicked, this, &DispensePlace::suggest);
    cardColumn->addWidget(suggestButton);

    auto* left = new QSplitter(Qt::Vertical);
    left->setObjectName(QStringLiteral("leftSplitter"));
    left->addWidget(people);
    left->addWidget(cardFrame);
    left->setStretchFactor(0, 1);
    left->setStretchFactor(1, 0);
    left->setSizes({195, 510});
    left->setChildrenCollapsible(false);
    return left;
}

/// The card is never cut at its side: its column is at least as wide as it needs in the look now applied.
void DispensePlace::fitCard()
{
    card_->ensurePolished();
    cardScroll_->setMinimumWidth(card_->minimumSizeHint().width() +
                                 cardScroll_->verticalScrollBar()->sizeHint().width());
}

QWidget* DispensePlace::buildMiddle()
{
    auto* middle = new QWidget;
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    answerPanel_ = new AnswerPanel;
    pairsView_ = new QListView;
    pairsView_->setObjectName(QStringLiteral("pairsView"));
    pairsView_->setAccessibleName(tr("Pairs to pull"));
    pairsView_->setToolTip(
        tr("Best first: power in dioptres, where to fetch it, what it leaves in each eye, prism"));
    pairsView_->setModel(pairs_);
    pairsView_->setItemDelegate(new PairDelegate(pairsView_));
    pairsView_->setSelectionMode(QAbstractItemView::SingleSelection);
    pairsView_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    pairsView_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    pairsView_->setResizeMode(QListView::Adjust);
    pairsView_->viewport()->setAutoFillBackground(false);
    pairsView_->setStyleSheet(QStringLiteral("QListView{background:transparent;}"));
    pairsHint_ = hinted({}, QStringLiteral("pairsHint"));
    pairsHint_->setAlignment(Qt::AlignCenter);
    handOver_ = new HandOverPanel;
    column->addWidget(answerPanel_);
    column->addWidget(pairsHint_, 1);
    column->addWidget(pairsView_, 1);
    column->addWidget(handOver_);
    return middle;
}

QWidget* DispensePlace::buildRight()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("planeFrame"), {}, column);
    auto* heading = new QLabel(tr("Power plane"), box);
    heading->setProperty("role", QStringLiteral("heading"));
    tableButton_ = new QPushButton(tr("Table"), box);
    tableButton_->setObjectName(QStringLiteral("planeTableButton"));
    tableButton_->setCheckable(true);
    tableButton_->setToolTip(tr("Shows the same values as a table (Ctrl+T)"));
    auto* top = new QHBoxLayout;
    top->addWidget(heading);
    top->addStretch(1);
    top->addWidget(tableButton_);
    column->addLayout(top);
    plot_ = new PlotView;
    planePages_ = new QStackedWidget;
    planePages_->addWidget(plot_);
    auto* twin = tableOf(plane_, QStringLiteral("planeTable"), tr("Power plane as a table"));
    twin->setToolTip(tr("Powers in dioptres and how many can be given"));
    twin->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    planePages_->addWidget(twin);
    column->addWidget(planePages_, 1);
    column->addWidget(
        hinted(tr("R, L: the person's eyes · disc: pairs · diamond: lenses · cross: none left · "
                  "open ring: chosen pair. The larger, the more there are."),
               QStringLiteral("planeLegend")));

    auto* right = new QSplitter(Qt::Vertical);
    right->setObjectName(QStringLiteral("rightSplitter"));
    right->addWidget(box);
    right->addWidget(buildWhy());
    right->setStretchFactor(0, 3);
    right->setStretchFactor(1, 2);
    right->setChildrenCollapsible(false);
    return right;
}

QWidget* DispensePlace::buildWhy()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("whyFrame"), tr("Why this pair"), column);
    auto* view = tableOf(criteria_, QStringLiteral("criteriaView"), tr("Why: criteria of the chosen pair"));
    view->setToolTip(tr("Measured values and limits, each with its unit and source"));
    const int character = view->fontMetrics().averageCharWidth();
    const std::pair<int, int> widths[] = {{CriteriaModel::nameColumn, 23},
                                          {CriteriaModel::measuredColumn, 8},
                                          {CriteriaModel::limitColumn, 7},
                                          {CriteriaModel::unitColumn, 6},
                                          {CriteriaModel::bandColumn, 21}};
    for (const auto& [at, characters] : widths)
        view->setColumnWidth(at, characters * character);
    view->horizontalHeader()->setMinimumSectionSize(character * 4);
    view->horizontalHeader()->setStretchLastSection(true);
    column->addWidget(view, 1);
    return box;
}

} // namespace quarterstep
