// SPDX-License-Identifier: GPL-3.0-or-later
// Which station writes here, and at which place.
#include "inventory/store/ledger_inside.hpp"

namespace quarterstep
{

namespace
{

void writePlace(Connection& connection, const std::string& path)
{
    const auto place = placeOf(path);
    auto claim = connection.prepare("UPDATE station SET machine = ?, volume = ?, folder = ? WHERE own = 1");
    claim.run({place.machine, place.volume, place.folder});
    claim.finish();
}

} // namespace

void Ledger::Inside::bringUp()
{
    if (!older)
        return;
    forgetOlderForm(*connection);
    migratedFrom = migrateLedger(*connection, path);
    older = false;
    inserts.emplace(*connection);
}

void Ledger::Inside::readStation()
{
    auto query = connection->prepare("SELECT key, id, machine, volume, folder FROM station WHERE own = 1");
    query.run();
    if (!query.next())
        throw errorAt(
            path, "ledger-not-a-database",
            {QS_SAY("core", "this ledger names no station of its own; put back the latest copy"), {}}, 3);
    stationKey = query.whole(0);
    stationId = query.bytes(1);
    moved = placeOf(path) != PlaceMark{query.text(2), query.text(3), query.text(4)};
    query.finish();
}

void Ledger::Inside::claim(bool asSecondStation)
{
    if (mode == Mode::readOnly)
        requireWritable();
    bringUp();
    const bool was = std::exchange(moved, false);
    try {
        LedgerTransaction transaction(*this);
        if (asSecondStation) {
            connection->execute("UPDATE station SET own = 0 WHERE own = 1");
            auto add = connection->prepare(
                "INSERT INTO station (id, own, machine, volume, folder) VALUES (?, 1, '', '', '')");
            add.run({Blob{randomId()}});
            add.finish();
        }
        writePlace(*connection, path);
        transaction.commit();
    } catch (...) {
        moved = was;
        throw;
    }
    readStation();
}

void Ledger::claimPlace()
{
    inside_->claim(false);
}

void Ledger::becomeSecondStation()
{
    inside_->claim(true);
}

const std::string& Ledger::migratedFrom() const
{
    return inside_->migratedFrom;
}

std::string Ledger::station() const
{
    return idText(inside_->stationId);
}

void Ledger::copyTo(const std::string& target) const
{
    copyLedger(*inside_->connection, target);
}

} // namespace quarterstep
