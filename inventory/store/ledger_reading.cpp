// SPDX-License-Identifier: GPL-3.0-or-later
// What a ledger answers.
#include "inventory/store/ledger_inside.hpp"
#include "inventory/store/payload.hpp"

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

Entry entryIn(const Statement& row, int column, const std::string& path)
{
    auto stored = readPayload(row.text(column));
    if (!stored)
        throw ledgerError(path, "ledger-not-a-database",
                          {QS_SAY("core", "an entry of this ledger cannot be read; check the chain and put back the "
                                          "latest copy of the camp folder"), {}}, 3);
    return std::move(stored->entry);
}

} // namespace

Snapshot Ledger::snapshot(const std::string& site) const
{
    Snapshot snapshot;
    auto& query = inside_->statements->snapshot;
    query.run({site});
    while (query.next()) {
        snapshot.balances.push_back(balanceIn(query));
        snapshot.position = query.whole(4);
    }
    query.finish();
    if (snapshot.balances.empty())
        snapshot.position = position();
    return snapshot;
}

std::vector<Balance> Ledger::balances(const std::string& site) const
{
    return snapshot(site).balances;
}

std::vector<Balance> Ledger::balancesAt(const std::string& site, std::int64_t position) const
{
    auto query = inside_->connection->prepare(
        "SELECT line, on_hand - coalesce((SELECT sum(delta) FROM movement AS later WHERE later.site = balance.site "
        "AND later.line = balance.line AND later.entry > ?), 0), held, quarantined FROM balance "
        "WHERE site = ? AND EXISTS (SELECT 1 FROM movement AS earlier WHERE earlier.site = balance.site "
        "AND earlier.line = balance.line AND earlier.entry <= ?) ORDER BY line");
    query.run({position, site, position});
    return allBalances(query);
}

std::vector<Balance> Ledger::firstCounts(const std::string& site) const
{
    auto query = inside_->connection->prepare(
        "SELECT line, (SELECT delta FROM movement WHERE movement.site = balance.site AND movement.line = "
        "balance.line ORDER BY entry, place LIMIT 1), held, quarantined FROM balance WHERE site = ? ORDER BY line");
    query.run({site});
    return allBalances(query);
}

std::int64_t Ledger::position() const
{
    return inside_->connection->wholeOf("SELECT coalesce(max(position), 0) FROM entry");
}

std::vector<Entry> Ledger::entriesAfter(std::int64_t position) const
{
    auto query = inside_->connection->prepare("SELECT payload FROM entry WHERE position > ? ORDER BY position");
    query.run({position});
    std::vector<Entry> entries;
    while (query.next())
        entries.push_back(entryIn(query, 0, inside_->path));
    query.finish();
    return entries;
}

std::optional<Entry> Ledger::entry(const std::string& id) const
{
    auto query = inside_->connection->prepare("SELECT payload FROM entry WHERE id = ?");
    query.run({Blob{idBytes(id)}});
    std::optional<Entry> found;
    if (query.next())
        found = entryIn(query, 0, inside_->path);
    query.finish();
    return found;
}

std::optional<LedgerPerson> Ledger::person(const std::string& code) const
{
    auto query = inside_->connection->prepare("SELECT code, name FROM person WHERE code = ?");
    query.run({code});
    std::optional<LedgerPerson> found;
    if (query.next())
        found = LedgerPerson{query.text(0), query.text(1)};
    query.finish();
    return found;
}

} // namespace quarterstep
