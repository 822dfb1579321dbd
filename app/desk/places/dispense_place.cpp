// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/dispense_place.hpp"

#include "app/desk/card/prescription_card.hpp"
#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/criteria_model.hpp"
#include "app/desk/models/pairs_model.hpp"
#include "app/desk/models/plane_model.hpp"
#include "app/desk/models/waiting_model.hpp"
#include "app/desk/places/answer_panel.hpp"
#include "app/desk/places/given_before.hpp"
#include "app/desk/places/hand_over_panel.hpp"
#include "app/desk/plots/plot_view.hpp"
#include "app/desk/words.hpp"
#include "app/session/wording.hpp"

#include <QAction>
#include <QDate>
#include <QFileInfo>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
constexpr std::size_t pulledBeside = 3; ///< other pairs somebody is likely to have fetched
constexpr auto columnWidths = {330, 560, 450};
} // namespace

DispensePlace::DispensePlace(MessageBar& messages, QWidget* parent)
    : QWidget(parent), messages_(messages), waiting_(new WaitingModel(this)), pairs_(new PairsModel(this)),
      criteria_(new CriteriaModel(this)), plane_(new PlaneModel(this))
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
    whole->addWidget(columns);
    connectParts();
    forgetAnswer();
}

DispensePlace::~DispensePlace() = default;

void DispensePlace::connectParts()
{
    connect(card_, &PrescriptionCard::suggestWanted, this, &DispensePlace::suggest);
    connect(card_, &PrescriptionCard::edited, this, &DispensePlace::forgetAnswer);
    connect(answerPanel_, &AnswerPanel::answerChosen, this, &DispensePlace::showAnswer);
    connect(handOver_, &HandOverPanel::changed, this, &DispensePlace::judgeHandOver);
    connect(handOver_->handOverAction(), &QAction::triggered, this, &DispensePlace::giveChosen);
    connect(handOver_->undoAction(), &QAction::triggered, this, &DispensePlace::takeBackLast);
    connect(tableButton_, &QPushButton::toggled, planePages_,
            [this](bool on) { planePages_->setCurrentIndex(on ? 1 : 0); });
    connect(pairsView_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) { showPair(current.row()); });
    connect(waitingView_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) { takeRow(current.row()); });
}

void DispensePlace::open(const std::string& folder)
{
    camp_.emplace(Camp::open(folder, Ledger::Mode::readWrite));
    given_.clear();
    waiting_->setRows({});
    card_->clear();
    forgetAnswer();
    const auto table = QString::fromStdString(folder) + QStringLiteral("/people.csv");
    waitingHint_->setText(tr("This folder has no people.csv. Type a prescription below, or load a table."));
    waitingHint_->show();
    waitingView_->hide();
    if (QFileInfo::exists(table))
        loadPeople(table.toStdString());
    if (!camp_->edited().empty())
        messages_.showDone(
            tr("Counts in stock.yaml were edited by hand in %n line(s). The ledger's counts are used until "
               "the edits are accepted or discarded.",
               nullptr, static_cast<int>(camp_->edited().size())));
    Q_EMIT campChanged();
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
        for (const auto& [person, what] : givenBefore(camp_->ledger().entriesAfter(0)))
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
    card_->clear();
    forgetAnswer();
}

void DispensePlace::suggest()
{
    forgetAnswer();
    messages_.dismiss();
    record_ = card_->read();
    if (!record_ || !camp_)
        return;
    runCommand(messages_, [this] {
        answers_ = recommend(*record_, camp_->stock(), camp_->rules(), {});
        answerPanel_->show(answers_);
    });
}

void DispensePlace::forgetAnswer()
{
    answers_.clear();
    shownAnswer_ = 0;
    handedOver_ = false;
    pairs_->clear();
    criteria_->clear();
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
    pairsHint_->setText(answer() ? tr("No pair of this stock comes near this need.")
                                 : tr("The pairs to pull will stand here, best first, with their bins."));
    pairsHint_->setVisible(empty);
    pairsView_->setVisible(!empty);
}

void DispensePlace::showPair(int row)
{
    const auto* candidate = pairs_->candidateAt(row);
    if (candidate)
        criteria_->show(candidate->fit);
    else
        criteria_->clear();
    showPlane(candidate);
    judgeHandOver();
}

void DispensePlace::showPlane(const Candidate* chosen)
{
    PlotData picture;
    if (camp_ && answer())
        picture = planeOf(*answer(), camp_->stock(), camp_->rules().find(answer()->profile), chosen);
    else if (camp_)
        picture = planeOfStock(camp_->stock());
    plot_->show(picture);
    plane_->show(picture);
}

