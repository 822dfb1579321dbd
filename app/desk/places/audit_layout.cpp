// SPDX-License-Identifier: GPL-3.0-or-later
// The widgets of the place Audit and where they stand; what they do is in audit_place.cpp.
#include "app/desk/message_bar.hpp"
#include "app/desk/models/findings_model.hpp"
#include "app/desk/places/audit_case.hpp"
#include "app/desk/places/audit_charts.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/audit_reports.hpp"
#include "app/desk/places/bench_panel.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/places/table_room.hpp"
#include "app/desk/shell/folding_row.hpp"
#include "app/desk/shell/folding_splitter.hpp"
#include "app/desk/shell/wrap_layout.hpp"

#include <QAction>
#include <QButtonGroup>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
constexpr int listView = 0; ///< of the buttons
constexpr int chartsView = 1;
} // namespace

AuditPlace::AuditPlace(const DeskParts& parts, QWidget* parent)
    : DeskPlace(parent), parts_(parts), cases_(std::make_shared<AuditCases>()),
      findings_(new FindingsModel(this)), ofClass_(new QSortFilterProxyModel(this)),
      sorted_(new QSortFilterProxyModel(this))
{
    setObjectName(QStringLiteral("auditPlace"));
    ofClass_->setSourceModel(findings_);
    ofClass_->setFilterRole(FindingsModel::classRole);
    sorted_->setSourceModel(ofClass_);
    sorted_->setSortRole(FindingsModel::rawRole);
    sorted_->setFilterKeyColumn(-1); // words of any column
    sorted_->setFilterCaseSensitivity(Qt::CaseInsensitive);
    auto* columns = new FoldingSplitter(this);
    columns->setObjectName(QStringLiteral("auditSplitter"));
    constexpr int findingsCharacters = 66;
    constexpr int caseCharacters = 44;
    columns->add(buildFindings(), 3, findingsCharacters);
    case_ = new AuditCasePanel;
    columns->add(case_, 2, caseCharacters);
    columns->setSizes({826, 520});
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(columns);
    connectParts();
    showView(listView);
    auditButton_->setEnabled(false);
    chainButton_->setEnabled(false);
}

QWidget* AuditPlace::buildFindings()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("findingsFrame"), {}, column);
    column->addWidget(buildHead());
    figures_ = hinted(tr("Every hand-over is judged again by the rules and the stock of its moment."),
                      QStringLiteral("auditFigures"));
    column->addWidget(figures_);
    column->addWidget(buildRecord());
    views_ = new QStackedWidget;
    views_->addWidget(buildList());
    charts_ = new AuditCharts(parts_.messages);
    views_->addWidget(charts_);
    bench_ = new BenchPanel(parts_);
    connect(charts_, &AuditCharts::paperWanted, &bench_->reports(), &AuditReports::drawChart);
    views_->addWidget(bench_);
    column->addWidget(views_, 1);
    return box;
}

/// The title, and what of the audit is shown.
QWidget* AuditPlace::buildHead()
{
    auto* head = new QWidget;
    auto* row = new WrapLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    auto* heading = new QLabel(tr("Audit"));
    heading->setProperty("role", QStringLiteral("heading"));
    row->addWidget(heading);
    row->endHere();
    viewButtons_ = oneOf(
        this, *row,
        {{QStringLiteral("findingsAsList"), tr("Findings"),
          tr("What is to be said of hand-overs, one by one")},
         {QStringLiteral("findingsAsCharts"), tr("Charts"), tr("How often, by site, week and kind of pair")},
         {QStringLiteral("findingsAsBench"), tr("Bench"),
          tr("Lots read again, who is to be seen again, the report")}});
    return head;
}

/// Whether the ledger is whole, and the buttons that read it anew.
QWidget* AuditPlace::buildRecord()
{
    auto* record = new FoldingRow;
    chain_ = hinted({}, QStringLiteral("auditChain"));
    constexpr int chainCharacters = 40;
    record->add(chain_, 1, chainCharacters * chain_->fontMetrics().averageCharWidth());
    auto* buttons = new QWidget;
    auto* row = new QHBoxLayout(buttons);
    row->setContentsMargins(0, 0, 0, 0);
    row->addStretch(1);
    chainButton_ = new QPushButton(tr("Check the record"));
    chainButton_->setObjectName(QStringLiteral("chainButton"));
    chainButton_->setToolTip(tr(
        "Every entry, every text and every count of the ledger against the chain, in the background (F6)"));
    row->addWidget(chainButton_);
    auditButton_ = new QPushButton(tr("Audit again"));
    auditButton_->setObjectName(QStringLiteral("auditButton"));
    auditButton_->setToolTip(tr("Reads the ledger from the first entry to the last (F5)"));
    row->addWidget(auditButton_);
    record->add(buttons, 0);
    return record;
}

