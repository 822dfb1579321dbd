// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/bench_panel.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/cells_model.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/audit_reports.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/places/stock_reading.hpp"
#include "app/desk/places/table_room.hpp"
#include "app/desk/shell/pin_guard.hpp"
#include "app/desk/shell/wrap_layout.hpp"
#include "app/session/follow_up.hpp"
#include "app/session/keeping.hpp"
#include "app/session/lot.hpp"
#include "app/session/wording.hpp"
#include "inventory/store/write_back.hpp"
#include "inventory/text/tolerance_file.hpp"

#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QStandardItemModel>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{

QString dayOfMs(std::int64_t atMs)
{
    return ltr(QDateTime::fromMSecsSinceEpoch(atMs).date().toString(Qt::ISODate));
}

/// `key` of the row, for whoever acts on it.
void addCells(QStandardItemModel& model, const QStringList& cells, const QString& key = {})
{
    QList<QStandardItem*> row;
    for (const auto& cell : cells) {
        auto* item = new QStandardItem(cell);
        item->setEditable(false);
        item->setToolTip(cell);
        row << item;
    }
    row.front()->setData(key, Qt::UserRole);
    model.appendRow(row);
}

QTableView* tableIn(QVBoxLayout& column, QAbstractItemModel* model, const QString& name, const QString& words,
                    std::initializer_list<int> characters)
{
    auto* view = tableOf(model, name, words);
    view->setToolTip(words);
    giveWidths(*view, characters);
    column.addWidget(view, 1);
    return view;
}

DueAtBench dueOf(const Camp& camp)
{
    const auto facts = followUpFacts(camp);
    return {facts.wearers.size(), countWear(facts.wearers, facts.seen), coverageOfCamp(camp).after.share(),
            followUpsDue(facts.wearers, facts.seen, QDateTime::currentMSecsSinceEpoch())};
}

MadeTable dueTable(const std::vector<FollowUpDue>& due)
{
    MadeTable table{{BenchPanel::tr("Person"), BenchPanel::tr("Given"), BenchPanel::tr("Pair"),
                     BenchPanel::tr("When"), BenchPanel::tr("State")},
                    {}};
    for (const auto& each : due) {
        const auto state = each.state == DueState::soon  ? BenchPanel::tr("soon")
                           : each.state == DueState::due ? BenchPanel::tr("due")
                                                         : BenchPanel::tr("late");
        table.rows.push_back({{ltr(QString::fromStdString(each.wearer.person)), {}},
                              {dayOfMs(each.wearer.givenMs), {}},
                              {ltr(QString::fromStdString(each.wearer.lines)), {}},
                              {say(Sentence{stagesOfFollowUp()[each.stage].words, {}}), {}},
                              {state, {}}});
    }
    return table;
}

QLabel* headingIn(QVBoxLayout& column, const QString& words)
{
    auto* heading = new QLabel(words);
    heading->setProperty("role", QStringLiteral("heading"));
    column.addWidget(heading);
    return heading;
}

} // namespace

