// SPDX-License-Identifier: GPL-3.0-or-later
// What is repeated when another writer is in the way: 40001, 40P01 and 55P03 of a server, busy of a file.
// Each is really provoked; then nothing is lost and everything is there once.
#include "tests/inventory/folder.hpp"
#include "tests/inventory/stores.hpp"

#include <chrono>
#include <thread>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

constexpr auto forWork = Ledger::Mode::readWrite;

Entry setOf(const std::string& person)
{
    Entry entry;
    entry.person = person;
    entry.movements = {{"A", -1, "frame"}, {"B", -1, "right"}, {"B", -1, "left"}};
    entry.texts = {{"reason", "r"}};
    return entry;
}

struct Table {
    TemporaryFolder home;
    std::string path = home / "ledger.sqlite";
    Ledger ledger = openLedger(path, forWork);
    Table() { ledger.introduce("Box", {{"A", 50, 0, 0}, {"B", 50, 0, 0}}); }

    /// So many sets were handed over, each once.
    void require(int sets) const
    {
        BOOST_TEST(ledger.position() == 1 + sets);
        BOOST_TEST(ledger.balances("Box").at(0).onHand == 50 - sets);
        BOOST_TEST(ledger.balances("Box").at(1).onHand == 50 - 2 * sets);
        BOOST_TEST(ledger.entriesAfter(1).size() == static_cast<std::size_t>(sets));
        BOOST_TEST(ledger.checkChain().ok);
    }
};

/// Fails the first `times` transactions of an event with an SQLSTATE; counts them. A sequence is not rolled
/// back.
void failFirst(Connection& keeper, const std::string& event, const std::string& state, int times)
{
    keeper.execute("CREATE SEQUENCE trials");
    keeper.execute("CREATE FUNCTION fails() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER AS $$ BEGIN "
                   "IF nextval('quarterstep.trials') <= " +
                   std::to_string(times) + " THEN RAISE EXCEPTION 'planted' USING ERRCODE = '" + state +
                   "'; END IF; RETURN NULL; END $$");
    keeper.execute(event + " FOR EACH ROW EXECUTE FUNCTION fails()");
}

const std::string atInsert = "CREATE TRIGGER fails AFTER INSERT ON entry";
const std::string atCommit =
    "CREATE CONSTRAINT TRIGGER fails AFTER INSERT ON entry DEFERRABLE INITIALLY DEFERRED";

bool waitsForLock(Connection& watcher)
{
    for (int i = 0; i < 500; ++i) {
        if (watcher.wholeOf(
                "SELECT count(*) FROM pg_stat_activity WHERE wait_event_type = 'Lock' AND usename = "
                "'station' AND datname = current_database()") > 0)
            return true;
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    return false;
}

} // namespace

BOOST_AUTO_TEST_SUITE(conflicts)

BOOST_AUTO_TEST_CASE(a_serialization_failure_is_repeated_wherever_it_comes,
                     *utf::label("PROP") * serverOnly())
{
    for (const auto& event : {atInsert, atCommit})
        for (const std::string state : {"40001", "40P01"}) {
            Table table;
            const auto keeper = rawConnection(table.path);
            failFirst(*keeper, event, state, 3);
            const auto entry = table.ledger.post("Box", setOf("P-1"));
            BOOST_TEST(entry.number == 2);                                     // after the first counts
            BOOST_TEST(keeper->wholeOf("SELECT last_value FROM trials") == 4); // three in vain
            table.require(1);
            table.ledger.post("Box", setOf("P-2"));
            table.require(2);
        }
}

BOOST_AUTO_TEST_CASE(who_loses_for_two_seconds_is_told_and_nothing_is_written,
                     *utf::label("PROP") * serverOnly())
{
    for (const auto& event : {atInsert, atCommit}) {
        Table table;
        const auto keeper = rawConnection(table.path);
        failFirst(*keeper, event, "40001", 1'000'000);
        QS_CHECK_ERROR("ledger-locked", 4, table.ledger.post("Box", setOf("P-1")));
        BOOST_TEST(keeper->wholeOf("SELECT last_value FROM trials") > 10);
        table.require(0);
        keeper->execute("DROP TRIGGER fails ON entry");
        table.ledger.post("Box", setOf("P-1"));
        table.require(1);
    }
}

BOOST_AUTO_TEST_CASE(the_victim_of_a_deadlock_posts_again, *utf::label("PROP") * serverOnly())
{
    Table table;
    const auto watcher = rawConnection(table.path);
    const auto deadlocks = [&] {
        return watcher->wholeOf("SELECT deadlocks FROM pg_stat_database WHERE datname = current_database()");
    };
    const auto before = deadlocks();
    auto other = rawConnection(table.path); // the keeper works on the tables, B first
    other->execute("BEGIN");
    other->execute("SET lock_timeout = 0");
    other->execute("UPDATE balance SET on_hand = on_hand WHERE line = 'B'");
    Entry posted;
    std::thread station([&] { // A is ours, B not to be had
        auto ledger = openLedger(table.path, forWork);
        posted = ledger.post("Box", setOf("P-1"));
    });
    const bool waits = waitsForLock(*watcher);
    other->execute(
        "UPDATE balance SET on_hand = on_hand WHERE line = 'A'"); // the station waited longer and gives way
    other->execute("COMMIT");
    station.join();
    BOOST_TEST(waits);
    BOOST_TEST(posted.number == 2);
    table.require(1);
    for (int i = 0; i < 300 && deadlocks() == before; ++i) // statistics come a little later
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
    BOOST_TEST(deadlocks() == before + 1);
}

BOOST_AUTO_TEST_CASE(a_ledger_that_is_held_at_the_beginning_is_waited_for_and_then_told, *utf::label("PROP"))
{
    Table table;
    const auto other = rawConnection(table.path);
    other->beginWriting();
    std::thread station([&] {
        auto ledger = openLedger(table.path, forWork);
        ledger.post("Box", setOf("P-1"));
    });
    std::this_thread::sleep_for(std::chrono::milliseconds(300));
    other->rollback();
    station.join();
    table.require(1);
    other->beginWriting(); // longer than anybody waits
    QS_CHECK_ERROR("ledger-locked", 4, table.ledger.post("Box", setOf("P-2")));
    other->rollback();
    table.require(1);
    table.ledger.post("Box", setOf("P-2"));
    table.require(2);
}

BOOST_AUTO_TEST_SUITE_END()
