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
#include "app/desk/shown.hpp"
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
    connect(answerPanel_, &AnswerPanel::answerChosen, this, &DispensePlace::showAnswer);
    connect(handOver_, &HandOverPanel::changed, this, &DispensePlace::judgeHandOver);
    connect(handOver_->handOverAction(), &QAction::triggered, this, &DispensePlace::giveChosen);
    connect(handOver_->undoAction(), &QAction::triggered, this, &DispensePlace::takeBackLast);
    connect(tableButton_, &QPushButton::toggled, planePages_, [this](bool on) { showPlaneTable(on); });
    connect(pairsView_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) { showPair(current.row()); });
    connect(waitingView_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) { takeRow(current.row()); });
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
        MatchOptions options;
        options.profile = shownNow().profile;
        options.candidates.index = &camp_->index();
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

void DispensePlace::showPlaneTable(bool on)
{
    planePages_->setCurrentIndex(on ? 1 : 0);
    tableButton_->setText(on ? tr("Picture") : tr("Table"));
}

void DispensePlace::togglePlaneTable()
{
    tableButton_->toggle();
}

void DispensePlace::restyle()
{
    fitCard();
    plot_->restyle();
    pairsView_->doItemsLayout();
}

} // namespace quarterstep
