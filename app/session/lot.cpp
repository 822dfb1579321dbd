// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/lot.hpp"

#include "app/session/keeping.hpp"
#include "core/fitting/words.hpp"
#include "core/optics/notation.hpp"
#include "core/record/judgement.hpp"
#include "core/record/life.hpp"
#include "inventory/text/numbers.hpp"

#include <algorithm>
#include <cmath>
#include <sstream>

namespace quarterstep
{

namespace
{

std::string inThousandths(double share)
{
    return std::to_string(std::lround(share * 1000.0));
}

long numberOf(const Entry& entry, const char* name)
{
    const auto read = parseWholeNumber(fieldNamed(entry, name), 0, 1'000'000'000);
    return read ? read.value() : 0;
}

/// Standing hand-overs of this site in the days asked for, oldest first.
std::vector<std::string> lotIds(const Camp& camp, const LotWish& wish)
{
    const auto gone = camp.ledger().takenBackIds();
    std::vector<std::string> ids;
    camp.ledger().eachStored(0, [&](const StoredEntry& stored) {
        const auto entry = entryFrom(stored);
        if (!entry || entry->kind != EntryKind::handedOver || entry->site != camp.site() ||
            gone.count(entry->id) > 0 || fieldNamed(*entry, "supplied").empty())
            return true;
        const auto day = localDay(entry->atMs);
        if ((wish.since.empty() || day >= wish.since) && (wish.until.empty() || day <= wish.until))
            ids.push_back(entry->id);
        return true;
    });
    return ids;
}

/// Spares for pairs that cannot be found: a fifth of the sample, two at least (common practice).
std::size_t sparesFor(int sample)
{
    return static_cast<std::size_t>(std::max(2, sample / 5));
}

LotPlan planFor(const LotWish& wish)
{
    if (wish.sample)
        return planOf(*wish.sample, wish.allowed, wish.fine, wish.bad);
    const auto found = smallestPlan(wish.fine, wish.bad, {wish.risk, wish.risk});
    if (!found)
        throw errorSaying(
            "lot-plan",
            {QS_SAY("core", "no sample up to %1 tells these shares apart at this risk; allow a larger "
                            "risk, or take shares that lie further apart"),
             {std::to_string(largestSample)}},
            2);
    return wish.allowed ? planOf(found->plan.sample, wish.allowed, wish.fine, wish.bad) : *found;
}

Lot lotFrom(const Entry& entry)
{
    Lot lot;
    lot.id = entry.id;
    lot.number = entry.number;
    lot.atMs = entry.atMs;
    lot.site = entry.site;
    lot.plan =
        planOf(static_cast<int>(numberOf(entry, "sample")), static_cast<int>(numberOf(entry, "allowed")),
               static_cast<double>(numberOf(entry, "fine_thousandths")) / 1000.0,
               static_cast<double>(numberOf(entry, "bad_thousandths")) / 1000.0);
    lot.size = static_cast<int>(numberOf(entry, "lot_size"));
    std::istringstream(fieldNamed(entry, "seed")) >> lot.seed;
    lot.since = fieldNamed(entry, "since");
    lot.until = fieldNamed(entry, "until");
    std::istringstream ids(fieldNamed(entry, "hand_overs"));
    for (std::string id; ids >> id;)
        lot.handOvers.push_back(id);
    return lot;
}

std::string centresText(const Supply& supply)
{
    if (!supply.centres || supply.centres->least != supply.centres->most)
        return {};
    return writeNumber(supply.centres->least);
}

} // namespace

Lot drawLot(const Camp& camp, const LotWish& wish)
{
    Lot lot;
    lot.plan = planFor(wish);
    lot.site = camp.site();
    lot.seed = wish.seed;
    lot.since = wish.since;
    lot.until = wish.until;
    const auto ids = lotIds(camp, wish);
    lot.size = static_cast<int>(ids.size());
    const int sample = lot.plan.plan.sample;
    if (ids.empty())
        throw errorSaying(
            "lot-nobody",
            {QS_SAY("core", "nothing was handed over here in those days whose pair is recorded; there is "
                            "nothing to draw from"),
             {}},
            3);
    if (sample > lot.size)
        throw errorSaying(
            "lot-too-small",
            {QS_SAY("core", "the plan reads %1 pairs and only %2 were handed over; read all of them "
                            "(--sample %2), or take more days into the lot"),
             {std::to_string(sample), std::to_string(lot.size)}},
            3);
    for (const auto place :
         drawnInOrder(ids.size(), static_cast<std::size_t>(sample) + sparesFor(sample), wish.seed))
        lot.handOvers.push_back(ids[place]);
    return lot;
}

Entry lotEntry(const Lot& lot, const std::string& actor)
{
    Entry entry;
    entry.kind = EntryKind::lotDrawn;
    entry.actor = actor;
    std::string ids;
    for (const auto& id : lot.handOvers)
        ids += (ids.empty() ? "" : " ") + id;
    entry.fields = {{"sample", std::to_string(lot.plan.plan.sample)},
                    {"allowed", std::to_string(lot.plan.plan.allowed)},
                    {"fine_thousandths", inThousandths(lot.plan.fine)},
                    {"bad_thousandths", inThousandths(lot.plan.bad)},
                    {"lot_size", std::to_string(lot.size)},
                    {"seed", std::to_string(lot.seed)},
                    {"hand_overs", ids}};
    for (const auto& [name, day] : {std::pair{"since", lot.since}, {"until", lot.until}})
        if (!day.empty())
            entry.fields[name] = day;
    return entry;
}

std::vector<Lot> lotsOf(const Camp& camp)
{
    std::vector<Lot> lots;
    const auto gone = camp.ledger().takenBackIds();
    for (const auto& entry : camp.ledger().entriesOfKinds({EntryKind::lotDrawn, EntryKind::lotRead})) {
        if (gone.count(entry.id) > 0)
            continue;
        if (entry.kind == EntryKind::lotDrawn)
            lots.push_back(lotFrom(entry));
        if (entry.kind != EntryKind::lotRead)
            continue;
        for (auto& lot : lots)
            if (lot.id == fieldNamed(entry, "lot")) {
                lot.readBy = entry.id;
                lot.count = {static_cast<int>(numberOf(entry, "read")),
                             static_cast<int>(numberOf(entry, "failed")), 0};
            }
    }
    return lots;
}

Lot lotNamed(const Camp& camp, const std::string& id)
{
    const auto lots = lotsOf(camp);
    if (id.empty() && !lots.empty())
        return lots.back();
    for (const auto& lot : lots)
        if (lot.id == id)
            return lot;
    throw errorSaying(
        "lot-not-drawn",
        id.empty() ? Sentence{QS_SAY("core", "no lot was drawn here yet; `quarterstep audit draw` does"), {}}
                   : Sentence{QS_SAY("core", "no lot %1 was drawn in this ledger"), {id}},
        3);
}

std::vector<BenchSheetRow> sheetOf(const Camp& camp, const Lot& lot)
{
    std::vector<BenchSheetRow> rows;
    for (const auto& id : lot.handOvers) {
        BenchSheetRow row;
        row.row = static_cast<int>(rows.size()) + 1;
        row.spare = row.row > lot.plan.plan.sample;
        if (const auto entry = camp.ledger().entry(id)) {
            const auto facts = factsOf(*entry);
            row.handOver = std::to_string(facts.number);
            row.day = localDay(facts.atMs);
            row.person = facts.person;
            row.purpose = wordOf(facts.purpose);
            for (const auto& movement : facts.movements)
                row.lines += (row.lines.empty() ? "" : " + ") + movement.line;
            if (facts.supply) {
                for (const Eye eye : bothEyes)
                    row.label.of(eye) = writePower(facts.supply->power.of(eye));
                row.centres = centresText(*facts.supply);
            }
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace quarterstep
