// SPDX-License-Identifier: GPL-3.0-or-later
// Opening a ledger file: made when missing, recognised, set to write safely, its place compared.
#include "inventory/store/ledger_inside.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <thread>

namespace quarterstep
{

namespace
{

constexpr int busyMs = 2000;

Error cannotMake(const std::string& path, int reason)
{
    return errorAt(path, "ledger-unwritable",
                   {QS_SAY("core", "the ledger cannot be made: %1; check the rights of the folder"),
                    {std::strerror(reason)}},
                   4);
}

/// An empty file that only its owner reads; SQLite gives its companions the same rights. It gets its name
/// only after it was closed: closing a file that a connection of this process has open would drop its locks.
void makeEmptyFile(const std::string& path)
{
    const auto unnamed = path + "." + idText(randomId()) + ".new";
    const int descriptor = ::open(unnamed.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (descriptor < 0)
        throw cannotMake(path, errno);
    int failed = fsync(descriptor) == 0 ? 0 : errno;
    close(descriptor);
    if (failed == 0 && renameat2(AT_FDCWD, unnamed.c_str(), AT_FDCWD, path.c_str(), RENAME_NOREPLACE) != 0) {
        failed = errno;
        if (failed == EINVAL || failed == ENOSYS) // a file system that only knows links
            failed = link(unnamed.c_str(), path.c_str()) == 0 ? 0 : errno;
        unlink(unnamed.c_str());
    }
    if (failed == EEXIST)
        return; // another program was quicker
    if (failed == 0 && !syncFolder(folderOf(path)))
        failed = errno;
    if (failed != 0)
        throw cannotMake(path, failed);
}

constexpr auto oldEnough = std::chrono::minutes(1);

/// What a program left behind that was killed between making a ledger and naming it: empty files
/// "ledger.sqlite.<id>.new". One that is young may be another program's, about to be named.
void removeUnnamed(const std::string& path)
{
    namespace fs = std::filesystem;
    const auto begin = fs::path(path).filename().string() + ".";
    const std::string end = ".new";
    const auto length = begin.size() + 36 + end.size();
    std::error_code failed;
    for (const auto& file : fs::directory_iterator(folderOf(path), failed)) {
        const auto name = file.path().filename().string();
        if (name.size() != length || name.compare(0, begin.size(), begin) != 0 ||
            name.compare(length - end.size(), end.size(), end) != 0 ||
            idBytes(name.substr(begin.size(), 36)).empty())
            continue;
        std::error_code gone;
        const bool old = fs::file_time_type::clock::now() - fs::last_write_time(file, gone) > oldEnough;
        if (file.is_regular_file(gone) && file.file_size(gone) == 0 && !gone && old)
            fs::remove(file, gone);
    }
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

/// In one snapshot, since another program may be making the schema at this moment.
LedgerState stateOf(Connection& connection, const std::string& path)
{
    connection.execute("BEGIN");
    const auto state = ledgerState(connection, path);
    connection.execute("COMMIT");
    return state;
}

} // namespace

Ledger::Inside::Inside(std::string path_, Mode mode_) : path(std::move(path_)), mode(mode_) {}

void Ledger::Inside::open()
{
    identity = identityOf(path);
    // A reader opens for writing too, so that the companions of the file are tidied away when it closes; it
    // is kept from writing by query_only. Only where nothing can be written it reads the bare file.
    try {
        connection = std::make_unique<Connection>(path, Connection::Access::readWrite, busyMs);
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

void Ledger::Inside::prepareToWrite(LedgerState state)
{
    switchToWal(*connection, path);
    connection->execute("PRAGMA synchronous = FULL");
    connection->execute("PRAGMA foreign_keys = ON");
    if (connection->wholeOf("PRAGMA synchronous") != 2 || connection->wholeOf("PRAGMA foreign_keys") != 1)
        throw errorAt(path, "ledger-failed",
                      {QS_SAY("core", "the database refuses to write safely; nothing was opened"), {}}, 4);
    if (state != LedgerState::empty)
        return;
    connection->execute("BEGIN IMMEDIATE");
    if (ledgerState(*connection, path) == LedgerState::empty) { // nobody was quicker
        makeSchema(*connection);
        const auto place = placeOf(path);
        connection->prepare("INSERT INTO station (id, own, machine, volume, folder) VALUES (?, 1, ?, ?, ?)")
            .run({Blob{randomId()}, place.machine, place.volume, place.folder});
    }
    connection->execute("COMMIT");
}

void Ledger::Inside::settle()
{
    const auto state = stateOf(*connection, path);
    if (mode == Mode::readOnly && state == LedgerState::empty)
        throw errorAt(path, "ledger-missing",
                      {QS_SAY("core", "the ledger is empty; nothing happened yet"), {}}, 3);
    older = state == LedgerState::older;
    if (state == LedgerState::ready)
        requireSchema(*connection, path);
    if (mode == Mode::readWrite)
        prepareToWrite(state);
    readStation();
    if (older && mode == Mode::readWrite && !moved)
        bringUp();
    if (older)
        readOlderForm(*connection);
    if (mode == Mode::readOnly)
        connection->execute("PRAGMA query_only = ON");
    statements.emplace(*connection);
    if (mode == Mode::readWrite && !older)
        inserts.emplace(*connection);
}

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
    if (mode == Mode::readWrite)
        removeUnnamed(path);
    auto inside = std::make_unique<Inside>(path, mode);
    inside->open();
    return Ledger(std::move(inside));
}

} // namespace quarterstep
