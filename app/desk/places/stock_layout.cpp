// SPDX-License-Identifier: GPL-3.0-or-later
// The widgets of the place Stock and where they stand; what they do is in stock_place.cpp.
#include "app/desk/message_bar.hpp"
#include "app/desk/models/box_model.hpp"
#include "app/desk/models/card_model.hpp"
#include "app/desk/models/lines_model.hpp"
#include "app/desk/places/packing_panel.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/desk/places/transfer_panel.hpp"
#include "app/desk/plots/ladder_view.hpp"
#include "app/desk/shell/one_page_layout.hpp"
#include "app/desk/shell/wrap_layout.hpp"

#include <QAction>
#include <QButtonGroup>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
constexpr auto stockColumnWidths = {846, 500};
constexpr int leastBeside = 120; ///< characters: bin, line, power and count beside a card
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
    // Made where they will stand: moved there, every part of them would be dressed in the style once more.
    auto* pages = new QWidget(this);
    pages_ = new OnePageLayout(pages);
    packing_ = new PackingPanel(messages_, parts.work, pages);
    transfer_ = new TransferPanel(messages_, pins_, pages);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(4);
    whole->addWidget(buildViewButtons());
    pages_->addWidget(buildStock());
    pages_->addWidget(packing_);
    pages_->addWidget(transfer_);
    whole->addWidget(pages, 1);
    connectParts();
    restyle();
    showView(asTable);
}

QWidget* StockPlace::buildViewButtons()
{
    auto* bar = new QWidget;
    auto* row = new WrapLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    viewButtons_ = new QButtonGroup(this);
    const std::tuple<QString, QString, QString> views[] = {
        {QStringLiteral("linesAsTable"), tr("Table"), tr("The lines one below the other")},
        {QStringLiteral("linesAsLadder"), tr("Ladder"), tr("How many pieces of each power")},
        {QStringLiteral("linesAsBox"), tr("Box"), tr("The bins as they stand in the box")},
        {QStringLiteral("stockPacking"), tr("Packing"), tr("What to buy and pack for the next camp")},
        {QStringLiteral("stockTransfers"), tr("Transfers"),
         tr("Pieces sent to other sites, and what comes from them")}};
    for (const auto& [name, words, tooltip] : views) {
        const int view = static_cast<int>(viewButtons_->buttons().size());
        auto* action = new QAction(tr("Stock: %1").arg(words), this);
        action->setShortcut(QKeySequence(Qt::CTRL | Qt::Key(Qt::Key_1 + view)));
        connect(action, &QAction::triggered, this, [this, view] {
            if (viewButtons_->button(view)->isEnabled())
                showView(view);
        });
        addAction(action);
        auto* button = new QPushButton(words);
        button->setObjectName(name);
        button->setToolTip(
            QStringLiteral("%1 (%2)").arg(tooltip, action->shortcut().toString(QKeySequence::NativeText)));
        button->setCheckable(true);
        button->setChecked(view == asTable);
        viewButtons_->addButton(button, view);
        row->addWidget(button);
    }
    return bar;
}

QWidget* StockPlace::buildStock()
{
    columns_ = new QSplitter(Qt::Horizontal, pages_->parentWidget());
    columns_->setObjectName(QStringLiteral("stockSplitter"));
    columns_->addWidget(buildLines());
    auto* right = new QWidget(columns_);
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(buildEdits());
    column->addWidget(buildCard(), 1);
    work_ = new StockWorkPanel(right);
    column->addWidget(work_);
    columns_->addWidget(right);
    columns_->setSizes(stockColumnWidths);
    for (int at = 0; at < 2; ++at)
        columns_->setStretchFactor(at, std::data(stockColumnWidths)[at]);
    columns_->setHandleWidth(8);
    columns_->setChildrenCollapsible(false);
    if (isRightToLeft()) // Qt puts what it mirrors one pixel too far to the right
        columns_->setContentsMargins(0, 0, 1, 0);
    return columns_;
}

