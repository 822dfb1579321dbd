// SPDX-License-Identifier: GPL-3.0-or-later
// Power cuts: every state a disk may be left in, opened with our own code. Two programs that are wrong on
// purpose show that the harness would see it. What a disk that lies about syncing does stays outside.
#include "tests/faults/crash_disk.hpp"
#include "tests/faults/harness.hpp"
#include "tests/inventory/folder.hpp"

#include <iostream>

namespace utf = boost::unit_test;
using namespace quarterstep::test;

namespace
{

struct Outcome {
    int states = 0;
    std::map<std::string, int> violations;

    [[nodiscard]] int all() const
    {
        int sum = 0;
        for (const auto& [what, count] : violations)
            sum += count;
        return sum;
    }
    [[nodiscard]] int of(const std::string& words) const
    {
        int sum = 0;
        for (const auto& [what, count] : violations)
            sum += what.find(words) != std::string::npos ? count : 0;
        return sum;
    }
    void print(const std::string& way) const
    {
        std::cout << "power cut, " << way << ": " << states << " states, " << all() << " violations\n";
        for (const auto& [what, count] : violations)
            std::cout << "  " << count << " x " << what << "\n";
    }
};

std::vector<RecordedCall> recordingOf(const std::string& folder, const std::string& way)
{
    FastFolder logs;
    writeBytes(folder + "/stock.yaml", driverStock);
    DriverOrder order;
    order.folder = folder;
    order.handOvers = 6;
    order.way = way;
    order.log = logs.path() + "/calls";
    for (int round = 0; round < 2; ++round) { // the second time the ledger is there already
        const auto run = runDriver(order);
        BOOST_REQUIRE(run.exitCode == 0);
        BOOST_REQUIRE(run.acked.size() == 6U);
    }
    return readRecording(order.log);
}

/// States after every `step`-th recorded call, `each` of them a call, opened and judged.
Outcome cutEverywhere(const std::string& way, std::size_t step, int each, bool fileMayBeBehind)
{
    FastFolder worked;
    const auto calls = recordingOf(worked.path(), way);
    const unsigned seed = std::random_device{}();
    std::cout << "power cut, " << way << ": " << calls.size() << " calls, seed " << seed << "\n";
    std::mt19937 random(seed);
    CrashDisk disk(worked.path(), {{"stock.yaml", driverStock}});
    Outcome outcome;
    for (std::size_t at = 0; at < calls.size(); ++at) {
        disk.play(calls[at]);
        if (at % step != 0)
            continue;
        DriverRun run;
        readAcks(disk.marks(), run);
        for (int i = 0; i < each; ++i) {
            FastFolder state;
            disk.leave(state.path(), static_cast<CrashDisk::Loss>(random() % 4), random);
            ++outcome.states;
            if (const auto violation = violationIn(state.path(), run, fileMayBeBehind); !violation.empty())
                ++outcome.violations[violation];
        }
    }
    outcome.print(way);
    return outcome;
}

} // namespace

BOOST_AUTO_TEST_SUITE(power_cut)

BOOST_AUTO_TEST_CASE(a_power_cut_loses_no_acknowledged_hand_over_and_tears_no_file, *utf::label("PROP"))
{
    const auto outcome = cutEverywhere("careful", 1, longRun() ? 60 : 1, false);
    BOOST_TEST(outcome.states > 200);
    BOOST_TEST(outcome.all() == 0);
}

BOOST_AUTO_TEST_CASE(the_harness_sees_a_journal_that_is_not_synced, *utf::label("PROP"))
{
    const auto outcome = cutEverywhere("lazy-journal", longRun() ? 1 : 4, longRun() ? 10 : 1, true);
    BOOST_TEST(outcome.of("acknowledged hand-over is lost") > 5);
}

BOOST_AUTO_TEST_CASE(the_harness_sees_a_file_written_in_place, *utf::label("PROP"))
{
    const auto outcome = cutEverywhere("in-place", longRun() ? 1 : 2, longRun() ? 10 : 1, false);
    BOOST_TEST(outcome.of("gone or torn") > 0);
    BOOST_TEST(outcome.of("older than an acknowledged") > 0);
}

BOOST_AUTO_TEST_SUITE_END()
