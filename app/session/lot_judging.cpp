// SPDX-License-Identifier: GPL-3.0-or-later
// A lot read again: what each pair reads as against what is recorded of it, and the entry with the decision.
#include "app/session/lot.hpp"

#include "core/fitting/reasons.hpp"
#include "core/optics/notation.hpp"
#include "inventory/text/numbers.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

LensValues labelOf(const Supply& supply, Eye eye)
{
    return {supply.power.of(eye), supply.bifocalAddition, {}};
}

/// What the pair reads as against what is recorded of it.
std::vector<Sentence> offRecordOf(const BenchRow& row, const Supply& supply, const ToleranceSet& set)
{
    std::optional<double> off;
    if (row.centres && supply.centres && !supply.centresAssumed &&
        supply.centres->least == supply.centres->most)
        off = *row.centres - supply.centres->least;
    const auto judged =
        judgePair(set, {labelOf(supply, Eye::right), labelOf(supply, Eye::left)}, row.read, off);
    std::vector<Sentence> why;
    for (const auto& result : judged.results)
        if (!result.passes())
            why.push_back(result.sentence);
    return why;
}

Supply asRead(const BenchRow& row, Supply supply)
{
    supply.power = {row.read.right.power, row.read.left.power};
    if (row.read.right.addition && supply.bifocalAddition)
        supply.bifocalAddition = row.read.right.addition;
    if (row.centres) {
        supply.centres = Range{*row.centres, *row.centres};
        supply.centresAssumed = false;
    }
    return supply;
}

void judgeRow(const BenchRow& row, const JudgedHandOver& judged, const ToleranceSet& set, JudgedRow& answer)
{
    const auto& facts = judged.facts;
    if (!facts.supply)
        return;
    answer.outcome = RowOutcome::good;
    answer.why = offRecordOf(row, *facts.supply, set);
    if (!answer.why.empty()) {
        answer.outcome = RowOutcome::offRecord;
        return;
    }
    if (!judged.need || judged.profile == nullptr || facts.reasonGiven)
        return;
    const auto fit = judge(*judged.need, asRead(row, *facts.supply), *judged.profile,
                           facts.acuity ? &*facts.acuity : nullptr);
    if (const auto* failing = fit.firstWith(Band::fails)) {
        answer.outcome = RowOutcome::outside;
        answer.why.push_back(failingSentence(*failing));
    }
}

void tell(LotResult& result, const Position& place, const char* code, Sentence sentence)
{
    result.findings.push_back({Severity::error, place, code, std::move(sentence)});
}

/// One lot of this ledger, not read before, and rows that it has.
void checkRows(const std::vector<Lot>& lots, LotResult& result)
{
    const auto& rows = result.rows;
    const auto found =
        std::find_if(lots.begin(), lots.end(), [&](const Lot& lot) { return lot.id == rows.front().lot; });
    if (found == lots.end())
        return tell(
            result, rows.front().place, "lot-not-drawn",
            {QS_SAY("core",
                    "no lot %1 was drawn in this ledger; this is the worksheet of another camp, or its "
                    "draw was taken back"),
             {rows.front().lot}});
    result.lot = *found;
    if (!found->readBy.empty())
        tell(
            result, rows.front().place, "lot-read-twice",
            {QS_SAY("core",
                    "the results of this lot are in already, entry %1; to enter them anew take that one back "
                    "first with `quarterstep record entered-in-error --entry`"),
             {found->readBy}});
    for (const auto& row : rows) {
        if (row.lot != found->id)
            tell(result, row.place, "lot-mixed",
                 {QS_SAY("core", "this row is of the lot %1, the first one of %2; enter each lot by itself"),
                  {row.lot, found->id}});
        else if (row.row > static_cast<int>(found->handOvers.size()))
            tell(result, row.place, "reading-no-row",
                 {QS_SAY("core", "this lot has %1 rows, spares included; there is no row %2"),
                  {std::to_string(found->handOvers.size()), std::to_string(row.row)}});
    }
}

const char* outcomeWord(RowOutcome outcome)
{
    constexpr const char* words[] = {"unread", "good", "off-record", "outside"};
    return words[static_cast<std::size_t>(outcome)];
}

} // namespace

LotResult judgeLot(const Camp& camp, const std::vector<BenchRow>& rows, const ToleranceSet& set,
                   const AuditOptions& options)
{
    LotResult result;
    result.rows = rows;
    if (rows.empty()) {
        tell(result, {}, "reading-missing", {QS_SAY("core", "no row of the worksheet is filled in"), {}});
        return result;
    }
    checkRows(lotsOf(camp), result);
    if (!result.usable())
        return result;
    std::map<std::string, std::size_t> places;
    std::vector<RowOutcome> outcomes;
    for (const auto& id : result.lot.handOvers) {
        places[id] = result.judged.size();
        result.judged.push_back({static_cast<int>(result.judged.size()) + 1, id, RowOutcome::unread, {}});
    }
    std::map<std::size_t, const BenchRow*> read;
    for (const auto& row : result.rows)
        if (row.found)
            read[static_cast<std::size_t>(row.row) - 1] = &row;
    AuditEars ears;
    ears.judged = [&](const JudgedHandOver& judged, const SlipAnswer&) {
        const auto place = places.find(judged.facts.entry);
        if (place != places.end() && read.count(place->second) > 0)
            judgeRow(*read.at(place->second), judged, set, result.judged[place->second]);
    };
    (void)auditCamp(camp, options, ears);
    outcomes.reserve(result.judged.size());
    for (const auto& row : result.judged)
        outcomes.push_back(row.outcome);
    result.count = countRows(outcomes, result.lot.plan.plan);
    return result;
}

Entry lotReadEntry(const LotResult& result, const std::string& actor)
{
    Entry entry;
    entry.kind = EntryKind::lotRead;
    entry.actor = actor;
    std::string readings;
    for (const auto& row : result.rows) {
        if (!row.found && !row.notFoundSaid)
            continue;
        const auto outcome = result.judged[static_cast<std::size_t>(row.row) - 1].outcome;
        readings += std::to_string(row.row) + ": " + (row.found ? outcomeWord(outcome) : "not-found");
        if (row.found)
            readings += "; R " + row.asRead.right + "; L " + row.asRead.left +
                        (row.centres ? "; centres " + writeNumber(*row.centres) : "");
        readings += "\n";
    }
    entry.fields = {{"lot", result.lot.id},
                    {"readings", readings},
                    {"read", std::to_string(result.count.read)},
                    {"failed", std::to_string(result.count.failed)},
                    {"decision", wordOf(decide(result.count, result.lot.plan.plan))}};
    return entry;
}

} // namespace quarterstep