/// What of the list is shown: a class, or where words stand.
QWidget* AuditPlace::buildFilter()
{
    auto* bar = new QWidget;
    auto* row = new WrapLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    classes_ =
        boxNamed(QStringLiteral("classBox"), tr("What is shown"), tr("Shows findings of one class only"));
    classes_->setMinimumContentsLength(16);
    row->addWidget(classes_);
    filter_ = new QLineEdit;
    filter_->setObjectName(QStringLiteral("findingsFilter"));
    filter_->setAccessibleName(tr("Look for a finding"));
    filter_->setPlaceholderText(tr("Look for a person, a line, a word"));
    filter_->setToolTip(tr("Shows only findings in which these words stand (Ctrl+F)"));
    filter_->setClearButtonEnabled(true);
    filter_->setMinimumWidth(filter_->fontMetrics().averageCharWidth() * 36);
    row->addWidget(filter_);
    return bar;
}

QWidget* AuditPlace::buildList()
{
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(buildFilter());
    findingsView_ = tableOf(sorted_, QStringLiteral("findingsView"), tr("Findings of the audit"));
    findingsView_->setToolTip(tr("Choose a finding to see need, pair and slips beside"));
    findingsView_->setSortingEnabled(true);
    findingsView_->sortByColumn(FindingsModel::dayColumn, Qt::AscendingOrder);
    giveWidths(*findingsView_, {19, 9, 9, 16}); // day, person, purpose, pair
    // Who and what are read first; where the letters are large, the rest is scrolled to.
    constexpr FindingsModel::Column readFirst[] = {FindingsModel::personColumn, FindingsModel::classColumn,
                                                   FindingsModel::detailColumn, FindingsModel::slipColumn,
                                                   FindingsModel::pairColumn,   FindingsModel::purposeColumn};
    auto* header = findingsView_->horizontalHeader();
    for (int at = 0; const auto wanted : readFirst)
        header->moveSection(header->visualIndex(wanted), at++);
    constexpr int leastCharacters = 17;
    shareWidth(
        *findingsView_,
        {{FindingsModel::classColumn, 4}, {FindingsModel::detailColumn, 5}, {FindingsModel::slipColumn, 5}},
        leastCharacters);
    constexpr int fullDetail = 60; // characters
    wrapIn(*findingsView_, FindingsModel::detailColumn, fullDetail, 2);
    giveRoom(*findingsView_, 5);
    column->addWidget(findingsView_, 1);
    return page;
}

void AuditPlace::connectParts()
{
    connect(auditButton_, &QPushButton::clicked, this, &AuditPlace::audit);
    connect(chainButton_, &QPushButton::clicked, this, &AuditPlace::checkChain);
    connect(filter_, &QLineEdit::textChanged, sorted_, &QSortFilterProxyModel::setFilterFixedString);
    connect(classes_, &QComboBox::currentIndexChanged, this, [this] {
        const auto wanted = classes_->currentData();
        ofClass_->setFilterRegularExpression(wanted.isValid() ? QStringLiteral("^%1$").arg(wanted.toInt())
                                                              : QString());
    });
    connect(viewButtons_, &QButtonGroup::idClicked, this, &AuditPlace::showView);
    connect(findingsView_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) {
                case_->show(
                    current.isValid()
                        ? &findings_->caseAt(ofClass_->mapToSource(sorted_->mapToSource(current)).row())
                        : nullptr);
            });
    const std::tuple<QString, QKeySequence, std::function<void()>> keys[] = {
        {tr("Audit again"), QKeySequence::Refresh, [this] { audit(); }},
        {tr("Check the record"), QKeySequence(Qt::Key_F6), [this] { checkChain(); }},
        {tr("Save the report for the site"), QKeySequence::Save,
         [this] { bench_->reports().askAndSave(false); }},
        {tr("Print the chart"), QKeySequence::Print,
         [this] {
             showView(chartsView);
             charts_->print();
         }},
        {tr("Save the chart…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S),
         [this] {
             showView(chartsView);
             charts_->askAndSave();
         }},
        {tr("Look for a finding"), QKeySequence::Find, [this] {
             showView(listView);
             filter_->setFocus();
         }}};
    for (const auto& [words, sequence, run] : keys) {
        auto* action = new QAction(words, this);
        action->setShortcut(sequence);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(action, &QAction::triggered, this, run);
        addAction(action);
    }
}

} // namespace quarterstep
