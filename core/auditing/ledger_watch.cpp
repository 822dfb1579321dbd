// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/auditing/ledger_watch.hpp"

#include "core/auditing/line_history.hpp"
#include "core/record/day.hpp"
#include "core/record/judgement.hpp"

#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double recallDays = 180.0; ///< how far back pairs of a line are told when it turns out bad

std::string days(double count)
{
    return std::to_string(std::lround(count));
}

} // namespace

bool LedgerWatch::longAgo(std::int64_t atMs, double daysAgo) const
{
    return double(nowMs_ - atMs) > daysAgo * dayMs;
}

void LedgerWatch::forgetOld(std::int64_t nowMs)
{
    while (!givenInTime_.empty() &&
           double(nowMs - givenInTime_.front().first) > thresholds_.duplicateDays * dayMs) {
        const auto found = given_.find(givenInTime_.front().second);
        if (found != given_.end() && found->second.atMs == givenInTime_.front().first)
            given_.erase(found);
        givenInTime_.pop_front();
    }
    constexpr std::size_t mostLined = 5000; // bounded: a recall looks back as far as this
    while (!lined_.empty() &&
           (lined_.size() > mostLined || double(nowMs - lined_.front().atMs) > recallDays * dayMs))
        lined_.pop_front();
}

void LedgerWatch::takeHandOver(const Entry& entry, const FindingSink& sink)
{
    forgetOld(entry.atMs);
    for (const auto& movement : entry.movements)
        lined_.push_back({entry.id, movement.line, entry.atMs});
    if (entry.person.empty())
        return;
    const auto key = entry.person + "\t" + fieldNamed(entry, "purpose");
    const auto before = given_.find(key);
    if (before != given_.end())
        sink({entry.id,
              AuditClass::duplicateHandOver,
              {QS_SAY("core", "the same person had a pair for %1 by entry %2 already"),
               {fieldNamed(entry, "purpose"), before->second.entry}}});
    given_[key] = {entry.id, entry.atMs};
    givenInTime_.emplace_back(entry.atMs, key);
    if (fieldNamed(entry, "referral") == "with")
        letters_.emplace(entry.person, Letter{entry.id, entry.atMs});
}

void LedgerWatch::takeCorrection(const Entry& entry, const FindingSink& sink)
{
    const auto day = static_cast<std::int64_t>(std::floor(double(entry.atMs) / dayMs));
    corrections_.erase(corrections_.begin(), corrections_.lower_bound({day - 1, {}}));
    const int count = ++corrections_[{day, entry.actor}];
    if (count == std::lround(thresholds_.correctionsADay))
        sink({entry.id,
              AuditClass::correctionsClustered,
              {QS_SAY("core", "%1 entries were taken back at one place on one day"),
               {std::to_string(count)}}});
}

void LedgerWatch::takeCount(const Entry& entry, const FindingSink& sink)
{
    for (const auto& movement : entry.movements)
        if (movement.delta != 0)
            sink({entry.id,
                  AuditClass::countDifference,
                  {QS_SAY("core", "line %1: counted %2 against the book"),
                   {movement.line, (movement.delta > 0 ? "+" : "") + std::to_string(movement.delta)}}});
}

/// Pairs given before their line turned out to be off its label: each is told.
void LedgerWatch::takeQuarantine(const Entry& entry, const FindingSink& sink)
{
    if (!badLabel(fieldNamed(entry, "cause")))
        return;
    for (const auto& movement : entry.movements)
        for (const auto& given : lined_)
            if (given.line == movement.line)
                sink({given.entry,
                      AuditClass::quarantinedLine,
                      {QS_SAY("core", "line %1 was later put aside (%2); this pair was given before"),
                       {movement.line, fieldNamed(entry, "cause")}}});
}

void LedgerWatch::take(const Entry& entry, const FindingSink& sink)
{
    if (entry.atMs > nowMs_)
        sink({entry.id,
              AuditClass::fromTheFuture,
              {QS_SAY("core", "the time of this entry is later than now"), {}}});
    if (takenBack_.count(entry.id) > 0)
        return;
    switch (entry.kind) {
    case EntryKind::handedOver:
        return takeHandOver(entry, sink);
    case EntryKind::returned:
    case EntryKind::exchanged:
        for (const char* purpose : {"distance", "near", "intermediate", "bifocal"})
            given_.erase(entry.person + "\t" + purpose); // another one is no duplicate
        return;
    case EntryKind::enteredInError:
        return takeCorrection(entry, sink);
    case EntryKind::counted:
        return takeCount(entry, sink);
    case EntryKind::quarantined:
    case EntryKind::writtenOff:
        return takeQuarantine(entry, sink);
    case EntryKind::referred:
        letters_.erase(entry.person);
        return;
    case EntryKind::ordered:
        orders_[entry.id] = {entry.person, entry.atMs, false};
        return;
    case EntryKind::orderArrived:
    case EntryKind::orderChecked:
    case EntryKind::remade:
        if (const auto order = orders_.find(fieldNamed(entry, "order")); order != orders_.end()) {
            order->second.changedMs = entry.atMs;
            order->second.checked = entry.kind == EntryKind::orderChecked;
        }
        return;
    case EntryKind::delivered:
        orders_.erase(fieldNamed(entry, "order"));
        interim_.erase(entry.person);
        return;
    case EntryKind::notCollected:
        orders_.erase(fieldNamed(entry, "order"));
        sink({entry.id, AuditClass::orderNotCollected, {QS_SAY("core", "entered as not collected"), {}}});
        return;
    default:
        return;
    }
}

void LedgerWatch::takeJudged(const JudgedHandOver& judged)
{
    const auto& facts = judged.facts;
    if (facts.person.empty())
        return;
    if (judged.outside() && facts.reasonGiven)
        interim_[facts.person] = {facts.entry, facts.atMs};
    else if (judged.fit && judged.fit->acceptable())
        interim_.erase(facts.person);
}

void LedgerWatch::finish(const FindingSink& sink)
{
    for (const auto& [person, letter] : letters_)
        if (longAgo(letter.atMs, thresholds_.letterDays))
            sink(
                {letter.entry,
                 AuditClass::letterNotWritten,
                 {QS_SAY("core", "a letter was to be written beside this hand-over; none is recorded"), {}}});
    for (const auto& [id, order] : orders_) {
        if (order.checked && longAgo(order.changedMs, thresholds_.collectDays))
            sink({id,
                  AuditClass::orderNotCollected,
                  {QS_SAY("core", "checked and waiting for more than %1 days"),
                   {days(thresholds_.collectDays)}}});
        const auto interim = interim_.find(order.person);
        if (interim != interim_.end() && longAgo(interim->second.atMs, thresholds_.interimDays))
            sink({interim->second.entry,
                  AuditClass::interimNotReplaced,
                  {QS_SAY("core", "given until the order %1 comes, more than %2 days ago"),
                   {id, days(thresholds_.interimDays)}}});
    }
}

} // namespace quarterstep