BenchPanel::BenchPanel(const DeskParts& parts, QWidget* parent)
    : QWidget(parent), messages_(parts.messages), pins_(parts.pins), work_(parts.work),
      reports_(new AuditReports(parts.messages, parts.work)), lots_(new QStandardItemModel(this)),
      due_(new CellsModel(this))
{
    setObjectName(QStringLiteral("benchPanel"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    buildLots(*column);
    buildDue(*column);
    column->addWidget(reports_);
    take(nullptr);
}

void BenchPanel::buildLots(QVBoxLayout& column)
{
    headingIn(column, tr("Lots read again at the bench"));
    auto* row = new WrapLayout;
    auto* words = new QLabel(tr("Pairs to read:"));
    row->addWidget(words);
    sample_ = new QSpinBox;
    sample_->setObjectName(QStringLiteral("lotSampleBox"));
    sample_->setAccessibleName(tr("Pairs to read"));
    sample_->setToolTip(
        tr("How many pairs are drawn; “as few as will do” keeps the risks of a wrong decision small"));
    sample_->setRange(0, 500);
    sample_->setSpecialValueText(tr("as few as will do"));
    words->setBuddy(sample_);
    row->addWidget(sample_);
    const std::vector<Act> acts{
        {"drawLotButton", tr("Draw a lot…"),
         tr("Draws hand-overs by lot, enters the draw and writes the sheet for the bench"),
         [this] {
             const auto sheet = askWhereTo(tr("Sheet for the bench"), QStringLiteral("bench-sheet.csv"),
                                           tr("Tables (*.csv)"));
             if (!sheet.isEmpty())
                 draw(sample_->value(), sheet);
         }},
        {"lotSheetButton", tr("Its sheet…"),
         tr("Writes the sheet of the chosen lot again: to be filled in, or for paper"),
         [this] { askSheet(); }},
        {"readSheetButton", tr("Take in a sheet…"),
         tr("Reads a filled-in sheet, judges it and enters results and decision"), [this] {
             const auto sheet =
                 QFileDialog::getOpenFileName(this, tr("Sheet from the bench"), {}, tr("Tables (*.csv)"));
             if (!sheet.isEmpty())
                 readSheet(sheet);
         }}};
    buttons_ = buttonsIn(*row, this, acts);
    column.addLayout(row);
    lotsWords_ = hinted(tr("No lot was drawn yet; draw one first."), QStringLiteral("lotsWords"));
    column.addWidget(lotsWords_);
    lots_->setHorizontalHeaderLabels({tr("Drawn"), tr("Pairs"), tr("May fail"), tr("Decision")});
    lotsView_ =
        tableIn(column, lots_, QStringLiteral("lotsView"), tr("Lots drawn in this camp"), {14, 14, 10});
    holdHeight(*lotsView_, 2);
}

void BenchPanel::buildDue(QVBoxLayout& column)
{
    dueHeading_ = headingIn(column, tr("To be seen again"));
    dueHeading_->setObjectName(QStringLiteral("dueHeading"));
    dueWords_ = hinted({}, QStringLiteral("dueWords"));
    column.addWidget(dueWords_);
    due_->show(dueTable({}));
    tableIn(column, due_, QStringLiteral("dueView"), tr("Persons to be seen again"), {12, 14, 26, 20});
}

QString BenchPanel::askWhereTo(const QString& words, const QString& name, const QString& kinds)
{
    const auto begin = camp_ == nullptr ? name : QDir(QString::fromStdString(camp_->folder())).filePath(name);
    return QFileDialog::getSaveFileName(this, words, begin, kinds);
}

void BenchPanel::take(Camp* camp)
{
    camp_ = camp;
    reports_->take(camp);
    refresh();
}

void BenchPanel::refresh()
{
    reports_->refresh();
    for (auto* button : buttons_)
        button->setEnabled(camp_ != nullptr && camp_->hasLedger());
    stale_ = true;
    if (isVisible())
        readLedger();
}

void BenchPanel::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (stale_)
        readLedger();
}

void BenchPanel::readLedger()
{
    stale_ = false;
    ++asked_;
    const bool any = camp_ != nullptr && camp_->hasLedger();
    lots_->removeRows(0, lots_->rowCount());
    due_->show(dueTable({}));
    lotsWords_->hide();
    dueHeading_->setText(tr("To be seen again"));
    dueWords_->setText(any ? QString() : tr("Nothing happened in this camp yet."));
    if (any)
        runCommand(messages_, [this] {
            showLots();
            showDue();
        });
}

void BenchPanel::showLots()
{
    for (const auto& lot : lotsOf(*camp_))
        addCells(*lots_,
                 {dayOfMs(lot.atMs), tr("%1 of %2").arg(lot.plan.plan.sample).arg(lot.size),
                  QString::number(lot.plan.plan.allowed),
                  lot.readBy.empty() ? tr("not read yet") : say(decisionSentence(lot.count, lot.plan.plan))},
                 QString::fromStdString(lot.id));
    lotsWords_->setVisible(lots_->rowCount() == 0);
    if (lots_->rowCount() > 0)
        lotsView_->setCurrentIndex(lots_->index(lots_->rowCount() - 1, 0)); // the newest
}

/// Of the chosen lot.
void BenchPanel::askSheet()
{
    const auto chosen = lotsView_->currentIndex();
    if (!chosen.isValid())
        return messages_.showError(tr("No lot was drawn yet; draw one first."), {});
    const auto lot = chosen.siblingAtColumn(0).data(Qt::UserRole).toString().toStdString();
    const auto file = askWhereTo(tr("Sheet for the bench"), QStringLiteral("bench-sheet.csv"),
                                 tr("Tables (*.csv);;Paper (*.pdf);;Text (*.txt)"));
    if (!file.isEmpty())
        reports_->saveSheet(lot, file);
}

/// Of a long ledger beside the window, by a reader of its own.
void BenchPanel::showDue()
{
    if (camp_->ledger().position() <= shortLedger)
        return tellDue(dueOf(*camp_));
    const auto found = std::make_shared<DueAtBench>();
    const auto work = [found, folder = camp_->folder()](const Job&) {
        *found = dueOf(Camp::open(folder, Ledger::Mode::readOnly));
    };
    dueWords_->setText(AuditPlace::tr("Reading the ledger …"));
    work_.start(AuditPlace::tr("Reading the ledger …"), work,
                [this, found, asked = asked_](const std::exception_ptr& problem, bool stopped) {
                    if (asked != asked_)
                        return;
                    dueWords_->clear();
                    runCommand(messages_, [&] {
                        if (problem)
                            std::rethrow_exception(problem);
                        if (!stopped)
                            tellDue(*found);
                    });
                });
}

void BenchPanel::tellDue(const DueAtBench& found)
{
    QStringList words{tr("wearers %1").arg(found.wearers),
                      tr("met %1, of them wearing %2").arg(found.wear.met).arg(found.wear.wearing)};
    if (found.coverage)
        words << tr("effective coverage of those who came %1 %")
                     .arg(QString::number(100.0 * *found.coverage, 'f', 1));
    dueHeading_->setText(QStringLiteral("%1: %2").arg(tr("To be seen again")).arg(found.due.size()));
    dueWords_->setText(words.join(QStringLiteral("  ·  ")));
    dueHeading_->setText(QStringLiteral("%1: %2").arg(tr("To be seen again")).arg(found.due.size()));
    due_->show(dueTable(found.due));
}

void BenchPanel::draw(int sample, const QString& sheet)
{
    pins_.run(roleAskedBy("audit", "draw"), [this, sample, sheet] { enterDraw(sample, sheet); });
}

void BenchPanel::enterDraw(int sample, const QString& sheet)
{
    runCommand(messages_, [this, sample, &sheet] {
        LotWish wish;
        if (sample > 0)
            wish.sample = sample;
        wish.seed = static_cast<std::uint64_t>(QDateTime::currentMSecsSinceEpoch());
        const auto lot = drawLot(*camp_, wish);
        carryOut(*camp_, {lotEntry(lot, {})}, false);
        const auto entered = lotNamed(*camp_, {});
        replaceFile(sheet.toStdString(), benchSheetText(entered.id, sheetOf(*camp_, entered)), true);
        messages_.showDone(tr("Drawn: %1 of %2 hand-overs; the sheet is %3.")
                               .arg(entered.plan.plan.sample)
                               .arg(entered.size)
                               .arg(ltr(QDir::toNativeSeparators(sheet))));
        refresh();
        Q_EMIT campChanged();
    });
}

void BenchPanel::readSheet(const QString& sheet)
{
    pins_.run(roleAskedBy("audit", "read"), [this, sheet] { enterSheet(sheet); });
}

void BenchPanel::enterSheet(const QString& sheet)
{
    runCommand(messages_, [this, &sheet] {
        const auto reading = readBenchSheet(sheet.toStdString());
        if (!reading.usable())
            throw CampNotOpened(reading.findings);
        const auto& sets = defaultTolerances();
        const auto set = chooseTolerances(sets, {});
        AuditOptions options;
        options.nowMs = QDateTime::currentMSecsSinceEpoch();
        const auto result = judgeLot(*camp_, reading.value, *set.value(), options);
        if (!result.usable())
            throw CampNotOpened(result.findings);
        carryOut(*camp_, {lotReadEntry(result, {})}, false);
        messages_.showDone(say(decisionSentence(result.count, result.lot.plan.plan)));
        refresh();
        Q_EMIT campChanged();
    });
}

} // namespace quarterstep
