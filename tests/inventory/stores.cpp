// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/inventory/stores.hpp"

#include "inventory/store/clone.hpp"
#include "inventory/store/entry_id.hpp"
#include "inventory/store/place.hpp"

#include <cstdlib>
#include <iostream>
#include <map>
#include <mutex>

namespace quarterstep::test
{

namespace
{

using boost::test_tools::assertion_result;
namespace decorator = boost::unit_test::decorator;

std::string databaseFor(const std::string& path)
{
    static std::mutex mutex;
    static std::map<std::string, std::string> databases;
    const std::lock_guard lock(mutex);
    auto& database = databases[path];
    if (database.empty()) {
        database = "ledger_" + std::to_string(databases.size());
        server().makeLedger(database);
    }
    return database;
}

} // namespace

bool onServer()
{
    const char* store = std::getenv("QS_STORE");
    return store != nullptr && std::string(store) == "shared";
}

TestServer& server()
{
    static std::string why;
    static const auto running = TestServer::start(why);
    if (!running) {
        std::cerr << "SKIPPED: " << why << "\n";
        std::exit(77);
    }
    return *running;
}

std::string locationOf(const std::string& path, const std::string& login)
{
    return onServer() ? server().address(databaseFor(path), login) : path;
}

Ledger openLedger(const std::string& path, Ledger::Mode mode, const std::string& login)
{
    return Ledger::open(locationOf(path, login), mode, folderOf(path));
}

std::unique_ptr<Connection> rawConnection(const std::string& path)
{
    return std::make_unique<Connection>(locationOf(path, "keeper"), Connection::Access::readWrite, 200);
}

void withoutGuards(Connection& raw)
{
    if (onServer())
        return raw.execute("SET session_replication_role = replica");
    for (const auto* guard :
         {"entry_stays", "entry_remains", "movement_stays", "movement_remains", "remark_stays"})
        raw.execute(std::string("DROP TRIGGER IF EXISTS ") + guard);
}

std::string bytesInSql(const std::string& bytes)
{
    std::string text = onServer() ? "'\\x" : "X'";
    for (const char c : bytes) {
        const auto value = static_cast<unsigned char>(c);
        text += "0123456789abcdef"[value >> 4];
        text += "0123456789abcdef"[value & 15];
    }
    return text + "'";
}

void copyLedgerTo(const Ledger& from, const std::string& fromPath, const std::string& path,
                  bool asSecondStation)
{
    if (!onServer()) {
        from.copyTo(path);
        auto copy = Ledger::open(path, Ledger::Mode::readWrite);
        return asSecondStation ? copy.becomeSecondStation() : copy.claimPlace();
    }
    const auto source = rawConnection(fromPath);
    const auto target = rawConnection(path);
    cloneLedger(*source, *target);
    if (asSecondStation)
        return; // another folder is another station
    const auto place = placeOf(path);
    auto claim = target->prepare("UPDATE station SET machine = ?, volume = ?, folder = ? WHERE id = ?");
    claim.run({place.machine, place.volume, place.folder, Blob{idBytes(from.station())}});
    claim.finish();
}

decorator::precondition filesOnly()
{
    return decorator::precondition(
        [](boost::unit_test::test_unit_id) { return assertion_result(!onServer()); });
}

decorator::precondition serverOnly()
{
    return decorator::precondition(
        [](boost::unit_test::test_unit_id) { return assertion_result(onServer()); });
}

} // namespace quarterstep::test
