// SPDX-License-Identifier: GPL-3.0-or-later
// The widgets of the place Audit and where they stand; what they do is in audit_place.cpp.
#include "app/desk/message_bar.hpp"
#include "app/desk/models/chart_model.hpp"
#include "app/desk/models/criteria_model.hpp"
#include "app/desk/models/findings_model.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/bench_panel.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/plots/chart_view.hpp"

#include <QAction>
#include <QButtonGroup>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{

/// Buttons of which one is down, numbered from 0.
QButtonGroup* oneOf(QWidget* owner, QHBoxLayout& row,
                    std::initializer_list<std::tuple<QString, QString, QString>> choices)
{
    auto* group = new QButtonGroup(owner);
    for (const auto& [name, words, tooltip] : choices) {
        auto* button = new QPushButton(words);
        button->setObjectName(name);
        button->setToolTip(tooltip);
        button->setCheckable(true);
        button->setChecked(group->buttons().isEmpty());
        group->addButton(button, static_cast<int>(group->buttons().size()));
        row.addWidget(button);
    }
    return group;
}

QComboBox* boxNamed(const QString& name, const QString& accessible)
{
    auto* box = new QComboBox;
    box->setObjectName(name);
    box->setAccessibleName(accessible);
    return box;
}

} // namespace

AuditPlace::AuditPlace(const DeskParts& parts, QWidget* parent)
    : DeskPlace(parent), parts_(parts), findings_(new FindingsModel(this)), chartRows_(new ChartModel(this)),
      criteria_(new CriteriaModel(this)), ofClass_(new QSortFilterProxyModel(this)),
      sorted_(new QSortFilterProxyModel(this))
{
    setObjectName(QStringLiteral("auditPlace"));
    ofClass_->setSourceModel(findings_);
    ofClass_->setFilterRole(FindingsModel::classRole);
    sorted_->setSourceModel(ofClass_);
    sorted_->setSortRole(FindingsModel::rawRole);
    sorted_->setFilterKeyColumn(-1); // words of any column
    sorted_->setFilterCaseSensitivity(Qt::CaseInsensitive);
    auto* columns = new QSplitter(Qt::Horizontal, this);
    columns->setObjectName(QStringLiteral("auditSplitter"));
    columns->addWidget(buildFindings());
    columns->addWidget(buildCase());
    columns->setSizes({826, 520});
    columns->setStretchFactor(0, 3);
    columns->setStretchFactor(1, 2);
    columns->setHandleWidth(8);
    columns->setChildrenCollapsible(false);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(columns);
    connectParts();
    showCase(nullptr);
    auditButton_->setEnabled(false);
}

