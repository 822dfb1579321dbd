// SPDX-License-Identifier: GPL-3.0-or-later
// The place Dispense and its waiting line: who comes to stand in it, who is taken up to be served, and a pair
// picked by hand for somebody in it.
#include "app/desk/card/prescription_card.hpp"
#include "app/desk/card/reader_card.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/pairs_model.hpp"
#include "app/desk/models/waiting_model.hpp"
#include "app/desk/places/answer_panel.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/line_panel.hpp"
#include "app/desk/places/pages_frame.hpp"
#include "app/session/wording.hpp"

#include <QListView>

#include <algorithm>

namespace quarterstep
{

namespace
{
bool sameParts(const std::vector<Part>& a, const std::vector<Part>& b)
{
    return std::is_permutation(a.begin(), a.end(), b.begin(), b.end(), [](const Part& x, const Part& y) {
        return x.line == y.line && x.side == y.side;
    });
}
} // namespace

void DispensePlace::connectLine()
{
    connect(line_, &LinePanel::allWanted, this, &DispensePlace::allArrive);
    connect(line_, &LinePanel::oneWanted, this, &DispensePlace::cardArrives);
    connect(line_, &LinePanel::chosenPairWanted, this, &DispensePlace::offerChosen);
    connect(line_, &LinePanel::rowChosen, this,
            [this](const QString& person, int purpose, const std::vector<Part>& parts) {
                showFromLine(person.toStdString(), static_cast<Purpose>(purpose), parts);
            });
    addKey(Qt::CTRL | Qt::Key_J, &DispensePlace::cardArrives);
    addKey(Qt::CTRL | Qt::Key_G, &DispensePlace::offerChosen);
}

void DispensePlace::allArrive()
{
    std::vector<PersonRecord> people;
    for (int row = 0; row < waiting_->rowCount(); ++row)
        if (waiting_->stateAt(row) == WaitingModel::State::waiting)
            people.push_back(*waiting_->rowAt(row).record);
    line_->arrive(people);
}

void DispensePlace::cardArrives()
{
    const auto record = cards_->page() == 1 ? reader_->read() : card_->read();
    if (!record || !camp_)
        return;
    line_->arrive({*record});
    messages_.showDone(tr("%1 stands in the line.").arg(ltr(record->person)));
}

/// With its parts; a pair on trial or outside a limit asks again at the hand-over.
void DispensePlace::offerChosen()
{
    if (!chosen())
        return;
    people_->setPage(linePage);
    line_->offer(chosen()->parts);
}

/// The card fills, pairs are suggested, and the one planned is chosen where it is among them.
void DispensePlace::showFromLine(const std::string& person, Purpose purpose, const std::vector<Part>& parts)
{
    const auto* record = line_->recordOf(person);
    if (!record)
        return;
    cards_->setPage(0);
    card_->load(*record);
    suggest();
    for (std::size_t at = 0; at < answers_.size(); ++at)
        if (answers_[at].purpose == purpose)
            answerPanel_->choose(static_cast<int>(at));
    for (int row = 0; row < pairs_->rowCount(); ++row)
        if (sameParts(pairs_->candidateAt(row)->parts, parts)) {
            pairsView_->setCurrentIndex(pairs_->index(row, 0));
            return;
        }
}

} // namespace quarterstep
