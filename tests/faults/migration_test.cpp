// SPDX-License-Identifier: GPL-3.0-or-later
// A program killed while it brings an older ledger up: the ledger is old or new, and the copy is whole when
// it is new.
#include "inventory/store/ledger.hpp"
#include "tests/faults/harness.hpp"
#include "tests/inventory/form_one.hpp"

#include <iostream>
#include <random>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

std::int64_t formOf(const std::string& path)
{
    return Connection(path, Connection::Access::readWrite, 200).wholeOf("PRAGMA user_version");
}

/// Runs the driver on a kept ledger of form 1 until its n-th call; false when it was not killed any more.
bool killedAt(int at, int& stillOld)
{
    FastFolder folder;
    writeBytes(folder.path() + "/stock.yaml", formOneStock);
    const auto path = formOne(folder.path());
    DriverOrder order;
    order.folder = folder.path();
    order.fault = "kill:" + std::to_string(at);
    const auto run = runDriver(order);
    BOOST_TEST((run.killed || run.exitCode == 0), order.fault << ": exit " << run.exitCode);
    const auto form = formOf(path);
    BOOST_TEST((form == 1 || form == 3), order.fault);
    BOOST_TEST((form == 3 || run.acked.empty()), order.fault);
    stillOld += form == 1 ? 1 : 0;
    if (form == 3) { // the copy was there first, and is whole
        const auto copy = Ledger::open(path + ".form-1", Ledger::Mode::readOnly);
        BOOST_TEST(copy.checkChain().ok, order.fault);
        BOOST_TEST(copy.checkChain().entries == formOneEntries, order.fault);
    }
    auto ledger = Ledger::open(path, Ledger::Mode::readWrite); // heals what the kill left
    const auto chain = ledger.checkChain();
    BOOST_TEST(chain.ok, order.fault << ": " << chain.what);
    BOOST_TEST(chain.entries >= formOneEntries, order.fault);
    for (const auto& id : run.acked)
        BOOST_TEST(ledger.entry(id).has_value(), order.fault);
    return run.killed;
}

} // namespace

BOOST_AUTO_TEST_SUITE(migration)

BOOST_AUTO_TEST_CASE(killed_while_a_ledger_is_brought_up_it_is_old_or_new, *utf::label("PROP"))
{
    const int step = longRun() ? 1 : 5;
    int at = 1 + static_cast<int>(std::random_device{}() % static_cast<unsigned>(step));
    int runs = 0;
    int stillOld = 0;
    for (; at < 2000 && killedAt(at, stillOld); at += step)
        ++runs;
    std::cout << "migration: killed at " << runs << " calls, old form kept " << stillOld << " times\n";
    BOOST_TEST(runs > 10);
    BOOST_TEST(stillOld > 0);
    BOOST_TEST(stillOld < runs);
}

BOOST_AUTO_TEST_SUITE_END()
