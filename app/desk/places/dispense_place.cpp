// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/dispense_place.hpp"

#include "app/desk/card/prescription_card.hpp"
#include "app/desk/card/reader_card.hpp"
#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/pairs_model.hpp"
#include "app/desk/models/waiting_model.hpp"
#include "app/desk/places/answer_panel.hpp"
#include "app/desk/places/desk_papers.hpp"
#include "app/desk/places/hand_over_panel.hpp"
#include "app/desk/places/line_panel.hpp"
#include "app/desk/places/orders_panel.hpp"
#include "app/desk/places/pages_frame.hpp"
#include "app/desk/places/plane_panel.hpp"
#include "app/desk/places/why_panel.hpp"
#include "app/session/wording.hpp"

#include <QAction>
#include <QDate>
#include <QFileInfo>
#include <QLabel>
#include <QListView>
#include <QShortcut>
#include <QSplitter>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

namespace quarterstep
{

DispensePlace::DispensePlace(const DeskParts& parts, QWidget* parent)
    : DeskPlace(parent), parts_(parts), messages_(parts.messages), waiting_(new WaitingModel(this)),
      pairs_(new PairsModel(this)), papers_(new PaperWorker(this))
{
    setObjectName(QStringLiteral("dispensePlace"));
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(buildColumns());
    connectParts();
    fitParts();
    forgetAnswer();
}

/// The lists let go of their models after this part of the place is gone.
DispensePlace::~DispensePlace()
{
    pairsView_->selectionModel()->disconnect(this);
    waitingView_->selectionModel()->disconnect(this);
}

void DispensePlace::connectParts()
{
    auto* look = new QTimer(this);
    connect(look, &QTimer::timeout, this, &DispensePlace::lookAgain);
    constexpr int everyMs = 500;
    look->start(everyMs);
    connect(card_, &PrescriptionCard::suggestWanted, this, &DispensePlace::suggest);
    connect(card_, &PrescriptionCard::personNamed, this, &DispensePlace::takeNamedPerson);
    connect(card_, &PrescriptionCard::edited, this, &DispensePlace::forgetAnswer);
    connect(reader_, &ReaderCard::suggestWanted, this, &DispensePlace::suggest);
    connect(reader_, &ReaderCard::edited, this, &DispensePlace::forgetAnswer);
    connect(answerPanel_, &AnswerPanel::answerChosen, this, &DispensePlace::showAnswer);
    connect(pairsView_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) { showPair(current.row()); });
    connect(pairsView_, &QListView::entered, this,
            [this](const QModelIndex& index) { plane_->pointAt(index.row()); });
    connect(pairsView_, &QListView::viewportEntered, this, [this] { plane_->pointAt(-1); });
    connect(plane_, &PlanePanel::pairPointedAt, pairs_, &PairsModel::pointAt);
    connect(plane_, &PlanePanel::pairChosen, this,
            [this](int row) { pairsView_->setCurrentIndex(pairs_->index(row, 0)); });
    connect(waitingView_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) { takeRow(current.row()); });
    connect(orders_, &OrdersPanel::moved, this,
            [this](const QString& person, const QString& entry, const QString& words) {
                given_.push_back({entry.toStdString(), person.toStdString(), words});
                refreshAfterMove(person.toStdString());
            });
    connect(orders_, &OrdersPanel::fileWanted, this, &DispensePlace::writeLaboratoryFile);
    connect(papers_, &PaperWorker::drawn, this, [this](const QString& words, const QString& code) {
        if (!code.isEmpty())
            return messages_.showError(words, code);
        const auto before = messages_.text(); // what to put back stays in sight
        messages_.showDone(
            messages_.isHidden() || !messages_.code().isEmpty() ? words : before + QLatin1Char('\n') + words);
    });
    connectHandOver();
    connectLine();
    addKey(Qt::CTRL | Qt::Key_R, &DispensePlace::newReader);
    addKey(Qt::CTRL | Qt::Key_Down, &DispensePlace::nextPair);
    addKey(Qt::CTRL | Qt::Key_Up, &DispensePlace::previousPair);
    addKey(Qt::CTRL | Qt::Key_F, &DispensePlace::findOrder);
}

