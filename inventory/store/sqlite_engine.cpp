// SPDX-License-Identifier: GPL-3.0-or-later
// A ledger in a file: set to write safely, its place compared.
#include "inventory/store/sqlite_engine.hpp"
#include "inventory/store/clone.hpp"
#include "inventory/store/entry_id.hpp"
#include "inventory/store/migrations.hpp"
#include "inventory/store/sqlite_file.hpp"
#include "inventory/store/sqlite_link.hpp"

#include <QUrl>

#include <sys/stat.h>

#include <chrono>
#include <cstdlib>
#include <thread>

namespace quarterstep
{

namespace
{

/// Result codes of SQLite (its manual): the low byte is the primary one.
enum Result {
    busy = 5,
    locked = 6,
    readOnlyFile = 8,
    inputOutput = 10,
    corrupt = 11,
    full = 13,
    cantOpen = 14,
    notADatabase = 26,
    constraintCheck = 275,
    constraintForeignKey = 787
};

/// Switching to WAL needs the file for itself for a moment, and does not wait for it by itself.
void switchToWal(Connection& connection, const std::string& path, int waitMs)
{
    for (int waited = 0;; waited += 20) {
        try {
            if (connection.textOf("PRAGMA journal_mode = WAL") == "wal")
                return;
            throw errorAt(path, "ledger-unwritable",
                          {QS_SAY("core", "this file system cannot keep a ledger safely (no shared memory "
                                          "beside the file); keep the camp folder on another disk"),
                           {}},
                          4);
        } catch (const Error& error) {
            if (error.finding().code != "ledger-locked" || waited >= waitMs)
                throw;
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
}

} // namespace

std::unique_ptr<StoreLink> SqliteEngine::connect(Connection::Access access, int busyMs, StoreFailure& failure)
{
    const char* modes[] = {"?mode=ro", "?mode=rw", "?mode=ro&immutable=1"};
    const auto url =
        QUrl::fromLocalFile(QString::fromStdString(path_)).toEncoded(); // space, %, #, ? and beyond
    // The library looks again ever more seldom, up to ten times a second, and among many writers who always
    // come back at once it may never find the moment. So it waits a few milliseconds only, and the statement
    // is repeated (patienceMs).
    constexpr int libraryWaitsMs = 5;
    busyMs_ = busyMs;
    identity_ = identityOf(path_);
    return openSqliteLink(url.toStdString() + modes[static_cast<std::size_t>(access)],
                          std::min(busyMs, libraryWaitsMs), failure);
}

FailureKind SqliteEngine::kindOf(const std::string& code) const
{
    const int result = std::atoi(code.c_str()); // empty: the driver itself failed
    if (result == constraintCheck)
        return FailureKind::check;
    if (result == constraintForeignKey)
        return FailureKind::foreignKey;
    switch (result & 0xff) {
    case busy:
    case locked:
        return FailureKind::busy;
    case readOnlyFile:
    case cantOpen:
        return FailureKind::unwritable;
    case inputOutput:
        return FailureKind::inputOutput;
    case full:
        return FailureKind::full;
    case corrupt:
    case notADatabase:
        return FailureKind::damaged;
    default:
        return FailureKind::other;
    }
}

void SqliteEngine::makeReady(Ledger::Mode mode)
{
    refuseNetworkPlace(path_);
    struct stat status {
    };
    if (stat(path_.c_str(), &status) != 0) {
        if (mode == Ledger::Mode::readOnly)
            throw errorAt(path_, "ledger-missing", {QS_SAY("core", "there is no ledger here yet"), {}}, 3);
        makeEmptyFile(path_);
    } else if (!S_ISREG(status.st_mode)) {
        throw errorAt(
            path_, "ledger-not-a-database",
            {QS_SAY("core", "this is not a file; name another one in the key ledger of stock.yaml"), {}}, 3);
    }
    if (mode == Ledger::Mode::readWrite)
        removeUnnamed(path_);
}

void SqliteEngine::allowBareReading() const
{
    if (identityOf(path_ + "-wal"))
        throw errorAt(path_, "ledger-unwritable",
                      {QS_SAY("core", "this ledger was not closed and its folder cannot be written to; "
                                      "copy the whole folder to a place that can, and open it there"),
                       {}},
                      4);
}

void SqliteEngine::requireSame() const
{
    if (identity_ && identityOf(path_) == identity_)
        return;
    throw errorAt(
        path_, "ledger-replaced",
        {QS_SAY("core", "the ledger file was moved, removed or replaced while it was open; nothing was "
                        "written; close the camp and open it again"),
         {}},
        4);
}

LedgerState SqliteEngine::state(Connection& connection)
{
    const auto found = ledgerState(connection, path_);
    if (found == LedgerState::ready)
        requireSchema(connection, path_);
    return found;
}

std::string SqliteEngine::damage(Connection& connection)
{
    const auto said = connection.textOf("PRAGMA integrity_check(1)");
    return said == "ok" ? std::string() : said;
}

void SqliteEngine::settleToWrite(Connection& connection, LedgerState state)
{
    switchToWal(connection, path_, busyMs_);
    connection.execute("PRAGMA synchronous = FULL");
    connection.execute("PRAGMA foreign_keys = ON");
    if (connection.wholeOf("PRAGMA synchronous") != 2 || connection.wholeOf("PRAGMA foreign_keys") != 1)
        throw errorAt(path_, "ledger-failed",
                      {QS_SAY("core", "the database refuses to write safely; nothing was opened"), {}}, 4);
    if (state != LedgerState::empty)
        return;
    connection.beginWriting();
    if (ledgerState(connection, path_) == LedgerState::empty) { // nobody was quicker
        makeSchema(connection);
        const auto place = placeOf(path_);
        connection.prepare("INSERT INTO station (id, own, machine, volume, folder) VALUES (?, 1, ?, ?, ?)")
            .run({Blob{randomId()}, place.machine, place.volume, place.folder});
    }
    connection.commit();
}

void SqliteEngine::settleToRead(Connection& connection)
{
    connection.execute("PRAGMA query_only = ON");
}

OwnStation SqliteEngine::station(Connection& connection, const std::string& /*folder*/, bool /*writing*/)
{
    auto query = connection.prepare("SELECT key, id, machine, volume, folder FROM station WHERE own = 1");
    query.run();
    if (!query.next())
        throw errorAt(
            path_, "ledger-not-a-database",
            {QS_SAY("core", "this ledger names no station of its own; put back the latest copy"), {}}, 3);
    OwnStation own{query.whole(0), query.bytes(1),
                   placeOf(path_) != PlaceMark{query.text(2), query.text(3), query.text(4)}};
    query.finish();
    return own;
}

void SqliteEngine::claim(Connection& connection, bool asSecondStation)
{
    if (asSecondStation) {
        connection.execute("UPDATE station SET own = 0 WHERE own = 1");
        auto add = connection.prepare(
            "INSERT INTO station (id, own, machine, volume, folder) VALUES (?, 1, '', '', '')");
        add.run({Blob{randomId()}});
        add.finish();
    }
    const auto place = placeOf(path_);
    auto claim = connection.prepare("UPDATE station SET machine = ?, volume = ?, folder = ? WHERE own = 1");
    claim.run({place.machine, place.volume, place.folder});
    claim.finish();
}

void SqliteEngine::readOlderForm(Connection& connection)
{
    quarterstep::readOlderForm(connection);
}

std::string SqliteEngine::bringUp(Connection& connection)
{
    forgetOlderForm(connection);
    return migrateLedger(connection, path_);
}

LineSums SqliteEngine::movedSince(Connection& connection, const std::string& site,
                                  std::int64_t position) const
{
    auto rows = connection.prepare( // + keeps to the order of arrival, where the later rows stand together
        "SELECT line, delta, held, quarantined FROM movement WHERE entry > ? AND +site = ?");
    rows.run({position, site});
    LineSums sums;
    while (rows.next()) {
        auto& sum = sums[rows.text(0)];
        sum.onHand += rows.whole(1);
        sum.held += rows.whole(2);
        sum.quarantined += rows.whole(3);
    }
    return sums;
}

std::string SqliteEngine::identity(Connection& /*connection*/) const
{
    const auto file = identityOf(path_);
    return file ? std::to_string(file->device) + " " + std::to_string(file->inode) : path_;
}

void SqliteEngine::overwriteErased(Connection& connection)
{
    connection.execute("PRAGMA secure_delete = ON");
}

bool SqliteEngine::emptyJournal(Connection& connection)
{
    return connection.wholeOf("PRAGMA wal_checkpoint(TRUNCATE)") == 0;
}

void SqliteEngine::copyTo(Connection& connection, const std::string& target)
{
    copyLedger(connection, target);
}

void SqliteEngine::takeOver(Connection& from)
{
    refuseNetworkPlace(path_);
    cloneToFile(from, path_);
}

void SqliteEngine::leave(Connection& connection)
{
    connection.execute("UPDATE station SET machine = '', volume = '', folder = '' WHERE own = 1");
}

} // namespace quarterstep
