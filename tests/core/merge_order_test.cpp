// SPDX-License-Identifier: GPL-3.0-or-later
// Merging as values: an order without a count below zero, or the entry that stands in the way.
#include "core/record/masking.hpp"
#include "core/record/merge_order.hpp"

#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <random>

namespace utf = boost::unit_test;
using namespace quarterstep;

namespace
{

MergeStep step(const std::string& station, std::int64_t number, std::int64_t atMs, int delta,
               const std::string& cancels = {})
{
    return {station + std::to_string(number), station, number, atMs, "Box", cancels,
            {{"A", delta, "", 0, 0}}};
}

std::string orderOf(const MergeOrder& found, const std::vector<MergeStep>& steps)
{
    std::string ids;
    for (const auto index : found.order)
        ids += steps[index].id + " ";
    return ids;
}

} // namespace

BOOST_AUTO_TEST_SUITE(merge_order)

BOOST_AUTO_TEST_CASE(entries_go_by_time_and_each_station_by_its_numbers, *utf::label("DER"))
{
    const std::vector<MergeStep> steps{step("x", 1, 10, 5), step("x", 2, 30, -1), step("y", 1, 20, -1),
                                       step("y", 2, 5, -1)}; // the clock of y went back
    const auto found = mergeOrder(steps, {}, {});
    BOOST_TEST((found.obstacle == MergeObstacle::none));
    BOOST_TEST(orderOf(found, steps) == "x1 y1 y2 x2 ");
}

BOOST_AUTO_TEST_CASE(an_entry_waits_for_the_pieces_it_takes, *utf::label("DER"))
{
    const std::vector<MergeStep> steps{step("x", 1, 50, 5), step("y", 1, 20, -3)};
    BOOST_TEST(orderOf(mergeOrder(steps, {}, {}), steps) == "x1 y1 ");
}

BOOST_AUTO_TEST_CASE(the_two_entries_that_took_the_same_pieces_are_named, *utf::label("DER"))
{
    const std::vector<MergeStep> steps{step("x", 1, 10, -1), step("y", 1, 20, -1)};
    const auto found = mergeOrder(steps, {{{"Box", "A"}, {1, 0, 0}}}, {});
    BOOST_TEST((found.obstacle == MergeObstacle::belowZero));
    BOOST_TEST(steps[found.step].id == "y1");
    BOOST_TEST(found.other == "x1");
    BOOST_TEST(found.line.second == "A");
    const auto held =
        mergeOrder(std::vector<MergeStep>{step("x", 1, 10, -1)}, {{{"Box", "A"}, {1, 1, 0}}}, {});
    BOOST_TEST((held.obstacle == MergeObstacle::belowZero)); // the only piece is held
}

BOOST_AUTO_TEST_CASE(an_entry_is_taken_back_once_and_only_when_it_is_there, *utf::label("DER"))
{
    const std::vector<MergeStep> steps{step("x", 1, 10, 1, "e"), step("y", 1, 20, 1, "e")};
    BOOST_TEST((mergeOrder(steps, {}, {}).obstacle == MergeObstacle::takesBackUnknown));
    const auto twice = mergeOrder(steps, {}, {"e"});
    BOOST_TEST((twice.obstacle == MergeObstacle::takenBackTwice));
    BOOST_TEST(twice.other == "x1");
    BOOST_TEST((mergeOrder(steps, {}, {"e"}, {{"e", "z"}}).obstacle == MergeObstacle::takenBackTwice));
}

BOOST_AUTO_TEST_CASE(the_order_does_not_depend_on_how_the_steps_came, *utf::label("PROP"))
{
    const unsigned seed = std::random_device{}();
    BOOST_TEST_MESSAGE("seed " << seed);
    std::mt19937 random(seed);
    for (int round = 0; round < 200; ++round) {
        std::vector<std::vector<MergeStep>> stations(3);
        for (std::size_t s = 0; s < stations.size(); ++s)
            for (std::int64_t n = 1; n <= 4; ++n)
                stations[s].push_back(step(std::string(1, static_cast<char>('x' + s)), n,
                                           std::int64_t(random() % 50), static_cast<int>(random() % 5) - 2));
        std::vector<std::string> said;
        std::sort(stations.begin(), stations.end(),
                  [](const auto& a, const auto& b) { return a[0].station < b[0].station; });
        do {
            std::vector<MergeStep> steps;
            for (const auto& station : stations)
                steps.insert(steps.end(), station.begin(), station.end());
            const auto found = mergeOrder(steps, {{{"Box", "A"}, {2, 0, 0}}}, {});
            said.push_back(orderOf(found, steps) +
                           (found.obstacle == MergeObstacle::none ? "" : steps[found.step].id + found.other));
        } while (std::next_permutation(stations.begin(), stations.end(), [](const auto& a, const auto& b) {
            return a[0].station < b[0].station;
        }));
        BOOST_TEST(said.size() == 6U);
        BOOST_TEST(std::equal(said.begin() + 1, said.end(), said.begin()), "seed " << seed);
    }
}

BOOST_AUTO_TEST_CASE(small_counts_are_hidden_and_never_one_alone, *utf::label("DER"))
{
    const auto words = [](const std::vector<CountCell>& cells) {
        std::string text;
        for (const auto& cell : masked(cells))
            text += cell.count ? std::to_string(*cell.count) + " " : "? ";
        return text;
    };
    BOOST_TEST(words({{"a", 5}, {"b", 0}, {"c", 12}}) == "5 0 12 ");
    BOOST_TEST(words({{"a", 4}, {"b", 1}, {"c", 12}}) == "? ? 12 ");
    BOOST_TEST(words({{"a", 4}, {"b", 9}, {"c", 12}, {"d", 0}}) == "? ? 12 0 ");
    BOOST_TEST(words({{"a", 3}}) == "? ");
    BOOST_TEST(words({}) == "");
}

BOOST_AUTO_TEST_SUITE_END()
