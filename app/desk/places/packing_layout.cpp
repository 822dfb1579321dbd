// SPDX-License-Identifier: GPL-3.0-or-later
// The widgets of packing and where they stand; what they do is in packing_panel.cpp.
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/cells_model.hpp"
#include "app/desk/places/desk_papers.hpp"
#include "app/desk/places/packing_draws.hpp"
#include "app/desk/places/packing_panel.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/plots/chart_view.hpp"
#include "app/desk/shell/folding_row.hpp"
#include "app/desk/shell/number_box.hpp"
#include "app/desk/shell/wrap_layout.hpp"

#include <QAction>
#include <QComboBox>
#include <QFrame>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSlider>
#include <QSpinBox>
#include <QTabBar>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{

constexpr double usualBudget = 200.0;
constexpr double budgetSliderEnd = 1000.0;
constexpr double weightSliderEnd = 30.0; ///< kg; what one person lifts, with a reserve (common practice)

QLabel* labelIn(QGridLayout& grid, int row, const QString& words, QWidget* field)
{
    auto* label = new QLabel(words);
    label->setBuddy(field);
    grid.addWidget(label, row, 0);
    return label;
}

NumberBox* numberBox(const QString& name, const QString& spoken, const QString& tooltip, double most,
                     int decimals)
{
    auto* box = new NumberBox;
    box->setObjectName(name);
    box->setAccessibleName(spoken);
    box->setToolTip(tooltip);
    box->setDecimals(decimals);
    box->setMinimumHeight(leastField);
    box->setRange(0.0, most);
    return box;
}

} // namespace

PackingPanel::PackingPanel(MessageBar& messages, LongWork& work, QWidget* parent)
    : QWidget(parent), messages_(messages), work_(work), papers_(new PaperWorker(this)),
      rows_(new CellsModel(this))
{
    setObjectName(QStringLiteral("packingPanel"));
    setProperty("helpTopic", QStringLiteral("planning"));
    auto* parts = new FoldingRow;
    parts->add(buildQuestion(), 1);
    parts->add(buildAnswer(), 2); // reasons are long
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(parts);
    buildActions();
    connect(papers_, &PaperWorker::drawn, this, [this](const QString& words, const QString& code) {
        if (code.isEmpty())
            messages_.showDone(words);
        else
            messages_.showError(words, code);
    });
    restyle();
    showAnswer();
}

QWidget* PackingPanel::buildQuestion()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("packingFrame"), tr("Boxes for the next camp"), column);
    auto* grid = new QGridLayout;
    grid->setVerticalSpacing(4);
    grid->setHorizontalSpacing(8);
    grid->setColumnStretch(1, 1);
    buildSources(*grid);
    buildLimits(*grid);
    column->addLayout(grid);
    draws_ = new PackingDraws;
    connect(draws_, &PackingDraws::changed, this, &PackingPanel::showState);
    column->addWidget(draws_);
    auto* row = new QHBoxLayout;
    state_ = hinted({}, QStringLiteral("packingState"));
    row->addWidget(state_, 1);
    planButton_ = new QPushButton(tr("Plan the boxes"));
    planButton_->setObjectName(QStringLiteral("packingPlanButton"));
    planButton_->setToolTip(tr("Plans what to buy; nothing is entered (F5)"));
    planButton_->setProperty("primary", true);
    connect(planButton_, &QPushButton::clicked, this, &PackingPanel::makePlan);
    row->addWidget(planButton_);
    column->addLayout(row);
    curve_ = new ChartView;
    curve_->setObjectName(QStringLiteral("packingCurve"));
    curve_->setAccessibleName(tr("Persons served against money"));
    column->addWidget(curve_, 1);
    column->addWidget(hinted(tr("Line: served on the draws planned for · triangle: the knee · diamond: this "
                                "plan · dotted: no order passes it · upright: the budget."),
                             QStringLiteral("packingLegend")));
    return box;
}

void PackingPanel::buildSources(QGridLayout& grid)
{
    auto* choose = new QPushButton(tr("Choose…"));
    choose->setObjectName(QStringLiteral("supplierButton"));
    choose->setToolTip(tr("The list of what a supplier sells (supplier.yaml)"));
    connect(choose, &QPushButton::clicked, this, &PackingPanel::askSupplier);
    supplierWords_ = new QLabel;
    supplierWords_->setObjectName(QStringLiteral("supplierWords"));
    supplierWords_->setWordWrap(true);
    labelIn(grid, 0, tr("Supplier"), choose);
    grid.addWidget(supplierWords_, 0, 1);
    grid.addWidget(choose, 0, 2);
    demand_ = new QComboBox;
    demand_->setObjectName(QStringLiteral("demandBox"));
    demand_->setAccessibleName(tr("Whom to plan for"));
    demand_->setToolTip(tr("People as they were seen: of the ledger, or of a table of prescriptions"));
    demand_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    demand_->setMinimumContentsLength(14);
    connect(demand_, &QComboBox::activated, this, &PackingPanel::askDemand);
    labelIn(grid, 1, tr("Demand"), demand_);
    grid.addWidget(demand_, 1, 1);
    people_ = countBox(QStringLiteral("packingPeopleBox"), tr("People who come next"),
                       tr("How many people come to the next camp"), 1, 100000, PackQuestion().people);
    people_->setSuffix(tr(" people"));
    grid.addWidget(people_, 1, 2);
}