void StockPlace::foldColumns()
{
    const bool beside = width() >= leastBeside * linesView_->fontMetrics().averageCharWidth();
    const auto way = beside ? Qt::Horizontal : Qt::Vertical;
    if (columns_->orientation() == way)
        return;
    columns_->setOrientation(way);
    columns_->setSizes(stockColumnWidths);
}

void StockPlace::resizeEvent(QResizeEvent* event)
{
    DeskPlace::resizeEvent(event);
    foldColumns();
}

QWidget* StockPlace::buildLines()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("linesFrame"), tr("Stock"), column);
    figures_ = hinted({}, QStringLiteral("stockFigures"));
    column->addWidget(figures_);
    column->addWidget(buildSpot());
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
    column->addLayout(row);
    column->addWidget(buildViews(), 1);
    return box;
}

QWidget* StockPlace::buildViews()
{
    auto* views = new QWidget;
    views_ = new OnePageLayout(views);
    linesView_ = tableOf(sorted_, QStringLiteral("linesView"), tr("Lines of the stock"));
    linesView_->setToolTip(tr("Choose a line to see its card and to enter what happened"));
    linesView_->setSortingEnabled(true);
    linesView_->sortByColumn(LinesModel::binColumn, Qt::AscendingOrder);
    giveWidths(*linesView_, {5, 16, 16, 8, 11, 8, 10, 6}); // bin, line, power, available … camps
    shareWidth(*linesView_, {{LinesModel::asideColumn, 1}, {LinesModel::powerColumn, 1}}, 16);
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
    for (auto* header : {boxView_->horizontalHeader(), boxView_->verticalHeader()})
        header->setDefaultAlignment(Qt::AlignCenter); // as the bins
    views_->addWidget(boxView_);
    return views;
}

void StockPlace::fitBox()
{
    const auto letters = boxView_->fontMetrics();
    const int least = letters.averageCharWidth() * 8;
    const int most = letters.averageCharWidth() * 13; // longer words go on in the next line
    boxView_->horizontalHeader()->setMinimumSectionSize(least);
    fitColumns(*boxView_);
    for (int column = 0; column < box_->columnCount(); ++column)
        boxView_->setColumnWidth(column, std::min(most, boxView_->columnWidth(column)));
    boxView_->verticalHeader()->setMinimumSectionSize(letters.height() * 3 + 4);
    constexpr int mostCells = 600; // of a larger box each row has three lines
    boxView_->verticalHeader()->setDefaultSectionSize(letters.height() * 3 + 12);
    if (box_->rowCount() * box_->columnCount() > mostCells)
        return;
    boxView_->resizeRowsToContents();
    for (int row = 0; row < box_->rowCount(); ++row)
        boxView_->setRowHeight(row, boxView_->rowHeight(row) + 8);
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
    giveWidths(*cardView_, {18, 8, 7, 8}); // when, what, change, balance
    shareWidth(*cardView_, {{CardModel::wordsColumn, 1}, {CardModel::whatColumn, 1}}, 7);
    column->addWidget(cardView_, 1);
    blind_ =
        hinted(tr("A count is blind: what the book says comes back into sight once the count is entered."),
               QStringLiteral("blindHint"));
    blind_->hide();
    column->addWidget(blind_);
    column->addStretch(0);
    return box;
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
    connectTransfers();
    auto* look = new QAction(tr("Look for a line"), this);
    look->setShortcut(QKeySequence::Find);
    look->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(look, &QAction::triggered, filter_, [this] { filter_->setFocus(); });
    addAction(look);
}

void StockPlace::connectTransfers()
{
    connect(transfer_, &TransferPanel::undoWanted, this, &StockPlace::takeBackLast);
    connect(transfer_, &TransferPanel::entered, this, [this](const QStringList& ids, const QString& words) {
        for (const auto& id : ids)
            posted_.push_back(id.toStdString());
        messages_.showDone(words);
        showUndo();
        refresh();
        Q_EMIT campChanged();
    });
}

} // namespace quarterstep
