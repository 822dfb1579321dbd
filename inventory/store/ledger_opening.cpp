// SPDX-License-Identifier: GPL-3.0-or-later
// Opening a ledger: made where that is done in passing, recognised, set to write safely, its place compared.
// And opening it again when the connection to a server was lost.
#include "inventory/store/ledger_inside.hpp"

#include <thread>

namespace quarterstep
{

namespace
{

constexpr int busyMs = 2000;

/// In one snapshot, since another program may be making the schema at this moment.
LedgerState stateOf(Connection& connection)
{
    connection.beginReading();
    try {
        const auto state = connection.engine().state(connection);
        connection.commit();
        return state;
    } catch (...) {
        connection.rollback();
        throw;
    }
}

} // namespace

Ledger::Inside::Inside(std::string location_, Mode mode_, std::string folder_)
    : location(std::move(location_)), folder(std::move(folder_)), mode(mode_)
{
}

Connection& Ledger::Inside::live()
{
    if (!connection || !statements)
        open();
    return *connection;
}

void Ledger::Inside::connect(Connection::Access access)
{
    inserts.reset();
    statements.reset();
    connection.reset();
    connection = std::make_unique<Connection>(location, access, busyMs);
    path = connection->name();
    settle();
    connection->engine().requireSame();
}

void Ledger::Inside::open()
{
    // A reader opens for writing too, so that the companions of the file are tidied away when it closes; it
    // is kept from writing. Only where nothing can be written it reads the bare file.
    try {
        connect(Connection::Access::readWrite);
    } catch (const Error& error) {
        if (mode == Mode::readWrite || error.finding().code != "ledger-unwritable" || !connection)
            throw;
        connection->engine().allowBareReading();
        connect(Connection::Access::immutable);
    }
}

void Ledger::Inside::settle()
{
    const auto state = stateOf(*connection);
    if (mode == Mode::readOnly && state == LedgerState::empty)
        throw errorAt(path, "ledger-missing",
                      {QS_SAY("core", "the ledger is empty; nothing happened yet"), {}}, 3);
    older = state == LedgerState::older;
    if (mode == Mode::readWrite)
        connection->engine().settleToWrite(*connection, state);
    readStation();
    if (older && mode == Mode::readWrite && !moved)
        bringUp();
    if (older)
        connection->engine().readOlderForm(*connection);
    if (mode == Mode::readOnly)
        connection->engine().settleToRead(*connection);
    statements.emplace(*connection);
    if (mode == Mode::readWrite && !older)
        inserts.emplace(*connection);
}

void Ledger::Inside::reopen()
{
    using namespace std::chrono;
    constexpr auto patience = seconds(8); // a server that restarts is back within that
    const auto begin = steady_clock::now();
    for (auto pause = milliseconds(50);; pause = std::min(2 * pause, milliseconds(1000))) {
        try {
            return open();
        } catch (const StoreError& error) {
            const bool away = error.kind() == FailureKind::unreachable || error.kind() == FailureKind::lost;
            if (!away || steady_clock::now() - begin + pause > patience)
                throw;
        }
        std::this_thread::sleep_for(pause);
    }
}

Ledger Ledger::open(const std::string& location, Mode mode, const std::string& folder)
{
    StoreEngine::of(location)->makeReady(mode);
    auto inside = std::make_unique<Inside>(location, mode, folder);
    inside->open();
    return Ledger(std::move(inside));
}

} // namespace quarterstep
