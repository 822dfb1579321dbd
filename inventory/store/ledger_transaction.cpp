// SPDX-License-Identifier: GPL-3.0-or-later
// A transaction, what is prepared for it, and patience when others or the network are in the way.
#include "inventory/store/ledger_inside.hpp"

#include <thread>

namespace quarterstep
{

namespace
{

/// A disk that failed while the entry was being made to last may keep it or not; so may a server that was
/// lost.
StoreError commitError(const std::string& path, const StoreError& failure)
{
    const auto& said = failure.finding().sentence.arguments;
    if (failure.kind() == FailureKind::inputOutput)
        return {errorAt(path, "ledger-failed",
                        {QS_SAY("core",
                                "the disk failed while the entry was written (%1); close the camp, open it "
                                "again and look whether the entry is there before you repeat it"),
                         {said.empty() ? std::string() : said.front()}},
                        4),
                failure.kind()};
    if (failure.kind() == FailureKind::lost)
        return {
            errorAt(path, "ledger-unreachable",
                    {QS_SAY("core",
                            "the connection to the shared ledger was lost while the entry was written (%1); "
                            "open the camp again and look whether the entry is there before you "
                            "repeat it"),
                     {said.empty() ? std::string() : said.front()}},
                    4),
            failure.kind()};
    return failure;
}

} // namespace

LedgerStatements::LedgerStatements(Connection& connection)
    : lastOfStation(connection.prepare(
          "SELECT number, hash, id FROM entry WHERE station = ? ORDER BY number DESC LIMIT 1")),
      countOf(connection.prepare("SELECT on_hand - held - quarantined, held, quarantined FROM balance "
                                 "WHERE site = ? AND line = ?")),
      snapshot(connection.prepare(
          "SELECT line, on_hand, held, quarantined, (SELECT coalesce(max(position), 0) FROM entry) "
          "FROM balance WHERE site = ? ORDER BY line"))
{
}

LedgerInserts::LedgerInserts(Connection& connection)
    : entry(connection.prepare(
          "INSERT INTO entry (id, station, number, kind, at_ms, person, cancels, payload, hash) "
          "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING position")),
      movement(connection.prepare("INSERT INTO movement (entry, place, site, line, delta, part, held, "
                                  "quarantined) VALUES (?, ?, ?, ?, ?, ?, ?, ?)")),
      line(connection.prepare("INSERT INTO balance (site, line) VALUES (?, ?)")),
      remark(connection.prepare("INSERT INTO remark (entry, name, salt, words) VALUES (?, ?, ?, ?)"))
{
}

LedgerTransaction::LedgerTransaction(Ledger::Inside& ledger) : ledger_(ledger)
{
    ledger_.requireWritable();
    ledger_.live().beginWriting();
    ledger_.done.clear();
    ledger_.inTransaction = true;
}

LedgerTransaction::~LedgerTransaction()
{
    ledger_.abandon();
}

void LedgerTransaction::commit()
{
    ledger_.engine().requireSame();
    try {
        ledger_.connection->commit();
    } catch (const StoreError& error) {
        throw commitError(ledger_.path, error);
    }
    ledger_.inTransaction = false;
}

void Ledger::Inside::abandon()
{
    if (std::exchange(inTransaction, false))
        connection->rollback(); // a failed COMMIT may have rolled back already
}

bool Ledger::Inside::Patience::allows(Inside& ledger, const StoreError& error)
{
    using namespace std::chrono;
    constexpr int most = 3; // losses
    if (error.kind() == FailureKind::lost && ++losses_ <= most) {
        try {
            ledger.reopen();
        } catch (const StoreError&) {
            throw StoreError(error); // says whether anything may have been written
        }
        return true;
    }
    if (error.kind() != FailureKind::conflict || steady_clock::now() - begin_ > seconds(2))
        throw StoreError(error);
    std::this_thread::sleep_for(milliseconds(1 + steady_clock::now().time_since_epoch().count() % 7));
    return false;
}

} // namespace quarterstep
