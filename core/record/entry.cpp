// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/entry.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

using enum Change;

/// In the order of the kinds.
const std::vector<KindRule>& rules()
{
    static const std::vector<KindRule> table{
        {EntryKind::opened, "opened", more, none, none, false, false, {}},
        {EntryKind::received, "received", more, none, more, false, false, {}},
        {EntryKind::handedOver, "handed-over", fewer, fewer, none, false, false, {}},
        {EntryKind::returned, "returned", more, none, more, false, false, {}},
        {EntryKind::exchanged, "exchanged", either, fewer, more, false, true, {}},
        {EntryKind::counted, "counted", either, none, none, false, false, {}},
        {EntryKind::writtenOff, "written-off", fewer, none, fewer, false, false, {"cause"}},
        {EntryKind::held, "held", none, more, none, false, false, {}},
        {EntryKind::quarantined, "quarantined", none, none, more, false, false, {"reason"}},
        {EntryKind::released, "released", none, fewer, fewer, false, false, {}},
        {EntryKind::transferredOut, "transferred-out", fewer, none, none, false, false, {"to"}},
        {EntryKind::transferredIn, "transferred-in", more, none, more, false, false, {"from"}},
        {EntryKind::notNeeded, "not-needed", none, none, none, true, true, {}},
        {EntryKind::declined, "declined", none, none, none, true, true, {}},
        {EntryKind::incomplete, "incomplete", none, none, none, true, true, {}},
        {EntryKind::adjusted, "adjusted", none, none, none, true, true, {}},
        {EntryKind::ordered, "ordered", none, more, none, true, true, {}},
        {EntryKind::orderArrived, "arrived", none, none, none, true, true, {"order"}},
        {EntryKind::orderChecked, "checked", none, none, none, true, true, {"order"}},
        {EntryKind::delivered, "delivered", fewer, fewer, none, true, true, {"order"}},
        {EntryKind::remade, "remade", none, none, none, true, true, {"order", "reason"}},
        {EntryKind::notCollected, "not-collected", fewer, fewer, none, true, true, {"order"}},
        {EntryKind::referred, "referred", none, none, none, true, true, {}},
        {EntryKind::notServed, "not-served", none, none, none, true, true, {}},
        {EntryKind::exported, "exported", none, none, none, true, false, {"level"}},
        {EntryKind::lotDrawn,
         "lot-drawn",
         none,
         none,
         none,
         true,
         false,
         {"hand_overs", "sample", "allowed", "seed"}},
        {EntryKind::lotRead, "lot-read", none, none, none, true, false, {"lot", "readings"}},
        {EntryKind::followedUp, "followed-up", none, none, none, true, true, {"wear"}},
        {EntryKind::enteredInError, "entered-in-error", either, either, either, true, false, {}},
    };
    return table;
}

bool allowed(Change change, int amount)
{
    switch (change) {
    case none:
        return amount == 0;
    case more:
        return amount >= 0;
    case fewer:
        return amount <= 0;
    case either:
        break;
    }
    return true;
}

std::optional<Sentence> objectionTo(const KindRule& rule, const Movement& movement)
{
    if (movement.line.empty())
        return Sentence{QS_SAY("core", "a movement of an entry “%1” names no line"), {rule.word}};
    if (!allowed(rule.onHand, movement.delta) || !allowed(rule.held, movement.held) ||
        !allowed(rule.quarantined, movement.quarantined))
        return Sentence{QS_SAY("core", "an entry “%1” cannot move line %2 by %3 on hand, %4 held, %5 "
                                       "quarantined"),
                        {rule.word, movement.line, std::to_string(movement.delta),
                         std::to_string(movement.held), std::to_string(movement.quarantined)}};
    return std::nullopt;
}

} // namespace

const KindRule& ruleOf(EntryKind kind)
{
    return rules().at(static_cast<std::size_t>(kind));
}

const char* wordOf(EntryKind kind)
{
    return ruleOf(kind).word;
}

std::optional<EntryKind> entryKindFrom(std::string_view word)
{
    for (const auto& rule : rules())
        if (word == rule.word)
            return rule.kind;
    return std::nullopt;
}

std::optional<Sentence> objectionTo(const Entry& entry)
{
    const auto& rule = ruleOf(entry.kind);
    for (const auto& movement : entry.movements)
        if (auto objection = objectionTo(rule, movement))
            return objection;
    if (entry.movements.empty() && !rule.movesNothing)
        return Sentence{QS_SAY("core", "an entry “%1” moves at least one line"), {rule.word}};
    if (rule.needsPerson && entry.person.empty())
        return Sentence{QS_SAY("core", "an entry “%1” names a person by the camp code"), {rule.word}};
    if ((entry.kind == EntryKind::enteredInError) == entry.cancels.empty())
        return Sentence{QS_SAY("core", "“entered-in-error” names the entry it takes back, other kinds none"),
                        {}};
    for (const char* name : rule.needs) {
        const auto filled = [name](const auto& words) {
            const auto found = words.find(name);
            return found != words.end() && !found->second.empty();
        };
        if (!filled(entry.fields) && !filled(entry.texts))
            return Sentence{QS_SAY("core", "an entry “%1” needs “%2”"), {rule.word, name}};
    }
    return std::nullopt;
}

std::vector<Movement> turnedRound(std::vector<Movement> movements)
{
    for (auto& movement : movements) {
        movement.delta = -movement.delta;
        movement.held = -movement.held;
        movement.quarantined = -movement.quarantined;
    }
    return movements;
}

const std::vector<const char*>& causesOfLoss()
{
    static const std::vector<const char*> causes{"damaged",    "missing",   "stolen",      "found",
                                                 "miscounted", "off-label", "mislabelled", "sample",
                                                 "given-away", "recalled"};
    return causes;
}

bool isCauseOfLoss(std::string_view word)
{
    const auto& causes = causesOfLoss();
    return std::any_of(causes.begin(), causes.end(), [word](const char* cause) { return word == cause; });
}

} // namespace quarterstep