void DispensePlace::connectHandOver()
{
    connect(handOver_, &HandOverPanel::changed, this, &DispensePlace::judgeTrial);
    connect(handOver_, &HandOverPanel::changed, orders_, [this] { orders_->setActor(handOver_->actor()); });
    const std::pair<QAction*, void (DispensePlace::*)()> commands[] = {
        {handOver_->handOverAction(), &DispensePlace::giveChosen},
        {handOver_->handOverAndPrintAction(), &DispensePlace::giveAndPrint},
        {handOver_->undoAction(), &DispensePlace::takeBackLast},
        {handOver_->noteAction(), &DispensePlace::printNote},
        {handOver_->letterAction(), &DispensePlace::writeLetter},
        {handOver_->orderAction(), &DispensePlace::orderCustom},
        {handOver_->withoutAction(), &DispensePlace::goesWithout}};
    for (const auto& [action, run] : commands)
        connect(action, &QAction::triggered, this, run);
}

void DispensePlace::addKey(const QKeySequence& keys, void (DispensePlace::*run)())
{
    const auto* shortcut = new QShortcut(keys, this);
    connect(shortcut, &QShortcut::activated, this, run);
}

/// What another station or program handed over is gone here within a second: the ledger is asked twice a
/// second.
void DispensePlace::lookAgain()
{
    if (!camp_)
        return;
    try {
        if (!camp_->isBehind())
            return;
        camp_->refresh();
        refreshAfterMove(record_ ? record_->person : std::string());
    } catch (const Error&) { // told when somebody works with it; the next look may find it again
    }
}

void DispensePlace::take(Camp* camp)
{
    camp_ = camp;
    given_.clear();
    record_.reset();
    orders_->take(camp);
    line_->take(camp);
    arriving_.clear();
    askedFor_ = 0;
    waiting_->setRows({});
    card_->clear();
    forgetAnswer();
    if (!camp_)
        return;
    const auto table = QString::fromStdString(camp_->folder()) + QStringLiteral("/people.csv");
    waitingHint_->setText(tr("This folder has no people.csv. Type a prescription below, or load a table."));
    waitingHint_->show();
    waitingView_->hide();
    if (QFileInfo::exists(table))
        loadPeople(table.toStdString());
}

void DispensePlace::refresh()
{
    const int row = pairsView_->currentIndex().row();
    if (answer()) {
        pairs_->show(*answer(), camp_->stock());
        pairsView_->setCurrentIndex(pairs_->index(row, 0));
    } else {
        showPlane(nullptr);
    }
    orders_->refresh();
    line_->stockMoved();
    judgeHandOver();
}

void DispensePlace::takeRow(int row)
{
    if (row < 0)
        return;
    const auto& chosen = waiting_->rowAt(row);
    cards_->setPage(0);
    if (chosen.record) {
        card_->load(*chosen.record);
        suggest();
        return;
    }
    card_->clear();
    forgetAnswer();
    runCommand(messages_, [&chosen] {
        for (const auto& finding : chosen.findings)
            if (finding.severity == Severity::error)
                throw Error(finding, 3);
    });
}

void DispensePlace::newPerson()
{
    waitingView_->clearSelection();
    waitingView_->setCurrentIndex({});
    messages_.dismiss();
    cards_->setPage(0);
    card_->clear();
    forgetAnswer();
}

void DispensePlace::newReader()
{
    if (!camp_)
        return;
    waitingView_->clearSelection();
    waitingView_->setCurrentIndex({});
    messages_.dismiss();
    cards_->setPage(1);
    reader_->clear(QString::fromStdString(freeCode()));
    forgetAnswer();
}

/// A code that this ledger does not know yet: day and number. Served twice, a person without a card gets two.
std::string DispensePlace::freeCode() const
{
    const auto day = QDate::currentDate().toString(QStringLiteral("MMdd"));
    for (int number = 1;; ++number) {
        const auto code = QStringLiteral("RD-%1-%2").arg(day).arg(number).toStdString();
        if (!camp_->hasLedger() || camp_->ledger().entriesOfPerson(code).empty())
            return code;
    }
}

void DispensePlace::showPeoplePage(PeoplePage page)
{
    people_->setPage(page);
}

void DispensePlace::findOrder()
{
    people_->setPage(ordersPage);
    orders_->find();
}

void DispensePlace::togglePlaneTable()
{
    plane_->toggleTable();
}

void DispensePlace::restyle()
{
    fitParts();
    plane_->restyle();
    why_->restyle();
    pairsView_->doItemsLayout();
}

} // namespace quarterstep
