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
#include "app/desk/places/given_before.hpp"
#include "app/desk/places/hand_over_panel.hpp"
#include "app/desk/places/line_panel.hpp"
#include "app/desk/places/orders_panel.hpp"
#include "app/desk/places/pages_frame.hpp"
#include "app/desk/places/plane_panel.hpp"
#include "app/desk/places/why_panel.hpp"
#include "app/desk/shown.hpp"
#include "app/session/wording.hpp"

#include <QAction>
#include <QDate>
#include <QFileInfo>
#include <QLabel>
#include <QListView>
#include <QScrollArea>
#include <QShortcut>
#include <QSplitter>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
constexpr auto columnWidths = {342, 548, 456};
} // namespace

DispensePlace::DispensePlace(MessageBar& messages, QWidget* parent)
    : QWidget(parent), messages_(messages), waiting_(new WaitingModel(this)), pairs_(new PairsModel(this)),
      papers_(new PaperWorker(this))
{
    setObjectName(QStringLiteral("dispensePlace"));
    auto* columns = new QSplitter(Qt::Horizontal, this);
    columns->setObjectName(QStringLiteral("dispenseSplitter"));
    for (auto* part : {buildLeft(), buildMiddle(), buildRight()})
        columns->addWidget(part);
    columns->setSizes(columnWidths);
    for (int column = 0; column < 3; ++column)
        columns->setStretchFactor(column, std::data(columnWidths)[column]);
    columns->setHandleWidth(8);
    columns->setChildrenCollapsible(false);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    auto* scroll = new QScrollArea(this); // large text on a small screen: everything can still be reached
    scroll->setObjectName(QStringLiteral("dispenseScroll"));
    scroll->viewport()->setObjectName(QStringLiteral("cardViewport"));
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(columns);
    whole->addWidget(scroll);
    connectParts();
    fitCard();
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
    connect(papers_, &PaperWorker::drawn, this, [this](const QString& words, const QString& code) {
        code.isEmpty() ? messages_.showDone(words) : messages_.showError(words, code);
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
    if (!camp_->edited().empty())
        messages_.showDone(
            tr("Counts in stock.yaml were edited by hand in %n line(s). The ledger's counts are used until "
               "the edits are accepted or discarded in Stock.",
               nullptr, static_cast<int>(camp_->edited().size())));
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

void DispensePlace::loadPeople(const std::string& path)
{
    const auto reading =
        readPrescriptionTable(path, QDate::currentDate().toString(Qt::ISODate).toStdString());
    for (const auto& finding : reading.findings)
        if (finding.severity == Severity::error)
            throw Error(finding, 3);
    waiting_->setRows(reading.value.rows);
    const bool any = waiting_->rowCount() > 0;
    waitingHint_->setText(tr("The table has no rows. Type a prescription below."));
    waitingHint_->setVisible(!any);
    waitingView_->setVisible(any);
    if (camp_ && camp_->hasLedger())
        for (const auto& row : reading.value.rows)
            for (const auto& [person, what] : givenBefore(camp_->ledger().entriesOfPerson(row.person)))
                waiting_->setGiven(person, what);
}

bool DispensePlace::choosePerson(const std::string& code)
{
    const int row = waiting_->rowOf(code);
    if (row < 0)
        return false;
    waitingView_->setCurrentIndex(waiting_->index(row, 0));
    return waiting_->stateAt(row) != WaitingModel::State::unreadable;
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

void DispensePlace::suggest()
{
    forgetAnswer();
    messages_.dismiss();
    record_ = cards_->page() == 1 ? reader_->read() : card_->read();
    if (!record_ || !camp_)
        return;
    runCommand(messages_, [this] {
        MatchOptions options;
        options.profile = shownNow().profile;
        options.candidates.index = &camp_->index();
        options.details = true; // chances are shown beside each pair
        answers_ = recommend(*record_, camp_->stock(), camp_->rules(), options);
        answerPanel_->show(answers_);
    });
}

void DispensePlace::forgetAnswer()
{
    answers_.clear();
    shownAnswer_ = 0;
    handedOver_ = false;
    pairs_->clear();
    why_->clear();
    handOver_->reset();
    answerPanel_->clear(camp_ ? tr("Choose a person or type a prescription; Enter suggests pairs.")
                              : QString());
    tellEmptyList();
    showPlane(nullptr);
    judgeHandOver();
}

const Recommendation* DispensePlace::answer() const
{
    return shownAnswer_ < answers_.size() ? &answers_[shownAnswer_] : nullptr;
}

void DispensePlace::showAnswer(int index)
{
    shownAnswer_ = static_cast<std::size_t>(index);
    handedOver_ = false;
    handOver_->reset();
    pairs_->show(*answer(), camp_->stock());
    tellEmptyList();
    if (pairs_->rowCount() > 0)
        pairsView_->setCurrentIndex(pairs_->index(0, 0));
    else
        showPair(-1);
    pairsView_->scrollToTop();
}

void DispensePlace::tellEmptyList()
{
    const bool empty = pairs_->rowCount() == 0;
    if (!answer())
        pairsHint_->setText(tr("The pairs to pull will stand here, best first, with their bins."));
    else if (answer()->verdict == Verdict::none)
        pairsHint_->setText(tr("Nothing to pull for this purpose."));
    else if (answer()->verdict == Verdict::incomplete || answer()->verdict == Verdict::refer)
        pairsHint_->setText(tr("No pairs are shown until this is settled."));
    else
        pairsHint_->setText(tr("No pair of this stock comes near this need."));
    pairsHint_->setVisible(empty);
    pairsView_->setVisible(!empty);
}

const Candidate* DispensePlace::chosen() const
{
    return pairs_->candidateAt(pairsView_->currentIndex().row());
}

void DispensePlace::showPair(int row)
{
    const auto* candidate = pairs_->candidateAt(row);
    if (candidate && answer()) {
        std::vector<const Candidate*> list;
        for (int at = 0; at < pairs_->rowCount(); ++at)
            list.push_back(pairs_->candidateAt(at));
        const auto& rules = camp_->rules();
        why_->show({answer(), camp_->stock(), rules.find(answer()->profile), &rules.settings}, *candidate,
                   list);
    } else {
        why_->clear();
    }
    showPlane(candidate);
    judgeHandOver();
}

/// Another pair in the list, from wherever the cursor is.
void DispensePlace::nextPair()
{
    if (const int row = pairsView_->currentIndex().row() + 1; row < pairs_->rowCount())
        pairsView_->setCurrentIndex(pairs_->index(row, 0));
}

void DispensePlace::previousPair()
{
    if (const int row = pairsView_->currentIndex().row() - 1; row >= 0)
        pairsView_->setCurrentIndex(pairs_->index(row, 0));
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

void DispensePlace::showPlane(const Candidate* chosen)
{
    PlotData picture;
    if (camp_ && answer())
        picture = planeOf(*answer(), camp_->stock(), camp_->rules().find(answer()->profile), chosen);
    else if (camp_)
        picture = planeOfStock(camp_->stock());
    plane_->show(picture);
}

void DispensePlace::togglePlaneTable()
{
    plane_->toggleTable();
}

void DispensePlace::restyle()
{
    fitCard();
    plane_->restyle();
    why_->restyle();
    pairsView_->doItemsLayout();
}

} // namespace quarterstep
