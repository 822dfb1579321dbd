// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/stock_place.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/box_model.hpp"
#include "app/desk/models/card_model.hpp"
#include "app/desk/models/lines_model.hpp"
#include "app/desk/places/packing_panel.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/places/transfer_panel.hpp"
#include "app/desk/plots/ladder_view.hpp"
#include "app/desk/shell/one_page_layout.hpp"
#include "app/desk/shell/pin_guard.hpp"
#include "app/session/entry_words.hpp"
#include "app/session/wording.hpp"

#include <QAbstractButton>
#include <QButtonGroup>
#include <QDateTime>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QTableView>
#include <QTimer>

#include <utility>

namespace quarterstep
{

StockPlace::~StockPlace()
{
    linesView_->selectionModel()->disconnect(this);
    boxView_->selectionModel()->disconnect(this);
}

void StockPlace::take(Camp* camp)
{
    camp_ = camp;
    posted_.clear();
    showUndo();
    filter_->clear();
    line_.clear();
    read_ = std::make_shared<StockRead>();
    counts_ = {};
    packing_->take(camp);
    transfer_->take(camp);
    refresh();
}

void StockPlace::refresh()
{
    stale_ = true;
    if (isVisible())
        readCounts();
}

void StockPlace::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (stale_)
        readCounts();
    // The chosen line in sight, once the list has its height.
    QTimer::singleShot(0, linesView_, [this] { linesView_->scrollTo(linesView_->currentIndex()); });
}

/// Ladder and box are drawn when they are looked at.
void StockPlace::drawViews()
{
    const int view = views_->currentIndex();
    if (std::exchange(drawn_[static_cast<std::size_t>(view)], true))
        return;
    const auto stock = camp_ ? camp_->stock() : std::vector<StockLine>{};
    if (view == asBox) {
        box_->show(stock);
        fitBox();
    } else if (view == asLadder) {
        pairsLadder_->show(ladderOf(stock, LineKind::readyMade));
        lensLadder_->show(ladderOf(stock, LineKind::lens));
    }
}

bool StockPlace::chooseLine(const std::string& name)
{
    if (stale_)
        readCounts();
    const int row = lines_->rowOf(name);
    if (row < 0)
        return false;
    filter_->clear();
    linesView_->setCurrentIndex(sorted_->mapFromSource(lines_->index(row, 0)));
    return true;
}

void StockPlace::showLine(const std::string& name)
{
    line_ = name;
    const int row = lines_->rowOf(name);
    work_->setLine(row < 0 ? QString() : QString::fromStdString(name));
    if (row < 0) {
        lineHeading_->setText(tr("No line is chosen"));
        lineWords_->setText(tr("Choose a line in the table or a bin in the box."));
        card_->show({});
        hideBook();
        return;
    }
    const auto& line = lines_->lineAt(row);
    const auto cell = [this, row](int column) { return lines_->index(row, column).data().toString(); };
    // The power stands with the name: among words of another script its sign would be of another font.
    lineHeading_->setText(ltr(QString::fromStdString(name)) + QStringLiteral(" · ") +
                          cell(LinesModel::powerColumn));
    QStringList words;
    if (const auto bin = cell(LinesModel::binColumn); !bin.isEmpty())
        words << tr("bin %1").arg(bin);
    words << lines_->index(row, 0).data(Qt::ToolTipRole).toString().split(QLatin1Char('\n'));
    if (!line.frame.model.empty())
        words << QString::fromStdString(line.frame.model);
    lineWords_->setText(words.join(QStringLiteral(" · ")));
    card_->show(camp_->hasLedger() ? camp_->ledger().card(camp_->site(), name) : std::vector<CardRow>{});
    hideBook();
}

void StockPlace::hideBook()
{
    const bool blind = work_->work() == StockWork::count;
    for (const int column : {LinesModel::onHandColumn, LinesModel::availableColumn, LinesModel::asideColumn,
                             LinesModel::levelColumn, LinesModel::campsColumn})
        linesView_->setColumnHidden(column, blind);
    cardView_->setVisible(!blind);
    blind_->setVisible(blind);
    for (auto* button : viewButtons_->buttons())
        button->setEnabled(!blind || viewButtons_->id(button) == 0);
    if (blind)
        showView(0);
}