QWidget* AuditPlace::buildFindings()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("findingsFrame"), tr("Audit"), column);
    figures_ = hinted(tr("Every hand-over is judged again by the rules and the stock of its moment."),
                      QStringLiteral("auditFigures"));
    chain_ = hinted({}, QStringLiteral("auditChain"));
    column->addWidget(figures_);
    column->addWidget(chain_);
    auto* row = new QHBoxLayout;
    auditButton_ = new QPushButton(tr("Audit again"));
    auditButton_->setObjectName(QStringLiteral("auditButton"));
    auditButton_->setToolTip(tr("Reads the ledger from the first entry to the last (F5)"));
    row->addWidget(auditButton_);
    classes_ = boxNamed(QStringLiteral("classBox"), tr("What is shown"));
    classes_->setToolTip(tr("Shows findings of one class only"));
    row->addWidget(classes_, 1);
    filter_ = new QLineEdit;
    filter_->setObjectName(QStringLiteral("findingsFilter"));
    filter_->setAccessibleName(tr("Look for a finding"));
    filter_->setPlaceholderText(tr("Look for a person, a line, a word"));
    filter_->setToolTip(tr("Shows only findings in which these words stand (Ctrl+F)"));
    filter_->setClearButtonEnabled(true);
    row->addWidget(filter_, 1);
    viewButtons_ = oneOf(
        this, *row,
        {{QStringLiteral("findingsAsList"), tr("Findings"),
          tr("What is to be said of hand-overs, one by one")},
         {QStringLiteral("findingsAsCharts"), tr("Charts"), tr("How often, by site, week and kind of pair")},
         {QStringLiteral("findingsAsBench"), tr("Bench"),
          tr("Lots read again, who is to be seen again, the report")}});
    column->addLayout(row);
    views_ = new QStackedWidget;
    findingsView_ = tableOf(sorted_, QStringLiteral("findingsView"), tr("Findings of the audit"));
    findingsView_->setToolTip(tr("Choose a finding to see need, pair and slips beside"));
    findingsView_->setSortingEnabled(true);
    findingsView_->sortByColumn(FindingsModel::dayColumn, Qt::AscendingOrder);
    findingsView_->horizontalHeader()->setSectionResizeMode(QHeaderView::Interactive);
    const int character = findingsView_->fontMetrics().averageCharWidth();
    const std::pair<int, int> widths[] = {
        {FindingsModel::dayColumn, 21},     {FindingsModel::personColumn, 10},
        {FindingsModel::purposeColumn, 10}, {FindingsModel::pairColumn, 18},
        {FindingsModel::classColumn, 26},   {FindingsModel::detailColumn, 34}};
    for (const auto& [at, characters] : widths)
        findingsView_->setColumnWidth(at, characters * character);
    findingsView_->horizontalHeader()->setStretchLastSection(true);
    views_->addWidget(findingsView_);
    views_->addWidget(buildCharts());
    bench_ = new BenchPanel(parts_);
    views_->addWidget(bench_);
    column->addWidget(views_, 1);
    return box;
}

QWidget* AuditPlace::buildCharts()
{
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    chartKind_ = boxNamed(QStringLiteral("chartKindBox"), tr("Chart"));
    chartKind_->addItems({tr("Funnel: shares against the size of the group"),
                          tr("Runs of good hand-overs (g-chart)"), tr("Weeks (p-chart)")});
    chartKind_->setToolTip(tr("Which picture is drawn"));
    chartBy_ = boxNamed(QStringLiteral("chartByBox"), tr("Groups"));
    chartBy_->setToolTip(tr("What the groups of the funnel are"));
    row->addWidget(chartKind_, 2);
    row->addWidget(chartBy_, 1);
    column->addLayout(row);
    chartWhyNot_ = new QLabel;
    chartWhyNot_->setObjectName(QStringLiteral("chartWhyNot"));
    chartWhyNot_->setWordWrap(true);
    chartWhyNot_->setAlignment(Qt::AlignCenter);
    column->addWidget(chartWhyNot_, 1);
    chart_ = new ChartView;
    column->addWidget(chart_, 3);
    column->addWidget(hinted(tr("Solid: the share of all · dashed: inner limit, 95 % · dotted: outer limit. "
                                "Circle: inside · triangle: "
                                "beyond the inner limit · diamond: beyond the outer. Nothing is ranked."),
                             QStringLiteral("chartLegend")));
    chartTable_ = tableOf(chartRows_, QStringLiteral("chartTable"), tr("The numbers of the chart"));
    chartTable_->setToolTip(tr("The same numbers as in the picture"));
    chartTable_->horizontalHeader()->setSectionResizeMode(QHeaderView::Interactive);
    const int character = chartTable_->fontMetrics().averageCharWidth();
    chartTable_->setColumnWidth(ChartModel::nameColumn, 28 * character);
    chartTable_->setColumnWidth(ChartModel::wordsColumn, 40 * character);
    chartTable_->horizontalHeader()->setStretchLastSection(true);
    column->addWidget(chartTable_, 2);
    return page;
}

