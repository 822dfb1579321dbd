// SPDX-License-Identifier: GPL-3.0-or-later
// Kills, failing calls and full disks: whatever was acknowledged is there, and the file is old or new.
#include "inventory/text/stock_file.hpp"
#include "tests/faults/harness.hpp"
#include "tests/inventory/folder.hpp"

#include <sys/mount.h>

#include <algorithm>
#include <filesystem>
#include <iostream>
#include <random>
#include <regex>
#include <thread>

namespace utf = boost::unit_test;
using namespace quarterstep::test;

namespace
{

DriverOrder orderIn(const std::string& folder, int handOvers)
{
    writeBytes(folder + "/stock.yaml", driverStock);
    DriverOrder order;
    order.folder = folder;
    order.handOvers = handOvers;
    return order;
}

/// One driver in a fresh folder whose n-th call goes wrong.
DriverRun runWithFault(const std::string& kind, int at)
{
    FastFolder folder;
    auto order = orderIn(folder.path(), 2);
    order.fault = kind + ":" + std::to_string(at);
    const auto run = runDriver(order);
    std::error_code ignored; // a folder that was taken away is put back
    if (!std::filesystem::exists(folder.path()))
        std::filesystem::rename(folder.path() + ".gone", folder.path(), ignored);
    // Exit 1 would be a sanitizer's report, 127 a driver that did not start.
    BOOST_TEST((run.killed || run.exitCode == 0 || run.exitCode == 3 || run.exitCode == 4),
               order.fault << ": exit " << run.exitCode);
    const bool fileMayBeBehind = kind != "kill" && kind != "tear"; // a finding then, not an error
    const auto violation = violationIn(folder.path(), run, fileMayBeBehind);
    BOOST_TEST(violation.empty(), order.fault << ": " << violation);
    return run;
}

/// Kills at one call after the other, every fourth in a short run; returns how many calls there are.
int killAtEachCall(const std::string& kind)
{
    const int step = longRun() ? 1 : 4;
    int at = 1 + static_cast<int>(std::random_device{}() % static_cast<unsigned>(step));
    std::cout << kind << ": from call " << at << ", each " << step << "\n";
    while (at < 2000 && runWithFault(kind, at).killed)
        at += step;
    return at;
}

} // namespace

BOOST_AUTO_TEST_SUITE(kills)

BOOST_AUTO_TEST_CASE(killed_before_any_call_the_folder_is_old_or_new, *utf::label("PROP"))
{
    BOOST_TEST(killAtEachCall("kill") > 30);
}

BOOST_AUTO_TEST_CASE(killed_in_the_middle_of_any_write_the_folder_is_old_or_new, *utf::label("PROP"))
{
    BOOST_TEST(killAtEachCall("tear") > 30);
}

BOOST_AUTO_TEST_CASE(any_call_that_fails_is_told_and_loses_nothing, *utf::label("PROP"))
{
    const int step = longRun() ? 1 : 13;
    for (const auto* kind : {"full", "broken", "readonly", "removed"}) {
        int told = 0;
        for (int at = 1 + static_cast<int>(std::random_device{}() % static_cast<unsigned>(step)); at <= 130;
             at += step)
            told += runWithFault(kind, at).exitCode != 0 ? 1 : 0;
        std::cout << kind << ": " << told << " runs ended with an error\n";
        BOOST_TEST(told > 0);
    }
}

BOOST_AUTO_TEST_CASE(a_write_that_takes_half_is_finished_and_a_clock_set_back_changes_no_order,
                     *utf::label("PROP"))
{
    const int step = longRun() ? 1 : 13;
    int runs = 0;
    for (const auto* kind : {"short", "clock"})
        for (int at = 1 + static_cast<int>(std::random_device{}() % static_cast<unsigned>(step)); at <= 130;
             at += step, ++runs) {
            const auto run = runWithFault(kind, at);
            BOOST_TEST(run.exitCode == 0, kind << ":" << at);
            BOOST_TEST(run.acked.size() == 2U, kind << ":" << at);
            BOOST_TEST(std::is_sorted(run.acked.begin(), run.acked.end()), kind << ":" << at); // ids rise
        }
    std::cout << "short writes and clock set back: " << runs << " runs\n";
}