QString StockPlace::figureWords() const
{
    const auto& camp = lines_->figures();
    QStringList words{tr("lines %1").arg(camp.lines), tr("none left in %1").arg(camp.linesOut)};
    if (camp.linesPlanned > 0)
        words << tr("within keep levels %1 of %2").arg(camp.linesToPlan).arg(camp.linesPlanned)
              << tr("to reorder %1").arg(camp.linesToReorder);
    if (camp.handOvers > 0)
        words << tr("handed over %1").arg(camp.handOvers);
    return words.join(QStringLiteral("  ·  "));
}

void StockPlace::showFigures()
{
    figures_->setText(figureWords());
    const int all = lines_->rowCount();
    const int seen = sorted_->rowCount();
    shown_->setText(
        seen == 0 && all > 0
            ? tr("Nothing matches “%1”; empty the field to see all %2 lines.").arg(filter_->text()).arg(all)
            : tr("%1 of %2 lines").arg(seen).arg(all));
}

void StockPlace::showUndo()
{
    work_->setUndo(!posted_.empty());
    transfer_->setUndo(!posted_.empty());
}

void StockPlace::enter()
{
    if (!camp_)
        return;
    const auto wish = work_->read();
    if (!wish)
        return;
    pins_.run(roleFor(wish->work), [this, line = line_, asked = *wish] { carryOutWish(line, asked); });
}

void StockPlace::carryOutWish(const std::string& line, const StockWish& wish)
{
    runCommand(messages_, [this, &line, &wish] {
        auto asked = entriesOf(*camp_, line, wish);
        if (!asked.findings.empty())
            throw Error(asked.findings.front(), 3);
        const auto done = carryOut(*camp_, std::move(asked.entries), false);
        QStringList words;
        for (const auto& entry : done.entries) {
            posted_.push_back(entry.id);
            words << kindWords(entry.kind);
        }
        for (const auto& change : done.lines)
            words << tr("on hand %1, was %2").arg(change.after.onHand).arg(change.before.onHand);
        messages_.showDone(tr("%1: %2").arg(ltr(line), words.join(QStringLiteral(", "))));
        work_->reset();
        showUndo();
        refresh();
        Q_EMIT campChanged();
        if (wish.work == StockWork::count)
            chooseNext();
        linesView_->setFocus();
    });
}

void StockPlace::chooseNext()
{
    const int next = linesView_->currentIndex().row() + 1;
    if (next < sorted_->rowCount())
        linesView_->setCurrentIndex(sorted_->index(next, linesView_->currentIndex().column()));
}

bool StockPlace::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == linesView_ && event->type() == QEvent::KeyPress && work_->work() == StockWork::count) {
        const auto typed = dynamic_cast<QKeyEvent*>(event)->text();
        if (typed.size() == 1 && typed.front().isDigit() && !line_.empty()) {
            work_->startWith(typed);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void StockPlace::takeBackLast()
{
    if (!camp_ || posted_.empty())
        return;
    pins_.run(roleAskedBy("record", wordOf(EntryKind::enteredInError)), [this] {
        runCommand(messages_, [this] {
            const auto id = posted_.back();
            carryOut(*camp_, {undoOf(*camp_, id, {}, tr("taken back at the desk").toStdString())}, false);
            posted_.pop_back();
            showUndo();
            messages_.showDone(tr("Taken back: the counts are as before."));
            refresh();
            Q_EMIT campChanged();
        });
    });
}

void StockPlace::showView(int view)
{
    pages_->setCurrentIndex(view < packing ? 0 : view - packing + 1);
    if (view < packing)
        views_->setCurrentIndex(view);
    if (view == packing)
        packing_->begin();
    if (view == transfers)
        transfer_->begin();
    if (auto* button = viewButtons_->button(view))
        button->setChecked(true);
    drawViews();
}

void StockPlace::setPrinter(const QString& name)
{
    packing_->setPrinter(name);
}

void StockPlace::restyle()
{
    pairsLadder_->restyle();
    lensLadder_->restyle();
    packing_->restyle();
    transfer_->restyle();
    const int row = linesView_->fontMetrics().height() + 8;
    for (auto* view : {linesView_, cardView_})
        view->verticalHeader()->setDefaultSectionSize(row);
    giveRoom(*linesView_, 7);
    giveRoom(*cardView_, 4);
    giveRoom(*boxView_, 9);
    fitBox();
    foldColumns();
}

} // namespace quarterstep