QWidget* AuditPlace::buildCase()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("caseFrame"), {}, column);
    caseHeading_ = new QLabel;
    caseHeading_->setObjectName(QStringLiteral("caseHeading"));
    caseHeading_->setProperty("role", QStringLiteral("heading"));
    caseHeading_->setWordWrap(true);
    column->addWidget(caseHeading_);
    caseWords_ = new QLabel;
    caseWords_->setObjectName(QStringLiteral("caseWords"));
    caseWords_->setWordWrap(true);
    caseWords_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    caseWords_->setAccessibleName(tr("Need, pair and findings"));
    caseWords_->setToolTip(
        tr("What was needed, what was given, what lay in the box; the text can be copied"));
    column->addWidget(caseWords_);
    auto* row = new QHBoxLayout;
    row->addWidget(hinted(tr("Why, criterion by criterion:"), QStringLiteral("criteriaHint")), 1);
    pairButtons_ = oneOf(
        this, *row,
        {{QStringLiteral("criteriaOfGiven"), tr("Pair given"), tr("How the pair that was given is judged")},
         {QStringLiteral("criteriaOfBetter"), tr("Better pair"),
          tr("How the pair that lay in the box is judged")}});
    column->addLayout(row);
    criteriaView_ = tableOf(criteria_, QStringLiteral("caseCriteria"), tr("Criteria of the pair"));
    criteriaView_->setToolTip(tr("Each criterion with its value, its limit and the source of the limit"));
    const int character = criteriaView_->fontMetrics().averageCharWidth();
    criteriaView_->horizontalHeader()->setSectionResizeMode(QHeaderView::Interactive);
    const std::pair<int, int> widths[] = {{CriteriaModel::nameColumn, 26},
                                          {CriteriaModel::measuredColumn, 8},
                                          {CriteriaModel::limitColumn, 7},
                                          {CriteriaModel::unitColumn, 6},
                                          {CriteriaModel::bandColumn, 14}};
    for (const auto& [at, characters] : widths)
        criteriaView_->setColumnWidth(at, characters * character);
    criteriaView_->horizontalHeader()->setStretchLastSection(true);
    column->addWidget(criteriaView_, 3);
    column->addWidget(hinted(tr("Slips that the record allows. It speaks of the record; a person decides."),
                             QStringLiteral("slipsHint")));
    slips_ = new QTextBrowser;
    slips_->setObjectName(QStringLiteral("slipsText"));
    slips_->setAccessibleName(tr("Slips and their arithmetic"));
    slips_->setToolTip(tr("Probability of each slip, and how it comes about"));
    slips_->setTabChangesFocus(true);
    column->addWidget(slips_, 2);
    return box;
}

void AuditPlace::connectParts()
{
    connect(auditButton_, &QPushButton::clicked, this, &AuditPlace::audit);
    connect(filter_, &QLineEdit::textChanged, sorted_, &QSortFilterProxyModel::setFilterFixedString);
    connect(classes_, &QComboBox::currentIndexChanged, this, [this] {
        const auto wanted = classes_->currentData();
        ofClass_->setFilterRegularExpression(wanted.isValid() ? QStringLiteral("^%1$").arg(wanted.toInt())
                                                              : QString());
    });
    connect(viewButtons_, &QButtonGroup::idClicked, this, &AuditPlace::showView);
    connect(pairButtons_, &QButtonGroup::idClicked, this, &AuditPlace::showCriteria);
    for (auto* box : {chartKind_, chartBy_})
        connect(box, &QComboBox::currentIndexChanged, this, &AuditPlace::showChart);
    connect(findingsView_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) {
                showCase(current.isValid()
                             ? &findings_->caseAt(ofClass_->mapToSource(sorted_->mapToSource(current)).row())
                             : nullptr);
            });
    const std::tuple<QString, QKeySequence, std::function<void()>> keys[] = {
        {tr("Audit again"), QKeySequence::Refresh, [this] { audit(); }},
        {tr("Look for a finding"), QKeySequence::Find, [this] { filter_->setFocus(); }}};
    for (const auto& [words, sequence, run] : keys) {
        auto* action = new QAction(words, this);
        action->setShortcut(sequence);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(action, &QAction::triggered, this, run);
        addAction(action);
    }
}

} // namespace quarterstep