HandOver DispensePlace::handOverOf(const Candidate& candidate)
{
    HandOver wish;
    wish.recommendation = answer();
    wish.parts = candidate.parts;
    wish.reason = handOver_->reason();
    wish.trial = handOver_->trial(record_->eyes);
    wish.checks = handOver_->checks();
    wish.actor = handOver_->actor();
    wish.finalAsWritten = record_->eyes.right.final.asWritten + " / " + record_->eyes.left.final.asWritten;
    return wish;
}

void DispensePlace::judgeHandOver()
{
    const auto* candidate = pairs_->candidateAt(pairsView_->currentIndex().row());
    if (!candidate || !answer() || handedOver_) {
        handOver_->askTrial(false, false);
        handOver_->showObjections({}, false);
        handOver_->setReady(false, !given_.empty());
        return;
    }
    handOver_->askTrial(candidate->fit.onTrial(), answer()->need && answer()->need->nearWork());
    auto wish = handOverOf(*candidate);
    const bool ready = objectionsTo(*camp_, wish).empty();
    wish.reason.clear(); // what a typed reason answers stays in sight
    QStringList words;
    bool reasonHelps = false;
    for (const auto& objection : objectionsTo(*camp_, wish)) {
        words << say(objection.sentence);
        reasonHelps = reasonHelps || objection.reasonHelps;
    }
    handOver_->showObjections(words.join(QLatin1Char('\n')), reasonHelps);
    handOver_->setReady(ready, !given_.empty());
}

void DispensePlace::giveChosen()
{
    const auto* chosen = pairs_->candidateAt(pairsView_->currentIndex().row());
    if (!chosen || !answer() || handedOver_)
        return;
    const auto candidate = *chosen;
    runCommand(messages_, [this, &candidate] {
        const auto entry = handOver(*camp_, handOverOf(candidate));
        handedOver_ = true;
        given_.push_back({entry.id, entry.person, linesOf(entry)});
        messages_.showDone(toldAfter(entry, candidate));
        refreshAfterMove(entry.person);
        waitingView_->setFocus();
    });
}

QString DispensePlace::toldAfter(const Entry& entry, const Candidate& given) const
{
    QStringList left;
    for (const auto& movement : entry.movements)
        if (const auto line = camp_->lineNamed(movement.line))
            left << tr("%1: %n left", nullptr, camp_->stock()[*line].onHand).arg(ltr(movement.line));
    auto text = tr("%1 has %2. %3.").arg(ltr(entry.person), linesOf(entry), left.join(QStringLiteral(", ")));
    QStringList back;
    const auto& ranked = answer()->candidates.ranked;
    for (std::size_t at = 0; at < ranked.size() && static_cast<std::size_t>(back.size()) < pulledBeside; ++at)
        if (DeskWords::pull(ranked[at].parts, camp_->stock()) != DeskWords::pull(given.parts, camp_->stock()))
            back << DeskWords::pull(ranked[at].parts, camp_->stock());
    if (!back.isEmpty())
        text += QLatin1Char('\n') + tr("Put back if pulled: %1").arg(back.join(QStringLiteral("; ")));
    return text;
}

void DispensePlace::takeBackLast()
{
    if (given_.empty())
        return;
    runCommand(messages_, [this] {
        const auto last = given_.back();
        undoHandOver(*camp_, last.entry, tr("taken back at the desk").toStdString());
        given_.pop_back();
        if (record_ && record_->person == last.person)
            handedOver_ = false;
        messages_.showDone(tr("Taken back from %1: %2 is in stock again.").arg(ltr(last.person), last.lines));
        refreshAfterMove(last.person);
    });
}

/// Counts and the person's state follow the ledger; the answer shown keeps its chosen pair.
void DispensePlace::refreshAfterMove(const std::string& person)
{
    const auto given = givenBefore(camp_->ledger().entriesAfter(0));
    const auto found = given.find(person);
    waiting_->setGiven(person, found == given.end() ? QString() : found->second);
    const int row = pairsView_->currentIndex().row();
    if (answer()) {
        pairs_->show(*answer(), camp_->stock());
        pairsView_->setCurrentIndex(pairs_->index(row, 0));
    }
    judgeHandOver();
    Q_EMIT campChanged();
}

void DispensePlace::togglePlaneTable()
{
    tableButton_->toggle();
}

void DispensePlace::restyle()
{
    plot_->restyle();
    pairsView_->doItemsLayout();
}

} // namespace quarterstep
