// SPDX-License-Identifier: GPL-3.0-or-later
// The place Dispense: asking for a suggestion, and the answer, the pair and the picture that are shown.
#include "app/desk/card/prescription_card.hpp"
#include "app/desk/card/reader_card.hpp"
#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/pairs_model.hpp"
#include "app/desk/models/waiting_model.hpp"
#include "app/desk/places/answer_panel.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/pages_frame.hpp"
#include "app/desk/places/plane_panel.hpp"
#include "app/desk/places/why_panel.hpp"
#include "app/desk/shown.hpp"

#include <QLabel>
#include <QListView>
#include <QTableView>

namespace quarterstep
{

/// A code alone names somebody of the waiting list: what is known of the person is taken from there.
bool DispensePlace::takeNamedPerson()
{
    const auto code = cards_->page() == 0 ? card_->onlyPerson().toStdString() : std::string();
    const int row = code.empty() ? -1 : waiting_->rowOf(code);
    if (row < 0)
        return false;
    if (waitingView_->currentIndex().row() == row)
        takeRow(row);
    else
        waitingView_->setCurrentIndex(waiting_->index(row, 0));
    return true;
}

void DispensePlace::suggest()
{
    if (takeNamedPerson())
        return;
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

void DispensePlace::showPlane(const Candidate* chosen)
{
    PlotData picture;
    if (camp_ && answer())
        picture = planeOf(*answer(), camp_->stock(), camp_->rules().find(answer()->profile), chosen);
    else if (camp_)
        picture = planeOfStock(camp_->stock());
    plane_->show(picture);
}

} // namespace quarterstep
