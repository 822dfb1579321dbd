// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/unserved.hpp"

#include "app/session/keeping.hpp"
#include "core/fitting/words.hpp"
#include "core/record/judgement.hpp"
#include "inventory/text/record_text.hpp"

#include <QDateTime>

#include <cmath>

namespace quarterstep
{

namespace
{

EntryKind kindOf(const Recommendation& answer, bool heldBack)
{
    if (heldBack)
        return EntryKind::notServed;
    switch (answer.verdict) {
    case Verdict::none:
        return EntryKind::notNeeded;
    case Verdict::incomplete:
        return EntryKind::incomplete;
    case Verdict::refer:
        return EntryKind::referred;
    default:
        return EntryKind::notServed;
    }
}

std::string thousandths(double value)
{
    return std::to_string(std::lround(value * 1000.0));
}

/// What an entry says; entries of before did not name the version, which the hash of the rules settles.
std::map<std::string, std::string> saidIn(const Entry& entry)
{
    auto fields = entry.fields;
    fields.erase("profile_version");
    return fields;
}

/// What the ledger has about a person and what of it was taken back.
struct History {
    std::vector<Entry> entries;
    std::set<std::string> gone;
};

History historyOf(const Camp& camp, const std::string& person)
{
    History history;
    if (!camp.hasLedger())
        return history;
    history.entries = camp.ledger().entriesOfPerson(person);
    history.gone = takenBack(history.entries);
    return history;
}

} // namespace

std::string finalsAsWritten(const PersonRecord& person)
{
    return "R " + person.eyes.right.final.asWritten + " L " + person.eyes.left.final.asWritten;
}

void putDemandFields(const PersonRecord& person, const Recommendation& answer,
                     std::map<std::string, std::string>& fields)
{
    if (person.age)
        fields["age_years"] = std::to_string(static_cast<int>(*person.age));
    if (person.eyes.right.addition)
        fields["add_right_thousandths"] = thousandths(person.eyes.right.addition->value());
    if (person.eyes.left.addition)
        fields["add_left_thousandths"] = thousandths(person.eyes.left.addition->value());
    if (answer.need && answer.need->pdKnown)
        fields["pd_thousandths"] = thousandths(answer.need->pd.least);
}

void putNeed(const Camp& camp, const PersonRecord& person, const Recommendation& answer, Entry& entry)
{
    auto& fields = entry.fields;
    fields["purpose"] = wordOf(answer.purpose);
    fields["profile"] = answer.profile;
    if (const Profile* profile = camp.rules().find(answer.profile))
        fields["profile_version"] = profile->version;
    fields["rules_hash"] = camp.rules().hash;
    fields["final"] = finalsAsWritten(person);
    putDemandFields(person, answer, fields);
    entry.texts["record"] = recordText(person); // beside the chain: how the person saw counts for coverage
}

Entry unservedEntry(const Camp& camp, const PersonRecord& person, const Recommendation& answer, bool heldBack)
{
    Entry entry;
    entry.kind = kindOf(answer, heldBack);
    entry.person = person.person;
    putNeed(camp, person, answer, entry);
    entry.fields["referral"] = wordOf(answer.referral);
    entry.fields["why"] = heldBack ? "held_back" : answer.reasonKey;
    return entry;
}

bool handedOverToday(const Camp& camp, const PersonRecord& person, Purpose purpose)
{
    const auto history = historyOf(camp, person.person);
    const auto today = localDay(QDateTime::currentMSecsSinceEpoch());
    for (const auto& entry : history.entries)
        if (entry.kind == EntryKind::handedOver && entry.site == camp.site() &&
            history.gone.count(entry.id) == 0 && fieldNamed(entry, "purpose") == wordOf(purpose) &&
            fieldNamed(entry, "final") == finalsAsWritten(person) && localDay(entry.atMs) == today)
            return true;
    return false;
}

std::string saidBefore(const Camp& camp, const Entry& entry)
{
    const auto history = historyOf(camp, entry.person);
    for (const auto& before : history.entries)
        if (before.kind == entry.kind && before.site == camp.site() && saidIn(before) == saidIn(entry) &&
            history.gone.count(before.id) == 0)
            return before.id;
    return {};
}

} // namespace quarterstep
