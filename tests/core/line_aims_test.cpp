// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan aims at in unusual cases: whose sight is worst, costs so fine that they do not fit, a plan
// begun from the prices of the one before.
#include "core/planning/flow.hpp"
#include "tests/core/planning_lines.hpp"

#include <boost/test/unit_test.hpp>

namespace utf = boost::unit_test;

namespace quarterstep::check
{

BOOST_AUTO_TEST_SUITE(line_aims)

BOOST_AUTO_TEST_CASE(whoever_sees_worst_without_a_pair_gets_the_last_one_when_that_is_asked_for,
                     *utf::label("DER"))
{
    DrawnLine line;
    line.available = {1};
    for (const double bareLoss : {0.30, 0.90}) {
        Waiting person;
        person.bareLoss = bareLoss;
        Choice choice;
        choice.loss = bareLoss > 0.5 ? 500 : 100; // and the pair serves this one less well
        person.choices.push_back(choice);
        line.people.push_back(person);
    }
    const auto usual = planLine(line.people, line.available, {});
    BOOST_TEST(usual.served == 1);
    BOOST_TEST(usual.choiceOf[0] == 0);
    PlanOptions options;
    options.priorities = {Priority::worstSight};
    const auto worst = planLine(line.people, line.available, options);
    BOOST_TEST(worst.served == 1);
    BOOST_TEST(worst.choiceOf[1] == 0);
}

BOOST_AUTO_TEST_CASE(costs_that_do_not_fit_are_made_coarser_and_who_is_served_is_not, *utf::label("PROP"))
{
    Transport transport;
    transport.people = 2;
    transport.capacity = {1, 1};
    transport.edges = {{0, 0}, {0, 1}, {1, 0}, {1, 1}};
    constexpr std::int64_t dear = 4'000'000'000;
    constexpr std::int64_t cheap = 1'000'000'000;
    transport.levels = {
        {{1, 1}, {}}, {{0, 0}, {dear, cheap, cheap, dear}}, {{0, 0}, {cheap, dear, dear, cheap}}};
    // Both aims add up to 8e9 at most, so one unit weighs 1.6e10 of the next. Made c times coarser, (1.6e10 /
    // c)² times two for the heaviest person and twelve nodes must stay below 4e18: from c = 39, and c is a
    // power of two.
    const auto costs = packCosts(transport);
    BOOST_TEST(costs.coarserBy == 64);
    auto plan = solveTransport(transport);
    BOOST_TEST(plan.coarserBy == costs.coarserBy);
    BOOST_TEST(plan.edgeOf == (std::vector<std::int32_t>{1, 2}), boost::test_tools::per_element());
    transport.capacity = {1, 0}; // one piece: one of the two is served, whatever it costs
    plan = solveTransport(transport);
    BOOST_TEST(((plan.edgeOf[0] == nothingGiven) != (plan.edgeOf[1] == nothingGiven)));
    transport.levels.pop_back();
    BOOST_TEST(packCosts(transport).coarserBy == 1);
}

BOOST_AUTO_TEST_CASE(a_plan_begun_from_the_prices_before_is_as_good_within_what_both_prove,
                     *utf::label("PROP") * utf::description("seeds 1 to 3"))
{
    for (const std::uint32_t seed : {1U, 2U, 3U})
        BOOST_TEST_CONTEXT("seed " << seed)
        {
            auto line = drawLine(seed, {120, 20, 16, 6, 2.0, 60});
            std::size_t ways = 0;
            for (const auto& person : line.people)
                ways += person.choices.size();
            BOOST_TEST(ways > 2500U); // fewer are searched whole, whatever the prices
            PlanOptions options;
            options.pricesBefore = planLine(line.people, line.available, {}).prices;
            BOOST_TEST(options.pricesBefore.size() == line.available.size());
            line.people.erase(line.people.begin(), line.people.begin() + 6);
            const auto fresh = planLine(line.people, line.available, {});
            const auto again = planLine(line.people, line.available, options);
            BOOST_TEST(canBeDone(line, again));
            BOOST_TEST(again.proof.gap() <= 0.02);
            BOOST_TEST(again.served <= fresh.proof.bound);
            BOOST_TEST(fresh.served <= again.proof.bound);
        }
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep::check
