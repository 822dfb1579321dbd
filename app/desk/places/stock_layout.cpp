// SPDX-License-Identifier: GPL-3.0-or-later
// The widgets of the place Stock and where they stand; what they do is in stock_place.cpp.
#include "app/desk/models/box_model.hpp"
#include "app/desk/models/card_model.hpp"
#include "app/desk/models/lines_model.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/desk/plots/ladder_view.hpp"

#include <QAction>
#include <QButtonGroup>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
constexpr auto stockColumnWidths = {826, 520};
} // namespace

StockPlace::StockPlace(const DeskParts& parts, QWidget* parent)
    : DeskPlace(parent), messages_(parts.messages), pins_(parts.pins), lines_(new LinesModel(this)),
      box_(new BoxModel(this)), card_(new CardModel(this)), sorted_(new QSortFilterProxyModel(this))
{
    setObjectName(QStringLiteral("stockPlace"));
    sorted_->setSourceModel(lines_);
    sorted_->setSortRole(LinesModel::rawRole);
    sorted_->setFilterKeyColumn(-1); // words of any column
    sorted_->setFilterCaseSensitivity(Qt::CaseInsensitive);
    auto* columns = new QSplitter(Qt::Horizontal, this);
    columns->setObjectName(QStringLiteral("stockSplitter"));
    columns->addWidget(buildLines());
    auto* right = new QWidget(columns);
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(buildEdits());
    column->addWidget(buildCard(), 1);
    work_ = new StockWorkPanel(right);
    column->addWidget(work_);
    columns->addWidget(right);
    columns->setSizes(stockColumnWidths);
    for (int at = 0; at < 2; ++at)
        columns->setStretchFactor(at, std::data(stockColumnWidths)[at]);
    columns->setHandleWidth(8);
    columns->setChildrenCollapsible(false);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(columns);
    connectParts();
}

QWidget* StockPlace::buildLines()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("linesFrame"), tr("Stock"), column);
    figures_ = hinted({}, QStringLiteral("stockFigures"));
    column->addWidget(figures_);
    auto* row = new QHBoxLayout;
    filter_ = new QLineEdit;
    filter_->setObjectName(QStringLiteral("linesFilter"));
    filter_->setAccessibleName(tr("Look for a line"));
    filter_->setPlaceholderText(tr("Look for a line, a power, a bin"));
    filter_->setToolTip(tr("Shows only lines in which these words stand (Ctrl+F)"));
    filter_->setClearButtonEnabled(true);
    row->addWidget(filter_, 1);
    shown_ = hinted({}, QStringLiteral("linesShown"));
    shown_->setWordWrap(false);
    row->addWidget(shown_);
    row->addSpacing(12);
    viewButtons_ = new QButtonGroup(this);
    const std::tuple<QString, QString, QString> views[] = {
        {QStringLiteral("linesAsTable"), tr("Table"), tr("The lines one below the other")},
        {QStringLiteral("linesAsLadder"), tr("Ladder"), tr("How many pieces of each power")},
        {QStringLiteral("linesAsBox"), tr("Box"), tr("The bins as they stand in the box")}};
    for (const auto& [name, words, tooltip] : views) {
        auto* button = new QPushButton(words);
        button->setObjectName(name);
        button->setToolTip(tooltip);
        button->setCheckable(true);
        button->setChecked(viewButtons_->buttons().isEmpty());
        viewButtons_->addButton(button, static_cast<int>(viewButtons_->buttons().size()));
        row->addWidget(button);
    }
    column->addLayout(row);
    column->addWidget(buildViews(), 1);
    return box;
}

QWidget* StockPlace::buildViews()
{
    views_ = new QStackedWidget;
    linesView_ = tableOf(sorted_, QStringLiteral("linesView"), tr("Lines of the stock"));
    linesView_->setToolTip(tr("Choose a line to see its card and to enter what happened"));
    linesView_->setSortingEnabled(true);
    linesView_->sortByColumn(LinesModel::binColumn, Qt::AscendingOrder);
    linesView_->horizontalHeader()->setSectionResizeMode(QHeaderView::Interactive);
    const int character = linesView_->fontMetrics().averageCharWidth();
    const std::pair<int, int> widths[] = {{LinesModel::binColumn, 7},        {LinesModel::lineColumn, 19},
                                          {LinesModel::powerColumn, 21},     {LinesModel::onHandColumn, 10},
                                          {LinesModel::availableColumn, 11}, {LinesModel::asideColumn, 15},
                                          {LinesModel::levelColumn, 13},     {LinesModel::campsColumn, 7}};
    for (const auto& [at, characters] : widths)
        linesView_->setColumnWidth(at, characters * character);
    linesView_->horizontalHeader()->setStretchLastSection(true);
    views_->addWidget(linesView_);
    views_->addWidget(buildLadder());
    boxView_ = tableOf(box_, QStringLiteral("boxView"), tr("Bins of the box"));
    boxView_->setToolTip(tr("Choose a bin: its line is shown beside"));
    boxView_->setSelectionBehavior(QAbstractItemView::SelectItems);
    boxView_->setLayoutDirection(Qt::LeftToRight); // the box on the table is not mirrored by a language
    boxView_->setShowGrid(true);
    boxView_->setAlternatingRowColors(false);
    boxView_->setWordWrap(true);
    boxView_->verticalHeader()->show();
    boxView_->verticalHeader()->setDefaultSectionSize(boxView_->fontMetrics().height() * 3 + 12);
    boxView_->horizontalHeader()->setMinimumSectionSize(boxView_->fontMetrics().averageCharWidth() * 11);
    views_->addWidget(boxView_);
    return views_;
}

