// SPDX-License-Identifier: GPL-3.0-or-later
// Opening and writing; reading stands in ledger_reading.cpp, the check of the chain in chain_check.cpp.
#include "inventory/store/ledger.hpp"
#include "inventory/store/ledger_inside.hpp"
#include "inventory/store/migrations.hpp"
#include "inventory/store/payload.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <cstring>
#include <thread>

namespace quarterstep
{

namespace
{

constexpr int busyMs = 2000;

std::int64_t nowMs()
{
    using namespace std::chrono;
    return duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
}

/// An empty file that only its owner reads; SQLite gives its companions the same rights. The file is new, so
/// closing it drops nobody's locks.
void makeEmptyFile(const std::string& path)
{
    const int descriptor = ::open(path.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (descriptor < 0 && errno == EEXIST)
        return; // another program was quicker
    if (descriptor < 0)
        throw errorAt(path, "ledger-unwritable",
                      {QS_SAY("core", "the ledger cannot be made: %1; check the rights of the folder"),
                       {std::strerror(errno)}},
                      4);
    const bool synced = fsync(descriptor) == 0;
    close(descriptor);
    if (!synced || !syncFolder(folderOf(path)))
        throw errorAt(
            path, "ledger-unwritable",
            {QS_SAY("core", "the new ledger could not be made to last: %1"), {std::strerror(errno)}}, 4);
}

/// Switching to WAL needs the file for itself for a moment, and does not wait for it by itself.
void switchToWal(Connection& connection, const std::string& path)
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
            if (error.finding().code != "ledger-locked" || waited >= busyMs)
                throw;
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
}

/// A disk that failed while the entry was being made to last may keep it or not.
Error commitError(const std::string& path, const StoreFailure& failure)
{
    constexpr int inputOutput = 10;
    if ((failure.code & 0xff) != inputOutput)
        return storeError(path, failure);
    return errorAt(
        path, "ledger-failed",
        {QS_SAY("core", "the disk failed while the entry was written (%1); close the camp, open it again "
                        "and look whether the entry is there before you repeat it"),
         {failure.text}},
        4);
}

} // namespace

LedgerStatements::LedgerStatements(Connection& connection)
    : begin(connection.prepare("BEGIN IMMEDIATE")), commit(connection.prepare("COMMIT")),
      rollback(connection.prepare("ROLLBACK")),
      lastOfStation(connection.prepare(
          "SELECT number, hash, id FROM entry WHERE station = ? ORDER BY number DESC LIMIT 1")),
      insertEntry(connection.prepare(
          "INSERT INTO entry (id, station, number, kind, at_ms, person, cancels, payload, hash) "
          "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING position")),
      insertMovement(connection.prepare(
          "INSERT INTO movement (entry, place, site, line, delta, part) VALUES (?, ?, ?, ?, ?, ?)")),
      insertLine(connection.prepare("INSERT INTO balance (site, line) VALUES (?, ?)")),
      countOf(
          connection.prepare("SELECT on_hand - held - quarantined FROM balance WHERE site = ? AND line = ?")),
      snapshot(connection.prepare(
          "SELECT line, on_hand, held, quarantined, (SELECT coalesce(max(position), 0) FROM entry) "
          "FROM balance WHERE site = ? ORDER BY line"))
{
}

LedgerTransaction::LedgerTransaction(Ledger::Inside& ledger) : ledger_(ledger)
{
    ledger_.requireWritable();
    ledger_.statements->begin.run();
    ledger_.statements->begin.finish();
    open_ = true;
}

LedgerTransaction::~LedgerTransaction()
{
    if (!open_)
        return;
    auto& rollback = ledger_.statements->rollback;
    (void)rollback.tryRun(); // a failed COMMIT may have rolled back already
    rollback.finish();
}

void LedgerTransaction::commit()
{
    ledger_.requireSameFile();
    auto& commit = ledger_.statements->commit;
    const bool done = commit.tryRun();
    commit.finish();
    if (!done)
        throw commitError(ledger_.path, commit.failure());
    open_ = false;
}

Ledger::Inside::Inside(std::string path_, Mode mode_) : path(std::move(path_)), mode(mode_) {}

void Ledger::Inside::open()
{
    identity = identityOf(path);
    // A reader opens for writing too, so that the companions of the file are tidied away when it closes; it
    // is kept from writing by query_only. Only where nothing can be written it reads the bare file.
    try {
        connection = std::make_unique<Connection>(path, Connection::Access::readWrite, busyMs);
        if (mode == Mode::readOnly)
            connection->execute("PRAGMA query_only = ON");
        settle();
    } catch (const Error& error) {
        if (mode == Mode::readWrite || error.finding().code != "ledger-unwritable")
            throw;
        statements.reset();
        if (const auto wal = identityOf(path + "-wal"))
            throw errorAt(path, "ledger-unwritable",
                          {QS_SAY("core", "this ledger was not closed and its folder cannot be written to; "
                                          "copy the whole folder to a place that can, and open it there"),
                           {}},
                          4);
        connection = std::make_unique<Connection>(path, Connection::Access::immutable, busyMs);
        settle();
    }
    if (identity != identityOf(path))
        requireSameFile();
}

void Ledger::Inside::settle()
{
    auto state = ledgerState(*connection, path);
    if (mode == Mode::readOnly && state == LedgerState::empty)
        throw errorAt(path, "ledger-missing",
                      {QS_SAY("core", "the ledger is empty; nothing happened yet"), {}}, 3);
    if (mode == Mode::readWrite) {
        switchToWal(*connection, path);
        connection->execute("PRAGMA synchronous = FULL");
        connection->execute("PRAGMA foreign_keys = ON");
        if (connection->wholeOf("PRAGMA synchronous") != 2 || connection->wholeOf("PRAGMA foreign_keys") != 1)
            throw errorAt(path, "ledger-failed",
                          {QS_SAY("core", "the database refuses to write safely; nothing was opened"), {}},
                          4);
        if (state == LedgerState::empty) {
            connection->execute("BEGIN IMMEDIATE");
            if (ledgerState(*connection, path) == LedgerState::empty) { // nobody was quicker
                makeSchema(*connection);
                const auto place = placeOf(path);
                connection
                    ->prepare("INSERT INTO station (id, own, machine, volume, folder) VALUES (?, 1, ?, ?, ?)")
                    .run({Blob{randomId()}, place.machine, place.volume, place.folder});
            }
            connection->execute("COMMIT");
        }
    }
    statements.emplace(*connection);
    readStation();
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

void Ledger::Inside::requireWritable() const
{
    if (mode == Mode::readOnly)
        throw errorAt(path, "ledger-unwritable",
                      {QS_SAY("core", "this ledger was opened for reading only"), {}}, 4);
    if (moved)
        throw errorAt(path, "ledger-moved",
                      {QS_SAY("core", "this ledger was last written at another place; if it moved here for "
                                      "good, say so first, and do not use the other copy any more"),
                       {}},
                      4);
}

void Ledger::Inside::requireSameFile() const
{
    if (identity && identityOf(path) == identity)
        return;
    throw errorAt(
        path, "ledger-replaced",
        {QS_SAY("core", "the ledger file was moved, removed or replaced while it was open; nothing was "
                        "written; close the camp and open it again"),
         {}},
        4);
}

Error Ledger::Inside::shortOf(const std::string& site, const Movement& movement)
{
    statements->countOf.run({site, movement.line});
    const auto left = statements->countOf.next() ? statements->countOf.whole(0) : 0;
    statements->countOf.finish();
    return errorAt(path, "stock-short",
                   {QS_SAY("core", "line %1 has %2 left, %3 asked for; nothing was written"),
                    {movement.line, std::to_string(left), std::to_string(-movement.delta)}},
                   1);
}

void Ledger::Inside::move(const std::string& site, const Entry& entry, std::int64_t position)
{
    auto& insert = statements->insertMovement;
    std::int64_t place = 0;
    for (const auto& movement : entry.movements) {
        const bool done = insert.tryRun(
            {position, ++place, site, movement.line, std::int64_t{movement.delta}, movement.part});
        insert.finish();
        if (done)
            continue;
        if (insert.failure().code == store_code::check)
            throw shortOf(site, movement);
        if (insert.failure().code == store_code::foreignKey)
            throw errorAt(path, "unknown-line",
                          {QS_SAY("core", "line %1 is not in the ledger of %2; nothing was written"),
                           {movement.line, site}},
                          3);
        throw storeError(path, insert.failure());
    }
}

void Ledger::Inside::prepareCancel(Entry& entry)
{
    auto query =
        connection->prepare("SELECT payload, (SELECT count(*) FROM entry AS later WHERE later.cancels = "
                            "entry.id) FROM entry WHERE id = ?");
    query.run({Blob{idBytes(entry.cancels)}});
    const auto cancelled = query.next() ? readPayload(query.text(0)) : std::nullopt;
    const bool again = cancelled && query.whole(1) > 0;
    query.finish();
    if (!cancelled)
        throw errorAt(path, "entry-gone",
                      {QS_SAY("core", "there is no entry %1 to take back"), {entry.cancels}}, 3);
    if (again)
        throw errorAt(path, "entry-gone",
                      {QS_SAY("core", "entry %1 was taken back already"), {entry.cancels}}, 3);
    if (cancelled->entry.kind == EntryKind::enteredInError)
        throw errorAt(
            path, "entry-gone",
            {QS_SAY("core", "entry %1 takes back another one and cannot be taken back itself; enter "
                            "what happened anew"),
             {entry.cancels}},
            3);
    if (!entry.movements.empty())
        return;
    for (auto movement : cancelled->entry.movements) {
        movement.delta = -movement.delta;
        entry.movements.push_back(movement);
    }
}

void Ledger::Inside::write(const std::string& site, Entry& entry)
{
    if (!entry.cancels.empty())
        prepareCancel(entry);
    auto& last = statements->lastOfStation;
    last.run({stationKey});
    std::string before = chainStart();
    entry.number = 1;
    if (last.next()) {
        entry.number = last.whole(0) + 1;
        before = last.bytes(1);
        ids.startAfter(last.bytes(2));
    }
    last.finish();
    if (entry.atMs == 0)
        entry.atMs = nowMs();
    const auto id = ids.next(nowMs());
    entry.id = idText(id);
    const auto payload = payloadOf({entry, site, idText(stationId)});
    const StoreValue cancels =
        entry.cancels.empty() ? StoreValue{} : StoreValue{Blob{idBytes(entry.cancels)}};
    auto& insert = statements->insertEntry;
    insert.run({Blob{id}, stationKey, entry.number, std::string(wordOf(entry.kind)), entry.atMs, entry.person,
                cancels, payload, Blob{chainHash(before, payload)}});
    const auto position = insert.next() ? insert.whole(0) : 0;
    insert.finish();
    move(site, entry, position);
}

Ledger::Ledger(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Ledger::Ledger(Ledger&&) noexcept = default;
Ledger& Ledger::operator=(Ledger&&) noexcept = default;
Ledger::~Ledger() = default;

Ledger Ledger::open(const std::string& path, Mode mode)
{
    refuseNetworkPlace(path);
    struct stat status {
    };
    if (stat(path.c_str(), &status) != 0) {
        if (mode == Mode::readOnly)
            throw errorAt(path, "ledger-missing", {QS_SAY("core", "there is no ledger here yet"), {}}, 3);
        makeEmptyFile(path);
    } else if (!S_ISREG(status.st_mode)) {
        throw errorAt(
            path, "ledger-not-a-database",
            {QS_SAY("core", "this is not a file; name another one in the key ledger of stock.yaml"), {}}, 3);
    }
    auto inside = std::make_unique<Inside>(path, mode);
    inside->open();
    return Ledger(std::move(inside));
}

bool Ledger::moved() const
{
    return inside_->moved;
}

bool Ledger::writable() const
{
    return inside_->mode == Mode::readWrite && !inside_->moved;
}

const std::string& Ledger::path() const
{
    return inside_->path;
}

std::string Ledger::station() const
{
    return idText(inside_->stationId);
}

void Ledger::claimPlace()
{
    const bool was = std::exchange(inside_->moved, false);
    try {
        LedgerTransaction transaction(*inside_);
        const auto place = placeOf(inside_->path);
        auto claim = inside_->connection->prepare(
            "UPDATE station SET machine = ?, volume = ?, folder = ? WHERE own = 1");
        claim.run({place.machine, place.volume, place.folder});
        claim.finish();
        transaction.commit();
    } catch (...) {
        inside_->moved = was;
        throw;
    }
}

Entry Ledger::post(const std::string& site, Entry entry)
{
    LedgerTransaction transaction(*inside_);
    inside_->write(site, entry);
    transaction.commit();
    return entry;
}

void Ledger::introduce(const std::string& site, const std::vector<Balance>& counts)
{
    LedgerTransaction transaction(*inside_);
    Entry opened;
    opened.kind = EntryKind::opened;
    for (const auto& count : counts) {
        inside_->statements->countOf.run({site, count.line});
        const bool known = inside_->statements->countOf.next();
        inside_->statements->countOf.finish();
        if (known)
            continue;
        inside_->statements->insertLine.run({site, count.line});
        inside_->statements->insertLine.finish();
        opened.movements.push_back({count.line, count.onHand, {}});
    }
    if (opened.movements.empty())
        return;
    inside_->write(site, opened);
    transaction.commit();
}

void Ledger::putPerson(const LedgerPerson& person)
{
    LedgerTransaction transaction(*inside_);
    auto put = inside_->connection->prepare("INSERT INTO person (code, name) VALUES (?, ?) "
                                            "ON CONFLICT (code) DO UPDATE SET name = excluded.name");
    put.run({person.code, person.name});
    put.finish();
    transaction.commit();
}

bool Ledger::forgetPerson(const std::string& code)
{
    LedgerTransaction transaction(*inside_);
    auto erase = inside_->connection->prepare("DELETE FROM person WHERE code = ? RETURNING code");
    erase.run({code});
    const bool was = erase.next();
    erase.finish();
    transaction.commit();
    return was;
}

} // namespace quarterstep
