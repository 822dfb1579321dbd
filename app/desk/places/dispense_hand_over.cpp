// SPDX-License-Identifier: GPL-3.0-or-later
// The place Dispense: handing the chosen pair over, and taking the last hand-over back.
#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/pairs_model.hpp"
#include "app/desk/models/waiting_model.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/given_before.hpp"
#include "app/desk/places/hand_over_panel.hpp"
#include "app/desk/places/line_panel.hpp"
#include "app/desk/places/pages_frame.hpp"
#include "app/desk/shell/pin_guard.hpp"
#include "app/session/keeping.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/words.hpp"
#include "core/record/judgement.hpp"
#include "inventory/text/record_text.hpp"

#include <QListView>
#include <QTableView>

#include <algorithm>
#include <set>

namespace quarterstep
{

namespace
{
constexpr int pulledBeside = 5; ///< other lines somebody is likely to have fetched

/// The lines of the other ranked pairs that are not in the pair given, each once, with its bin.
QStringList linesBeside(const std::vector<Candidate>& ranked, const Candidate& given,
                        std::span<const StockLine> stock)
{
    std::set<std::size_t> seen;
    for (const auto& part : given.parts)
        seen.insert(part.line);
    QStringList words;
    for (const auto& candidate : ranked)
        for (const auto& part : candidate.parts)
            if (words.size() < pulledBeside && seen.insert(part.line).second)
                words << pullWords({part.line, PartSide::pair}, stock);
    return words;
}
} // namespace

HandOver DispensePlace::handOverOf(const Candidate& candidate)
{
    HandOver wish;
    wish.recommendation = answer();
    wish.parts = candidate.parts;
    wish.reason = handOver_->reason();
    wish.trial = handOver_->trial(record_->eyes);
    wish.checks = handOver_->checks();
    wish.reading = handOver_->reading();
    wish.actor = handOver_->actor();
    wish.finalAsWritten = record_->eyes.right.final.asWritten + " / " + record_->eyes.left.final.asWritten;
    wish.record = recordText(*record_);
    return wish;
}

/// The acuity typed with the pair on the face decides a pair on trial: the list says so at once.
void DispensePlace::judgeTrial()
{
    const int row = pairsView_->currentIndex().row();
    const auto* candidate = chosen();
    if (candidate && answer() && answer()->need && candidate->fit.onTrial()) {
        const auto trial = handOver_->trial(record_->eyes);
        const auto* profile = camp_->rules().find(answer()->profile);
        std::optional<Fit> fit;
        if (trial && profile) {
            fit = judge(*answer()->need, candidate->supply, *profile, &*trial);
            nameSources(*fit, *profile);
        }
        pairs_->setTried(row, std::move(fit));
    }
    judgeHandOver();
}

HandOverPanel::Ready DispensePlace::readyNow() const
{
    HandOverPanel::Ready ready;
    ready.undo = toTakeBack().has_value();
    if (!answer())
        return ready;
    ready.note = true;
    ready.letter = answer()->referral != Referral::no;
    ready.order = answer()->need.has_value() && answer()->verdict != Verdict::none;
    ready.without = !handedOver_;
    return ready;
}

void DispensePlace::judgeHandOver()
{
    const auto* candidate = chosen();
    auto ready = readyNow();
    if (!candidate || !answer() || handedOver_) {
        handOver_->askTrial(false, false);
        handOver_->showObjections({}, false);
        handOver_->setReady(ready);
        return;
    }
    handOver_->askTrial(candidate->fit.onTrial(), answer()->need && answer()->need->nearWork());
    handOver_->setSupply(candidate->supply);
    auto wish = handOverOf(*candidate);
    ready.handOver = objectionsTo(*camp_, wish).empty();
    wish.reason.clear(); // what a typed reason answers stays in sight
    QStringList words;
    bool reasonHelps = false;
    for (const auto& objection : objectionsTo(*camp_, wish)) {
        words << say(objection.sentence);
        reasonHelps = reasonHelps || objection.reasonHelps;
    }
    handOver_->showObjections(words.join(QLatin1Char('\n')), reasonHelps);
    handOver_->setReady(ready);
}

void DispensePlace::asOptician(std::function<void()> act)
{
    parts_.pins.run(roleAskedBy("dispense"), std::move(act));
}

void DispensePlace::giveChosen()
{
    if (chosen() && answer() && !handedOver_)
        asOptician([this] { give(); });
}

void DispensePlace::give()
{
    if (!chosen() || !answer() || handedOver_)
        return;
    const auto candidate = *chosen();
    runCommand(messages_, [this, &candidate] {
        const auto entry = handOver(*camp_, handOverOf(candidate));
        handedOver_ = true;
        given_.push_back({entry.id, entry.person, linesOf(entry)});
        messages_.showDone(toldAfter(entry, candidate));
        line_->leave(entry.person, answer()->purpose);
        refreshAfterMove(entry.person);
        if (cards_->page() == 0)
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
    const auto back = linesBeside(answer()->candidates.ranked, given, camp_->stock());
    if (!back.isEmpty())
        text += QLatin1Char('\n') + tr("Put back if pulled: %1").arg(back.join(QStringLiteral(" · ")));
    return text;
}

/// What is on the card comes first: the last hand-over of today to this person, by whichever window; else
/// the last thing entered here.
std::optional<DispensePlace::Given> DispensePlace::toTakeBack() const
{
    if (record_ && camp_ && camp_->hasLedger() && !record_->person.empty() &&
        std::none_of(given_.begin(), given_.end(),
                     [this](const Given& given) { return given.person == record_->person; }))
        if (const auto entry = lastGivenToday(camp_->ledger().entriesOfPerson(record_->person)))
            return Given{entry->id, entry->person, linesOf(*entry)};
    return given_.empty() ? std::nullopt : std::optional(given_.back());
}

void DispensePlace::takeBackLast()
{
    if (const auto last = toTakeBack())
        asOptician([this, given = *last] { takeBack(given); });
}

void DispensePlace::takeBack(const Given& last)
{
    runCommand(messages_, [this, &last] {
        const auto given = camp_->ledger().entry(last.entry);
        camp_->post(
            undoOf(*camp_, last.entry, handOver_->actor(), tr("taken back at the desk").toStdString()));
        messages_.showDone(tr("Taken back from %1: %2.").arg(ltr(last.person), last.lines));
        if (record_ && record_->person == last.person)
            handedOver_ = false;
        if (given && given->kind == EntryKind::handedOver)
            for (const auto purpose :
                 {Purpose::distance, Purpose::near, Purpose::intermediate, Purpose::bifocal})
                if (fieldNamed(*given, "purpose") == wordOf(purpose))
                    line_->comeBack(last.person, purpose);
        std::erase_if(given_, [&last](const Given& each) { return each.entry == last.entry; });
        refreshAfterMove(last.person);
    });
}

/// Counts and the person's state follow the ledger; the answer shown keeps its chosen pair.
void DispensePlace::refreshAfterMove(const std::string& person)
{
    waiting_->setOutcome(person, outcomeOf(camp_->ledger().entriesOfPerson(person)));
    refresh();
    Q_EMIT campChanged();
}

} // namespace quarterstep