QWidget* StockPlace::buildLadder()
{
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    for (auto& [ladder, title, name] :
         {std::tuple{&pairsLadder_, tr("Ready-made pairs"), QStringLiteral("pairsLadder")},
          std::tuple{&lensLadder_, tr("Lenses"), QStringLiteral("lensLadder")}}) {
        auto* heading = new QLabel(title);
        heading->setProperty("role", QStringLiteral("heading"));
        column->addWidget(heading);
        *ladder = new LadderView;
        (*ladder)->setObjectName(name);
        (*ladder)->setAccessibleName(title);
        column->addWidget(*ladder, 1);
    }
    column->addWidget(
        hinted(tr("Bar: available · hatched: kept aside · line across: keep at least this many. "
                  "A click looks for that power."),
               QStringLiteral("ladderLegend")));
    return page;
}

QWidget* StockPlace::buildCard()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("stockCardFrame"), {}, column);
    lineHeading_ = new QLabel;
    lineHeading_->setObjectName(QStringLiteral("lineHeading"));
    lineHeading_->setProperty("role", QStringLiteral("heading"));
    lineWords_ = hinted({}, QStringLiteral("lineWords"));
    column->addWidget(lineHeading_);
    column->addWidget(lineWords_);
    cardView_ = tableOf(card_, QStringLiteral("cardView"), tr("Stock card of the line"));
    cardView_->setToolTip(tr("Everything that happened to this line, newest first"));
    const int character = cardView_->fontMetrics().averageCharWidth();
    const std::pair<int, int> widths[] = {{CardModel::whenColumn, 20},
                                          {CardModel::whatColumn, 16},
                                          {CardModel::changeColumn, 9},
                                          {CardModel::balanceColumn, 10}};
    for (const auto& [at, characters] : widths)
        cardView_->setColumnWidth(at, characters * character);
    cardView_->horizontalHeader()->setStretchLastSection(true);
    column->addWidget(cardView_, 1);
    blind_ =
        hinted(tr("A count is blind: what the book says comes back into sight once the count is entered."),
               QStringLiteral("blindHint"));
    blind_->hide();
    column->addWidget(blind_);
    column->addStretch(0);
    return box;
}

QWidget* StockPlace::buildEdits()
{
    QVBoxLayout* column = nullptr;
    edits_ = framed(QStringLiteral("editsFrame"), tr("Counts edited in stock.yaml by hand"), column);
    editsText_ = new QLabel;
    editsText_->setObjectName(QStringLiteral("editsText"));
    editsText_->setWordWrap(true);
    column->addWidget(editsText_);
    editsReason_ = new QLineEdit;
    editsReason_->setObjectName(QStringLiteral("editsReasonEdit"));
    editsReason_->setAccessibleName(tr("Reason"));
    editsReason_->setPlaceholderText(tr("Reason, for taking them over"));
    editsReason_->setToolTip(tr("Why the counts in the file are the right ones; kept with the entry"));
    column->addWidget(editsReason_);
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    const std::tuple<QString, QString, QString, bool> ways[] = {
        {QStringLiteral("discardEditsButton"), tr("Put the ledger's counts back"),
         tr("The file gets the counts of the ledger again"), false},
        {QStringLiteral("acceptEditsButton"), tr("Take the file's counts over"),
         tr("The ledger gets an entry with the difference and the reason"), true}};
    for (const auto& [name, words, tooltip, accept] : ways) {
        auto* button = new QPushButton(words);
        button->setObjectName(name);
        button->setToolTip(tooltip);
        connect(button, &QPushButton::clicked, this, [this, accepted = accept] { settleEdits(accepted); });
        row->addWidget(button);
    }
    column->addLayout(row);
    edits_->hide();
    return edits_;
}

void StockPlace::connectParts()
{
    connect(filter_, &QLineEdit::textChanged, this, [this](const QString& words) {
        sorted_->setFilterFixedString(words);
        showFigures();
    });
    connect(viewButtons_, &QButtonGroup::idClicked, this, &StockPlace::showView);
    connect(linesView_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) {
                showLine(current.isValid() ? lines_->lineAt(sorted_->mapToSource(current).row()).name
                                           : std::string());
            });
    connect(boxView_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) {
                const auto lines = box_->linesAt(current);
                if (!lines.empty())
                    chooseLine(lines.front());
            });
    for (auto* ladder : {pairsLadder_, lensLadder_})
        connect(ladder, &LadderView::powerChosen, this, [this](double power) {
            filter_->setText(QString::asprintf("%+.2f", power));
            showView(0);
        });
    linesView_->installEventFilter(this);
    connect(work_, &StockWorkPanel::workChanged, this, &StockPlace::hideBook);
    connect(work_->enterAction(), &QAction::triggered, this, &StockPlace::enter);
    connect(work_->undoAction(), &QAction::triggered, this, &StockPlace::takeBackLast);
    auto* look = new QAction(tr("Look for a line"), this);
    look->setShortcut(QKeySequence::Find);
    look->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(look, &QAction::triggered, filter_, [this] { filter_->setFocus(); });
    addAction(look);
}

} // namespace quarterstep
