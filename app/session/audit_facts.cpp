// SPDX-License-Identifier: GPL-3.0-or-later
// From an entry of the ledger to the values the audit judges.
#include "app/session/audit.hpp"
#include "app/session/pair_reading.hpp"

#include "core/fitting/words.hpp"
#include "core/record/day.hpp"
#include "core/record/judgement.hpp"
#include "inventory/text/record_text.hpp"
#include "inventory/text/table_dates.hpp"

#include <charconv>

namespace quarterstep
{

namespace
{

std::optional<long> wholeIn(const std::string& text)
{
    long value = 0;
    const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), value);
    return failed == std::errc() && end == text.data() + text.size() && !text.empty() ? std::optional(value)
                                                                                      : std::nullopt;
}

std::optional<TrialAcuity> acuityIn(const Entry& entry, const std::optional<PersonRecord>& record)
{
    TrialAcuity trial;
    bool any = false;
    for (const Eye eye : bothEyes) {
        const auto text = fieldNamed(entry, eye == Eye::right ? "acuity_right" : "acuity_left");
        if (const auto read = parseAcuity(text)) {
            trial.distance.of(eye) = read.value();
            any = true;
        }
        if (record)
            trial.best.of(eye) = record->eyes.of(eye).acuity.best;
    }
    if (const auto read = parseNearAcuity(fieldNamed(entry, "acuity_near"))) {
        trial.near = read.value();
        any = true;
    }
    return any ? std::optional(trial) : std::nullopt;
}

/// Civil date of a day number from 1970-01-01 (Gregorian, by eras of 400 years).
IsoDate dateOf(std::int64_t day)
{
    const std::int64_t shifted = day + 719'468; // days from 0000-03-01
    const std::int64_t era = (shifted >= 0 ? shifted : shifted - 146'096) / 146'097;
    const std::int64_t ofEra = shifted - era * 146'097;
    const std::int64_t year = (ofEra - ofEra / 1460 + ofEra / 36'524 - ofEra / 146'096) / 365;
    const std::int64_t ofYear = ofEra - (365 * year + year / 4 - year / 100);
    const std::int64_t month = (5 * ofYear + 2) / 153;
    return {static_cast<int>(year + era * 400 + (month >= 10 ? 1 : 0)),
            static_cast<int>(month < 10 ? month + 3 : month - 9),
            static_cast<int>(ofYear - (153 * month + 2) / 5 + 1)};
}

} // namespace

std::string mondayOf(std::int64_t atMs)
{
    const std::int64_t day = atMs / dayMs;
    const auto date = dateOf(day - (day + 3) % 7); // 1970-01-01 was a Thursday
    const auto two = [](int number) { return (number < 10 ? "0" : "") + std::to_string(number); };
    return std::to_string(date.year) + "-" + two(date.month) + "-" + two(date.day);
}

HandOverFacts factsOf(const Entry& entry)
{
    HandOverFacts facts;
    facts.entry = entry.id;
    facts.number = entry.number;
    facts.atMs = entry.atMs;
    facts.site = entry.site;
    facts.actor = entry.actor;
    facts.person = entry.person;
    facts.purpose = purposeNamed(fieldNamed(entry, "purpose")).value_or(Purpose::distance);
    facts.profile = fieldNamed(entry, "profile");
    facts.rulesHash = fieldNamed(entry, "rules_hash");
    facts.movements = entry.movements;
    facts.verdict = fieldNamed(entry, "verdict");
    facts.costThousandths = wholeIn(fieldNamed(entry, "cost_thousandths"));
    facts.horizontalThousandths = wholeIn(fieldNamed(entry, "prism_h_thousandths"));
    facts.checks = fieldNamed(entry, "checks");
    facts.referral = fieldNamed(entry, "referral");
    const auto textOf = [&](const char* name) {
        const auto found = entry.texts.find(name);
        return found == entry.texts.end() ? std::string() : found->second;
    };
    facts.reasonGiven = !textOf("reason").empty();
    facts.record = readRecordText(textOf("record"));
    facts.supply = readSupplyText(fieldNamed(entry, "supplied"));
    facts.acuity = acuityIn(entry, facts.record);
    if (const auto reading = readingIn(entry.fields); reading.right || reading.left)
        facts.later = std::make_shared<const LaterWitness>(LaterWitness{reading, {}, {}, {}});
    if (facts.record)
        if (const auto written = parseIsoDate(facts.record->writtenOn))
            facts.record->monthsSinceWritten = monthsBetween(*written, dateOf(entry.atMs / dayMs));
    return facts;
}

} // namespace quarterstep