void PackingPanel::buildLimits(QGridLayout& grid)
{
    budget_ = numberBox(QStringLiteral("budgetBox"), tr("Budget"),
                        tr("Money that may be spent, in the currency of the supplier's list"), 1e6, 2);
    budget_->setValue(usualBudget);
    budget_->setSingleStep(5.0);
    weight_ = numberBox(QStringLiteral("packingWeightBox"), tr("Weight"),
                        tr("Kilograms of what is bought; 0: not limited"), 1e5, 3);
    weight_->setSingleStep(0.5);
    weight_->setSuffix(tr(" kg"));
    weight_->setSpecialValueText(tr("any weight"));
    int row = 2;
    for (auto& [box, name, step, usual] :
         {std::tuple{budget_, QStringLiteral("budgetSlider"), 5.0, budgetSliderEnd},
          std::tuple{weight_, QStringLiteral("packingWeightSlider"), 0.5, weightSliderEnd}}) {
        auto* slider = box->slider(step, usual);
        slider->setObjectName(name);
        labelIn(grid, row, box->accessibleName(), box);
        grid.addWidget(slider, row, 1);
        grid.addWidget(box, row++, 2);
        connect(box, &QDoubleSpinBox::valueChanged, this, &PackingPanel::showState);
    }
    boxes_ =
        countBox(QStringLiteral("packingBoxesBox"), tr("Boxes"),
                 tr("Boxes that are carried, what is on hand included; 0: as many as it takes"), 0, 10000, 0);
    boxes_->setSpecialValueText(tr("any number"));
    pieces_ = countBox(QStringLiteral("packingPiecesBox"), tr("Pieces in a box"),
                       tr("How many pieces a box holds"), 1, 100000, PackQuestion().piecesInBox);
    pieces_->setSuffix(tr(" in each"));
    labelIn(grid, row, tr("Boxes"), boxes_);
    grid.addWidget(boxes_, row, 1);
    grid.addWidget(pieces_, row, 2);
    for (auto* box : {boxes_, pieces_, people_})
        connect(box, &QSpinBox::valueChanged, this, &PackingPanel::showState);
}

QWidget* PackingPanel::buildAnswer()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("packingAnswerFrame"), {}, column);
    answer_ = new QLabel;
    answer_->setObjectName(QStringLiteral("packingAnswer"));
    answer_->setWordWrap(true);
    answer_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    answer_->setAccessibleName(tr("What the plan comes to"));
    answer_->setToolTip(tr("Served, spent, and how sure that is; the text can be copied"));
    column->addWidget(answer_);
    lists_ = new QTabBar;
    lists_->setObjectName(QStringLiteral("packingLists"));
    lists_->setAccessibleName(tr("What is shown of the plan"));
    lists_->setToolTip(tr("What is shown of the plan"));
    lists_->setDrawBase(false);
    lists_->setExpanding(false);
    lists_->setUsesScrollButtons(false);
    lists_->setElideMode(Qt::ElideRight);
    for (const auto& words : {tr("Order"), tr("Packing list"), tr("Checked"), tr("Without a pair"),
                              tr("Runs out"), tr("Not bought"), tr("Curve")})
        lists_->addTab(words);
    column->addWidget(lists_);
    view_ = tableOf(rows_, QStringLiteral("packingView"), tr("The plan for the boxes"));
    view_->setToolTip(tr("The plan, row by row"));
    view_->horizontalHeader()->setSectionResizeMode(QHeaderView::Interactive);
    view_->horizontalHeader()->setStretchLastSection(true);
    wrapRows(*view_); // reasons are long
    column->addWidget(view_, 1);
    auto* outputs = new QWidget;
    auto* row = new WrapLayout(outputs);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    const std::tuple<const char*, QString, QString, void (PackingPanel::*)()> ways[] = {
        {"printPackingButton", tr("Print packing list"), tr("The packing list as a paper (Ctrl+P)"),
         &PackingPanel::print},
        {"saveBoxesButton", tr("Save packing list…"), tr("Box by box, as a table (Ctrl+S)"),
         &PackingPanel::askBoxes},
        {"saveOrderButton", tr("Save order…"), tr("What to order, as a table (Ctrl+Shift+S)"),
         &PackingPanel::askOrder}};
    for (const auto& [name, words, tooltip, run] : ways) {
        auto* button = new QPushButton(words);
        button->setObjectName(QLatin1String(name));
        button->setToolTip(tooltip);
        connect(button, &QPushButton::clicked, this, run);
        outputs_ << button;
        row->addWidget(button);
    }
    column->addWidget(outputs);
    connect(lists_, &QTabBar::currentChanged, this, &PackingPanel::showList);
    return box;
}

QAction* PackingPanel::command(const QString& words, const QKeySequence& key, void (PackingPanel::*run)())
{
    auto* action = new QAction(words, this);
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, run);
    addAction(action);
    return action;
}

void PackingPanel::buildActions()
{
    command(tr("Plan the boxes"), QKeySequence::Refresh, &PackingPanel::makePlan);
    command(tr("Print packing list"), QKeySequence::Print, &PackingPanel::print);
    command(tr("Save packing list…"), QKeySequence::Save, &PackingPanel::askBoxes);
    command(tr("Save order…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S), &PackingPanel::askOrder);
}

} // namespace quarterstep
