// SPDX-License-Identifier: GPL-3.0-or-later
// What a merge looks at and refuses before anything is written.
#include "inventory/store/merge_work.hpp"

#include "inventory/store/payload.hpp"

#include <algorithm>

namespace quarterstep
{

LedgerMerge::LedgerMerge(Ledger& into, const Ledger& from)
    : into_(*into.inside_), from_(*from.inside_), path_(from_.path), ours_(into_.live()),
      theirs_(from_.live())
{
}

MergeReport LedgerMerge::run(bool dryRun, const ChainCheck& theirChain)
{
    refuseUnfit(theirChain);
    if (dryRun) {
        plan();
        return std::move(report_);
    }
    into_.engine().overwriteErased(ours_);
    LedgerTransaction transaction(into_);
    const auto order = plan();
    for (const auto index : order)
        insert(index);
    blankForgotten();
    transaction.commit();
    if (report_.blanked > 0)
        (void)into_.engine().emptyJournal(ours_);
    return std::move(report_);
}

void LedgerMerge::refuseUnfit(const ChainCheck& theirChain) const
{
    if (into_.engine().identity(ours_) == from_.engine().identity(theirs_))
        throw errorAt(path_, "merge-itself",
                      {QS_SAY("core", "this is the ledger of the camp itself; name another one"), {}}, 2);
    if (!theirChain.ok)
        throw errorAt(
            path_, "merge-source-broken",
            {QS_SAY("core", "entry %1 of this ledger is not as it was written: %2; nothing was taken "
                            "over"),
             {std::to_string(theirChain.firstBad.value_or(0)), theirChain.what}},
            3);
}

std::vector<std::size_t> LedgerMerge::plan()
{
    readNew();
    auto result = mergeOrder(steps_, counts(), known_, cancelled_);
    if (result.obstacle != MergeObstacle::none)
        throw obstacle(result);
    report_.added = static_cast<std::int64_t>(steps_.size());
    for (const auto& step : steps_) {
        ++report_.byStation[step.station];
        ++report_.bySite[step.site];
    }
    tellStations();
    return std::move(result.order);
}

void LedgerMerge::readNew()
{
    auto rows = theirs_.prepare("SELECT entry.position, entry.id, station.id, number, kind, person, cancels, "
                                "payload, hash FROM entry "
                                "JOIN station ON station.key = entry.station ORDER BY entry.station, number");
    rows.run();
    std::string station;
    std::int64_t last = 0;
    while (rows.next()) {
        if (rows.bytes(2) != station) {
            station = rows.bytes(2);
            last = lastNumber(station);
        }
        theirLast_[station] = rows.whole(3);
        if (rows.whole(3) > last)
            take(rows, station);
        else
            compare(rows, station);
    }
    rows.finish();
}

std::int64_t LedgerMerge::lastNumber(const std::string& station)
{
    auto query = ours_.prepare("SELECT max(number) FROM entry JOIN station ON station.key = entry.station "
                               "WHERE station.id = ?");
    query.run({Blob{station}});
    const auto last = query.next() ? query.whole(0) : 0;
    query.finish();
    return last;
}

void LedgerMerge::compare(const Statement& row, const std::string& station)
{
    if (!sameNumber_)
        sameNumber_.emplace(ours_.prepare("SELECT entry.id, hash FROM entry JOIN station ON station.key = "
                                          "entry.station WHERE station.id = ? AND number = ?"));
    sameNumber_->run({Blob{station}, row.whole(3)});
    const bool there = sameNumber_->next();
    const auto id = there ? sameNumber_->bytes(0) : std::string();
    const auto hash = there ? sameNumber_->bytes(1) : std::string();
    sameNumber_->finish();
    ++report_.known;
    if (id == row.bytes(1) && hash == row.bytes(8))
        return;
    if (id == row.bytes(1))
        throw otherHash(idText(id));
    throw errorAt(
        path_, "merge-fork",
        {QS_SAY("core", "station %1 has two entries number %2, %3 here and %4 there: its folder was "
                        "copied and both copies went on as the same station; nothing was taken over, "
                        "both files are as they were; count the stock of one and enter the difference"),
         {idText(station), std::to_string(row.whole(3)), idText(id), idText(row.bytes(1))}},
        3);
}

Error LedgerMerge::otherHash(const std::string& id) const
{
    return errorAt(
        path_, "merge-other-hash",
        {QS_SAY("core", "entry %1 is in both ledgers with another content; one of them was changed; "
                        "nothing was taken over"),
         {id}},
        3);
}

void LedgerMerge::take(const Statement& row, const std::string& station)
{
    const auto stored = readPayload(row.text(7));
    if (!stored) // written since the chain was checked
        throw errorAt(path_, "merge-source-broken",
                      {QS_SAY("core", "an entry of this ledger cannot be read; nothing was taken over"), {}},
                      3);
    MergeStep step{idText(row.bytes(1)), idText(station),       row.whole(3),           stored->entry.atMs,
                   stored->site,         stored->entry.cancels, stored->entry.movements};
    if (isHere(row.bytes(1)))
        throw otherHash(step.id);
    if (!step.cancels.empty())
        lookUp(step.cancels);
    incoming_.push_back({row.whole(0), row.bytes(1), row.text(4), row.text(5),
                         row.isNull(6) ? std::string() : row.bytes(6), row.text(7), row.bytes(8)});
    steps_.push_back(std::move(step));
}

bool LedgerMerge::isHere(const std::string& id)
{
    if (!byId_)
        byId_.emplace(ours_.prepare("SELECT 1 FROM entry WHERE id = ?"));
    byId_->run({Blob{id}});
    const bool here = byId_->next();
    byId_->finish();
    return here;
}

void LedgerMerge::lookUp(const std::string& cancels)
{
    if (isHere(idBytes(cancels)))
        known_.insert(cancels);
    auto query = ours_.prepare("SELECT id FROM entry WHERE cancels = ?");
    query.run({Blob{idBytes(cancels)}});
    if (query.next())
        cancelled_[cancels] = idText(query.bytes(0));
    query.finish();
}

MergeCounts LedgerMerge::counts()
{
    MergeCounts counts;
    auto query = ours_.prepare("SELECT site, line, on_hand, held, quarantined FROM balance");
    query.run();
    while (query.next())
        counts[{query.text(0), query.text(1)}] = {query.whole(2), query.whole(3), query.whole(4)};
    query.finish();
    return counts;
}

Error LedgerMerge::obstacle(const MergeOrder& found)
{
    const auto& step = steps_[found.step];
    if (found.obstacle == MergeObstacle::takenBackTwice)
        return errorAt(
            path_, "merge-taken-back-twice",
            {QS_SAY("core", "entries %1 and %2 take back the same entry %3; nothing was taken over"),
             {step.id, found.other, step.cancels}},
            3);
    if (found.obstacle == MergeObstacle::takesBackUnknown)
        return errorAt(
            path_, "merge-source-broken",
            {QS_SAY("core", "entry %1 takes back %2, which is in neither ledger; merge the ledger that "
                            "has it first"),
             {step.id, step.cancels}},
            3);
    const auto other = found.other.empty() ? lastTaker(found.line) : found.other;
    return errorAt(
        path_, "merge-below-zero",
        {QS_SAY("core", "line %1 of %2 would go below zero: entries %3 and %4 took the same pieces; "
                        "nothing was taken over; count the stock there and enter the difference first"),
         {found.line.second, found.line.first, step.id, other}},
        3);
}

std::string LedgerMerge::lastTaker(const SiteLine& line)
{
    auto query =
        ours_.prepare("SELECT entry.id FROM movement JOIN entry ON entry.position = movement.entry WHERE "
                      "site = ? AND line = ? AND (delta < 0 OR held > 0 OR quarantined > 0) "
                      "ORDER BY movement.entry DESC LIMIT 1");
    query.run({line.first, line.second});
    const auto id = query.next() ? idText(query.bytes(0)) : std::string("-");
    query.finish();
    return id;
}

void LedgerMerge::tellStations()
{
    const auto own = idText(into_.stationId);
    if (report_.byStation.count(own) > 0)
        report_.findings.push_back(findingAt(
            Severity::caution, path_, "merge-own-station",
            {QS_SAY("core",
                    "entries of this very station came from a copy of its folder; do not use that copy "
                    "any more"),
             {}}));
    for (const auto& [site, stations] : stationsBySite())
        if (stations.size() > 1 && wentApart(site))
            report_.findings.push_back(findingAt(
                Severity::caution, path_, "merge-two-stations",
                {QS_SAY("core",
                        "%1 has entries of %2 stations: its folder was copied and both were used; count its "
                        "stock, since both began with the same pieces"),
                 {site, std::to_string(stations.size())}}));
}

bool LedgerMerge::wentApart(const std::string& site)
{
    if (report_.bySite.count(site) == 0)
        return false;
    auto query = ours_.prepare(
        "SELECT station.id, max(number) FROM movement JOIN entry ON entry.position = movement.entry "
        "JOIN station ON station.key = entry.station WHERE movement.site = ? GROUP BY station.id");
    query.run({site});
    bool apart = false;
    while (query.next()) {
        const auto station = idText(query.bytes(0));
        const auto known = theirLast_.find(query.bytes(0));
        const bool seenThere = known != theirLast_.end() && known->second >= query.whole(1);
        const bool others = std::any_of(steps_.begin(), steps_.end(), [&](const MergeStep& step) {
            return step.site == site && step.station != station && !step.movements.empty();
        });
        apart = apart || (!seenThere && others);
    }
    query.finish();
    return apart;
}

std::map<std::string, std::set<std::string>> LedgerMerge::stationsBySite()
{
    std::map<std::string, std::set<std::string>> stations;
    auto query = ours_.prepare("SELECT DISTINCT movement.site, station.id FROM movement JOIN entry ON "
                               "entry.position = movement.entry JOIN station ON station.key = entry.station");
    query.run();
    while (query.next())
        stations[query.text(0)].insert(idText(query.bytes(1)));
    query.finish();
    for (const auto& step : steps_)
        if (!step.movements.empty())
            stations[step.site].insert(step.station);
    return stations;
}

MergeReport mergeLedger(Ledger& into, const Ledger& from, bool dryRun)
{
    return LedgerMerge(into, from).run(dryRun, from.checkChain());
}

} // namespace quarterstep