BOOST_AUTO_TEST_CASE(killed_at_random_the_same_folder_loses_nothing, *utf::label("PROP"))
{
    const unsigned seed = std::random_device{}();
    std::cout << "random kills, seed " << seed << "\n";
    std::mt19937 random(seed);
    FastFolder folder;
    auto order = orderIn(folder.path(), 10); // so that no line runs out in 150 rounds
    DriverRun all;
    const int rounds = longRun() ? 150 : 8;
    for (int round = 0; round < rounds; ++round) {
        order.killAfterAcks = static_cast<int>(random() % 8);
        order.killAfterMicros = static_cast<int>(random() % 4000);
        const auto run = runDriver(order);
        BOOST_TEST((run.killed || run.exitCode == 0));
        all.acked.insert(all.acked.end(), run.acked.begin(), run.acked.end());
        all.position = run.acked.empty() ? all.position : run.position;
        const auto violation = violationIn(folder.path(), all, false);
        BOOST_TEST(violation.empty(), "round " << round << ": " << violation);
    }
    BOOST_TEST(!all.acked.empty());
}

BOOST_AUTO_TEST_CASE(two_programs_at_once_lose_nothing_when_one_is_killed, *utf::label("PROP"))
{
    FastFolder folder;
    auto killed = orderIn(folder.path(), 60);
    auto other = killed;
    killed.killAfterAcks = 10;
    DriverRun first;
    std::thread beside([&] { first = runDriver(killed); });
    const auto second = runDriver(other);
    beside.join();
    BOOST_TEST(second.exitCode == 0);
    BOOST_TEST(second.acked.size() == 60U);
    auto both = first;
    both.acked.insert(both.acked.end(), second.acked.begin(), second.acked.end());
    both.position = std::max(first.position, second.position);
    const auto violation = violationIn(folder.path(), both, true);
    BOOST_TEST(violation.empty(), violation);
}

BOOST_AUTO_TEST_CASE(six_programs_on_the_last_pieces_hand_over_exactly_those, *utf::label("PROP"))
{
    FastFolder folder;
    const auto order = orderIn(folder.path(), 12);
    const auto path = folder.path() + "/stock.yaml";
    writeBytes(path, std::regex_replace(driverStock, std::regex("on hand: 1000"), "on hand: 10"));
    std::vector<DriverRun> runs(6);
    std::vector<std::thread> programs;
    for (auto& run : runs)
        programs.emplace_back([&] { run = runDriver(order); });
    for (auto& program : programs)
        program.join();
    std::size_t acked = 0;
    for (const auto& run : runs) {
        BOOST_TEST((run.exitCode == 0 || run.exitCode == 1)); // 1: its line ran out
        acked += run.acked.size();
    }
    const auto lines = quarterstep::readStockFile(path).value.lines;
    BOOST_REQUIRE(lines.size() == 2U);
    BOOST_TEST(lines[0].onHand == 0);
    BOOST_TEST(static_cast<int>(acked) == 20 - lines[0].onHand - lines[1].onHand);
}

BOOST_AUTO_TEST_CASE(on_a_full_disk_the_hand_over_is_refused_and_the_rest_stands, *utf::label("PROP"))
{
    FastFolder folder;
    if (mount("none", folder.path().c_str(), "tmpfs", 0, "size=400k") != 0) {
        std::cerr << "SKIPPED: a full disk needs the right to mount\n";
        return;
    }
    const auto run = runDriver(orderIn(folder.path(), 1900));
    BOOST_TEST(run.exitCode == 4);
    BOOST_TEST(!run.acked.empty());
    BOOST_TEST(mount("none", folder.path().c_str(), "tmpfs", MS_REMOUNT, "size=8m") == 0); // room was made
    const auto violation = violationIn(folder.path(), run, true);
    BOOST_TEST(violation.empty(), violation);
    BOOST_TEST(umount(folder.path().c_str()) == 0);
}

BOOST_AUTO_TEST_SUITE_END()
