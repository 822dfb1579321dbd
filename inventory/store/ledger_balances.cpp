// SPDX-License-Identifier: GPL-3.0-or-later
// The counts a ledger answers with: of today, and as they were.
#include "inventory/store/ledger_inside.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

Balance balanceIn(const Statement& row)
{
    return {row.text(0), static_cast<int>(row.whole(1)), static_cast<int>(row.whole(2)),
            static_cast<int>(row.whole(3))};
}

std::vector<Balance> allBalances(Statement& query)
{
    std::vector<Balance> balances;
    while (query.next())
        balances.push_back(balanceIn(query));
    query.finish();
    return balances;
}

bool byName(const Balance& one, const Balance& other)
{
    return one.line < other.line;
}

} // namespace

const Balance* Snapshot::of(const std::string& line) const
{
    const auto found =
        std::lower_bound(balances.begin(), balances.end(), line,
                         [](const Balance& one, const std::string& name) { return one.line < name; });
    return found != balances.end() && found->line == line ? &*found : nullptr;
}

Snapshot Ledger::snapshot(const std::string& site) const
{
    return inside_->reading([&] {
        Snapshot snapshot;
        auto& query = inside_->statements->snapshot;
        query.run({site});
        while (query.next()) {
            snapshot.balances.push_back(balanceIn(query));
            snapshot.position = query.whole(4);
        }
        query.finish();
        if (!std::is_sorted(snapshot.balances.begin(), snapshot.balances.end(),
                            byName)) // a server's own order
            std::sort(snapshot.balances.begin(), snapshot.balances.end(), byName);
        if (snapshot.balances.empty())
            snapshot.position = position();
        return snapshot;
    });
}

std::vector<Balance> Ledger::balances(const std::string& site) const
{
    return snapshot(site).balances;
}

std::vector<Balance> Ledger::balancesAt(const std::string& site, std::int64_t position) const
{
    return inside_->reading([&] {
        auto& connection = inside_->live();
        const ReadTransaction transaction(connection);
        auto query = connection.prepare("SELECT line, on_hand, held, quarantined FROM balance WHERE site = ? "
                                        "AND EXISTS (SELECT 1 FROM movement AS "
                                        "earlier WHERE earlier.site = balance.site AND earlier.line = "
                                        "balance.line AND earlier.entry <= ?) "
                                        "ORDER BY line");
        query.run({site, position});
        auto counts = allBalances(query);
        // From the counts of today back: what came later is usually little.
        const auto later = connection.engine().movedSince(connection, site, position);
        for (auto& count : counts)
            if (const auto moved = later.find(count.line); moved != later.end()) {
                count.onHand -= static_cast<int>(moved->second.onHand);
                count.held -= static_cast<int>(moved->second.held);
                count.quarantined -= static_cast<int>(moved->second.quarantined);
            }
        return counts;
    });
}

std::vector<Balance> Ledger::firstCounts(const std::string& site) const
{
    return inside_->reading([&] {
        auto query = inside_->live().prepare(
            "SELECT line, (SELECT delta FROM movement WHERE movement.site = balance.site AND movement.line = "
            "balance.line ORDER BY entry, place LIMIT 1), held, quarantined FROM balance WHERE site = ? "
            "ORDER BY "
            "line");
        query.run({site});
        return allBalances(query);
    });
}

std::int64_t Ledger::position() const
{
    return inside_->reading(
        [&] { return inside_->live().wholeOf("SELECT coalesce(max(position), 0) FROM entry"); });
}

} // namespace quarterstep
