// SPDX-License-Identifier: GPL-3.0-or-later
// A ledger on a PostgreSQL server. One lock of the whole ledger is held from the beginning of a writing
// transaction to its end, as SQLite does with its file: entries arrive in the order of their positions,
// nobody deadlocks, and whoever saw position N has seen everything up to N. Hand-overs of a camp are minutes
// apart; the lock is held for a millisecond.
#include "inventory/store/postgresql_engine.hpp"

#include "inventory/store/clone.hpp"
#include "inventory/store/entry_id.hpp"
#include "inventory/store/migrations.hpp"
#include "inventory/store/place.hpp"
#include "inventory/store/postgresql_link.hpp"

namespace quarterstep
{

namespace
{

/// SQLSTATE -> kind (PostgreSQL 15, appendix A).
struct State {
    const char* beginning;
    FailureKind kind;
};

const State states[] = {{"23514", FailureKind::check},       {"23503", FailureKind::foreignKey},
                        {"40001", FailureKind::conflict},    // serialization failure
                        {"40P01", FailureKind::conflict},    // deadlock
                        {"55P03", FailureKind::busy},        // the lock was not to be had in time
                        {"57P", FailureKind::lost},          // the server goes down, or does not let in yet
                        {"08", FailureKind::lost},           // connection exceptions
                        {"25P03", FailureKind::lost},        // idle in a transaction for too long
                        {"42501", FailureKind::refused},     // not permitted
                        {"28", FailureKind::refused},        // who logs in is not who he says
                        {"25006", FailureKind::refused},     // read-only transaction
                        {"53100", FailureKind::full},        // disk full
                        {"58030", FailureKind::inputOutput}, // input/output error
                        {"XX001", FailureKind::damaged},     // data corrupted
                        {"XX002", FailureKind::damaged}};    // index corrupted

Error noLedger(const std::string& shown)
{
    return errorAt(shown, "ledger-missing",
                   {QS_SAY("core", "there is no ledger in this database yet; the keeper sets it up once with "
                                   "`quarterstep stock --set-up`"),
                    {}},
                   3);
}

} // namespace

std::unique_ptr<StoreLink> PostgresqlEngine::connect(Connection::Access /*access*/, int busyMs,
                                                     StoreFailure& failure)
{
    // A machine that falls asleep within a transaction must not hold the others up; a network that is gone is
    // noticed.
    const std::string session =
        "-c search_path=quarterstep -c synchronous_commit=on -c client_min_messages=error "
        "-c default_transaction_isolation=read\\ committed -c lock_timeout=" +
        std::to_string(busyMs) + " -c idle_in_transaction_session_timeout=10000 -c statement_timeout=0";
    ServerSettings settings = address_.options;
    if (address_.port != 0)
        settings.emplace_back("port", std::to_string(address_.port));
    const std::pair<const char*, std::string> others[] = {
        {"user", address_.login},    {"host", address_.host},       {"dbname", address_.database},
        {"client_encoding", "UTF8"}, {"keepalives_idle", "5"},      {"keepalives_interval", "2"},
        {"keepalives_count", "3"},   {"tcp_user_timeout", "10000"}, {"application_name", "quarterstep"},
        {"options", session}};
    settings.insert(settings.end(), std::begin(others),
                    std::end(others)); // an empty one is as if it were not there
    return openPostgresqlLink(address_.shown, settings, failure);
}

FailureKind PostgresqlEngine::kindOf(const std::string& code) const
{
    if (code.empty())
        return FailureKind::lost; // the client library itself failed
    for (const auto& state : states)
        if (code.rfind(state.beginning, 0) == 0)
            return state.kind;
    return FailureKind::other;
}

const char* PostgresqlEngine::beginWriting() const
{
    return "BEGIN; SELECT pg_advisory_xact_lock(1364413511)"; // one round trip; the number of `form`
}

const char* PostgresqlEngine::beginReading() const
{
    return "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY";
}

void PostgresqlEngine::makeReady(Ledger::Mode /*mode*/) {}

void PostgresqlEngine::allowBareReading() const
{
    throw noLedger(address_.shown); // there are no bare files to read
}

void PostgresqlEngine::requireSame() const {} // a database that goes takes its connections with it

LedgerState PostgresqlEngine::state(Connection& connection)
{
    if (connection.textOf("SELECT to_regclass('quarterstep.form')::text").empty())
        return LedgerState::empty;
    const auto application = connection.wholeOf("SELECT application FROM form");
    const auto version = connection.wholeOf("SELECT version FROM form");
    if (application != ledgerApplicationId || version < ledgerVersion)
        throw errorAt(
            address_.shown, "ledger-not-a-database",
            {QS_SAY("core",
                    "this database holds something else, not a ledger; name another one in the key ledger "
                    "of stock.yaml"),
             {}},
            3);
    if (version > ledgerVersion)
        throw errorAt(address_.shown, "ledger-newer",
                      {QS_SAY("core", "this ledger was made by a newer version (form %1, known here up to "
                                      "%2); update this program"),
                       {std::to_string(version), std::to_string(ledgerVersion)}},
                      3);
    return LedgerState::ready;
}

void PostgresqlEngine::settleToWrite(Connection& connection, LedgerState state)
{
    if (state == LedgerState::empty)
        throw noLedger(address_.shown);
    if (connection.textOf("SHOW fsync") != "on" || connection.textOf("SHOW synchronous_commit") != "on")
        throw errorAt(address_.shown, "ledger-failed",
                      {QS_SAY("core", "the database refuses to write safely; nothing was opened"), {}}, 4);
}

void PostgresqlEngine::settleToRead(Connection& connection)
{
    connection.execute("SET default_transaction_read_only = on");
}

OwnStation PostgresqlEngine::station(Connection& connection, const std::string& folder, bool writing)
{
    const auto place = placeOf((folder.empty() ? std::string(".") : folder) + "/stock.yaml");
    OwnStation own;
    const auto find = [&] {
        auto query =
            connection.prepare("SELECT key, id FROM station WHERE machine = ? AND volume = ? AND folder = ?");
        query.run({place.machine, place.volume, place.folder});
        if (query.next())
            own = {query.whole(0), query.bytes(1), false};
        query.finish();
    };
    find();
    if (own.key != 0 || !writing)
        return own;
    connection.beginWriting();
    try {
        auto add = connection.prepare(
            "INSERT INTO station (id, own, machine, volume, folder) VALUES (?, 0, ?, ?, ?) "
            "ON CONFLICT DO NOTHING"); // another program of this folder may be quicker
        add.run({Blob{randomId()}, place.machine, place.volume, place.folder});
        add.finish();
        connection.commit();
    } catch (...) {
        connection.rollback();
        throw;
    }
    find();
    return own;
}

void PostgresqlEngine::claim(Connection& /*connection*/, bool /*asSecondStation*/) {
} // each place is a station already

void PostgresqlEngine::readOlderForm(Connection& /*connection*/) {} // form 2 was its first

std::string PostgresqlEngine::bringUp(Connection& /*connection*/)
{
    return {};
}

LineSums PostgresqlEngine::movedSince(Connection& connection, const std::string& site,
                                      std::int64_t position) const
{
    auto rows = connection.prepare(
        "SELECT line, sum(delta), sum(held), sum(quarantined) FROM movement WHERE entry > ? "
        "AND site = ? GROUP BY line");
    rows.run({position, site});
    LineSums sums;
    while (rows.next())
        sums[rows.text(0)] = {rows.whole(1), rows.whole(2), rows.whole(3)};
    return sums;
}

std::string PostgresqlEngine::identity(Connection& connection) const
{
    return "shared " + connection.textOf("SELECT encode(id, 'hex') FROM form");
}

void PostgresqlEngine::overwriteErased(Connection& /*connection*/) {} // see emptyJournal

bool PostgresqlEngine::emptyJournal(Connection& connection)
{
    // Rows that went are dropped with the files they stood in. The server's own log keeps them until it goes
    // round.
    for (const char* table : {"remark", "person"})
        connection.execute(std::string("VACUUM FULL ") + table);
    return true;
}

void PostgresqlEngine::copyTo(Connection& connection, const std::string& target)
{
    cloneToFile(connection, target);
}

void PostgresqlEngine::takeOver(Connection& from)
{
    Connection into(address_.location, Connection::Access::readWrite, 2000);
    into.engine().settleToWrite(into, into.engine().state(into));
    cloneLedger(from, into);
}

void PostgresqlEngine::leave(Connection& /*connection*/) {} // other stations may go on

} // namespace quarterstep
