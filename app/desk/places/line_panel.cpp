// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/line_panel.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/line_model.hpp"
#include "app/desk/places/parts.hpp"
#include "app/session/wording.hpp"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QThread>

#include <algorithm>

namespace quarterstep
{

LinePanel::~LinePanel()
{
    view_->selectionModel()->disconnect(this);
    stop();
}

void LinePanel::take(const Camp* camp)
{
    stop();
    camp_ = camp;
    line_.reset();
    arrived_.clear();
    records_.clear();
    coming_.clear();
    comingTold_.clear();
    left_.clear();
    toldOfLeft_.clear();
    offer_.reset();
    answer_ = {};
    model_->clear();
    tellResult();
}

/// A box of thousands of lines takes a while to be looked through: not before somebody waits.
WaitingLine& LinePanel::line()
{
    if (!line_)
        line_.emplace(*camp_);
    return *line_;
}

void LinePanel::arrive(const std::vector<PersonRecord>& people)
{
    if (!camp_)
        return;
    for (const auto& person : people) {
        if (records_.count(person.person) == 0)
            arrived_.push_back(person.person);
        records_[person.person] = person;
        std::erase_if(left_, [&person](const auto& left) { return left.first == person.person; });
        std::erase_if(toldOfLeft_, [&person](const Told& told) { return told.person == person.person; });
        coming_.push_back(person);
    }
    plan();
}

void LinePanel::leave(const std::string& person, std::optional<Purpose> purpose)
{
    if (!line_ || records_.count(person) == 0)
        return;
    for (const auto& told : line_->told())
        if (told.person == person && told.purpose && (!purpose || *purpose == *told.purpose))
            toldOfLeft_.push_back(told);
    for (const auto any : {Purpose::distance, Purpose::near, Purpose::intermediate, Purpose::bifocal})
        if (!purpose || *purpose == any)
            left_.insert({person, any});
    line_->remove(person, purpose);
    std::erase_if(coming_, [&person](const PersonRecord& each) { return each.person == person; });
    plan();
}

void LinePanel::comeBack(const std::string& person, Purpose purpose)
{
    if (!camp_ || left_.erase({person, purpose}) == 0)
        return;
    coming_.push_back(records_.at(person));
    const auto his = [&](const Told& told) { return told.person == person && told.purpose == purpose; };
    std::copy_if(toldOfLeft_.begin(), toldOfLeft_.end(), std::back_inserter(comingTold_), his);
    std::erase_if(toldOfLeft_, his);
    plan();
}

KeptLine LinePanel::kept() const
{
    std::set<std::string> waiting;
    const auto wait = [&waiting](const auto& entries) {
        for (const auto& entry : entries)
            waiting.insert(entry.person);
    };
    wait(answer_.assignments);
    wait(answer_.unserved);
    wait(answer_.others);
    wait(coming_);
    KeptLine line;
    for (const auto& person : arrived_)
        if (waiting.count(person) > 0)
            line.people.push_back(records_.at(person));
    if (line_)
        line.told = line_->told();
    for (const auto& left : left_)
        if (waiting.count(left.first) > 0)
            line.left.push_back(left);
    return line;
}

void LinePanel::bringBack(const KeptLine& line)
{
    if (!camp_ || line.empty())
        return;
    arrive(line.people);
    left_.insert(line.left.begin(), line.left.end());
    comingTold_ = line.told;
    plan();
}

void LinePanel::stockMoved()
{
    if (!line_ || !camp_)
        return;
    line_->setStock(camp_->stock());
    if (!arrived_.empty())
        plan();
}

const PersonRecord* LinePanel::recordOf(const std::string& person) const
{
    const auto found = records_.find(person);
    return found == records_.end() ? nullptr : &found->second;
}

void LinePanel::tellResult()
{
    const bool planning = thread_ != nullptr;
    plan_->setText(planning ? tr("Stop") : tr("Plan again"));
    if (planning)
        summary_->setText(tr("Planning …"));
    else if (arrived_.empty())
        summary_->setText(
            tr("Nobody waits yet. Let the people of the table stand in line, or the one on the card."));
    else
        summary_->setText(
            tr("%1 of %2 get a pair; first come, first served would be %3. %4")
                .arg(answer_.served)
                .arg(answer_.people)
                .arg(answer_.servedFirstCome)
                .arg(answer_.proof.proved() ? tr("No plan serves more.") : tr("Good, not proved best.")));
    judge();
}

const LineRow* LinePanel::chosenRow() const
{
    return model_->rowAt(view_->currentIndex().row());
}

void LinePanel::judge()
{
    const auto* row = chosenRow();
    const bool kept = row && (row->state == LineRow::State::promised || row->state == LineRow::State::byHand);
    promise_->setText(kept ? tr("Unpromise") : tr("Promise"));
    promise_->setEnabled(row && !row->parts.empty());
    pick_->setEnabled(row != nullptr);
    gone_->setEnabled(row != nullptr);
    plan_->setEnabled(!arrived_.empty());
}

void LinePanel::change(const std::function<void()>& work)
{
    if (runCommand(messages_, work))
        plan();
}

void LinePanel::promise()
{
    const auto* row = chosenRow();
    if (!row || !line_)
        return;
    const auto chosen = *row;
    change([this, &chosen] {
        if (chosen.state != LineRow::State::planned) {
            line_->takeBack(chosen.person, chosen.purpose);
            return;
        }
        for (const auto& each : answer_.assignments)
            if (each.person == chosen.person && each.purpose == chosen.purpose)
                line_->tell(each);
    });
}

void LinePanel::gone()
{
    if (const auto* row = chosenRow())
        leave(std::string(row->person), row->purpose);
}

void LinePanel::offer(const std::vector<Part>& parts)
{
    const auto* row = chosenRow();
    if (!row || parts.empty())
        return;
    offer_ = Offer{row->person, row->purpose, parts};
    completeOffer();
}

void LinePanel::completeOffer()
{
    if (!offer_ || !line_)
        return;
    const auto reason = reason_->text().trimmed();
    if (reason.isEmpty()) {
        summary_->setText(
            tr("Why this pair for %1? Type the reason and press Enter.").arg(ltr(offer_->person)));
        reason_->setFocus();
        return;
    }
    const auto offered = *offer_;
    offer_.reset();
    reason_->clear();
    change([this, &offered, &reason] {
        line_->choose(offered.person, offered.purpose, offered.parts, reason.toStdString());
    });
}

} // namespace quarterstep
