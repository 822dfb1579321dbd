// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/follow_up.hpp"

#include "core/fitting/words.hpp"
#include "core/record/day.hpp"
#include "core/record/judgement.hpp"
#include "core/record/life.hpp"
#include "inventory/text/record_text.hpp"

#include <algorithm>
#include <set>

namespace quarterstep
{

namespace
{

std::string textNamed(const Entry& entry, const char* name)
{
    const auto found = entry.texts.find(name);
    return found == entry.texts.end() ? std::string() : found->second;
}

/// Every standing entry in the order of arrival.
void eachStanding(const Camp& camp, const std::function<void(const Entry&)>& take)
{
    const auto gone = camp.ledger().takenBackIds();
    camp.ledger().eachStored(0, [&](const StoredEntry& stored) {
        const auto entry = entryFrom(stored);
        if (entry && gone.count(entry->id) == 0)
            take(*entry);
        return true;
    });
}

std::string linesGiven(const Entry& entry)
{
    std::string lines;
    for (const auto& movement : entry.movements)
        if (movement.delta < 0)
            lines += (lines.empty() ? "" : " + ") + movement.line;
    return lines;
}

/// Pairs of one day stand together: a person is seen once for both.
void give(const Entry& entry, std::map<std::string, Wearer>& wearers)
{
    auto& wearer = wearers[entry.person];
    const bool beside = !wearer.person.empty() && entry.atMs - wearer.givenMs < dayMs;
    const auto purpose = fieldNamed(entry, "purpose");
    const auto lines = linesGiven(entry);
    wearer = {entry.person, entry.atMs, entry.id, beside ? wearer.lines + "; " + lines : lines,
              beside && !purpose.empty() ? wearer.purposes + ", " + purpose : purpose};
}

/// What one person's entries say about sight.
struct SightFacts {
    std::optional<PersonRecord> record;
    bool given = false;                   ///< a pair for distance stands
    std::optional<PersonRecord> withPair; ///< acuities with it, as those of an own pair
    std::optional<Wear> wear;
};

/// Acuity typed with a pair, at the hand-over or when seen again.
void takeAcuity(const Entry& entry, SightFacts& facts)
{
    PersonRecord with;
    bool any = false;
    for (const Eye eye : bothEyes)
        if (const auto read =
                parseAcuity(fieldNamed(entry, eye == Eye::right ? "acuity_right" : "acuity_left"))) {
            with.eyes.of(eye).acuity.habitual = read.value();
            any = true;
        }
    if (any)
        facts.withPair = with;
}

void takeSight(const Entry& entry, std::map<std::string, SightFacts>& persons)
{
    auto& facts = persons[entry.person];
    if (auto record = readRecordText(textNamed(entry, "record")))
        facts.record = std::move(record);
    const auto purpose = fieldNamed(entry, "purpose");
    switch (entry.kind) {
    case EntryKind::handedOver:
        if (purpose == wordOf(Purpose::distance) || purpose == wordOf(Purpose::bifocal)) {
            facts.given = true;
            facts.withPair.reset();
            facts.wear.reset();
            takeAcuity(entry, facts);
        }
        return;
    case EntryKind::returned:
        facts.given = false;
        return;
    case EntryKind::followedUp:
        if (const auto wear = wearNamed(fieldNamed(entry, "wear")); wear && *wear != Wear::notFound)
            facts.wear = wear;
        takeAcuity(entry, facts);
        return;
    default:
        return;
    }
}

SightOfPerson sightAfter(const SightFacts& facts)
{
    auto sight = sightBefore(*facts.record);
    const bool left = facts.wear && *facts.wear != Wear::worn && *facts.wear != Wear::withThem;
    if (!facts.given || left)
        return sight;
    sight.hasCorrection = true;
    sight.corrected.reset();
    if (facts.withPair) {
        auto with = *facts.withPair;
        for (const Eye eye : bothEyes) // an eye that sees nothing needs no reading
            with.eyes.of(eye).final.state = facts.record->eyes.of(eye).final.state;
        sight.corrected = betterEyeIfKnown(with, &EyeAcuities::habitual);
    }
    return sight;
}

} // namespace

Entry followUpEntry(const Camp& camp, const FollowUpLook& look)
{
    const auto entries = camp.hasLedger() ? camp.ledger().entriesOfPerson(look.person) : std::vector<Entry>{};
    const auto gone = takenBack(entries);
    const bool has = std::any_of(entries.begin(), entries.end(), [&](const Entry& entry) {
        return (entry.kind == EntryKind::handedOver || entry.kind == EntryKind::exchanged ||
                entry.kind == EntryKind::delivered) &&
               gone.count(entry.id) == 0;
    });
    if (!has)
        throw errorSaying(
            "person-no-pair",
            {QS_SAY("core", "nothing that was handed over to %1 stands here; look at the code, or enter "
                            "the look at the site that gave the pair"),
             {look.person}},
            3);
    Entry entry;
    entry.kind = EntryKind::followedUp;
    entry.person = look.person;
    entry.actor = look.actor;
    entry.fields["wear"] = wordOf(look.wear);
    for (const Eye eye : bothEyes)
        if (!look.acuity.of(eye).empty())
            entry.fields[eye == Eye::right ? "acuity_right" : "acuity_left"] = look.acuity.of(eye);
    entry.texts["note"] = look.note;
    return entry;
}

FollowUpFacts followUpFacts(const Camp& camp)
{
    FollowUpFacts facts;
    std::map<std::string, Wearer> wearers;
    eachStanding(camp, [&](const Entry& entry) {
        if (entry.person.empty())
            return;
        if (entry.kind == EntryKind::handedOver || entry.kind == EntryKind::exchanged ||
            entry.kind == EntryKind::delivered)
            give(entry, wearers);
        else if (entry.kind == EntryKind::returned)
            wearers.erase(entry.person);
        else if (entry.kind == EntryKind::followedUp)
            facts.seen.push_back(
                {entry.person, entry.atMs, wearNamed(fieldNamed(entry, "wear")).value_or(Wear::notFound)});
    });
    for (auto& [person, wearer] : wearers)
        facts.wearers.push_back(std::move(wearer));
    return facts;
}

CoverageOfCamp coverageOfCamp(const Camp& camp)
{
    std::map<std::string, SightFacts> persons;
    eachStanding(camp, [&](const Entry& entry) {
        if (!entry.person.empty())
            takeSight(entry, persons);
    });
    CoverageOfCamp coverage;
    for (const auto& [code, facts] : persons) {
        if (!facts.record)
            continue;
        ++coverage.people;
        coverage.before.add(needOf(sightBefore(*facts.record)));
        coverage.after.add(needOf(sightAfter(facts)));
    }
    return coverage;
}

} // namespace quarterstep
