// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/camp_simulation.hpp"
#include "core/planning/demand.hpp"
#include "core/planning/packing.hpp"
#include "tests/core/check_values.hpp"
#include "tests/core/planning_lines.hpp"

#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

namespace utf = boost::unit_test;
namespace data = boost::unit_test::data;

namespace quarterstep::check
{
namespace
{

std::vector<Row> rowsOfFunction(const std::string& beginning)
{
    std::vector<Row> rows;
    for (auto& row : rowsOf("planning.csv"))
        if (row.function.rfind(beginning, 0) == 0)
            rows.push_back(row);
    return rows;
}

double number(const std::string& text)
{
    return std::stod(text);
}

/// Of the standard normal, by halving.
double normalQuantile(double chance)
{
    double low = -8.0;
    double high = 8.0;
    for (int i = 0; i < 80; ++i) {
        const double middle = (low + high) / 2.0;
        (0.5 * std::erfc(-middle / std::sqrt(2.0)) < chance ? low : high) = middle;
    }
    return low;
}

/// A supplier of single pieces over a drawn line of people; every need comes in every scenario in another
/// draw.
PackingProblem drawnProblem(std::uint32_t seed, int people, int lines, long budget)
{
    const auto line = drawLine(seed, {people, lines, 0, 0, 0.0, 60});
    PackingProblem problem;
    problem.needs = line.people;
    problem.onHand.assign(static_cast<std::size_t>(lines), 0);
    problem.limits.budget = budget;
    for (int i = 0; i < lines; ++i)
        problem.offers.push_back({"L" + std::to_string(i),
                                  {{static_cast<std::uint32_t>(i), 1 + i % 3}},
                                  1000 * (1 + i % 3) + 100 * (i % 5),
                                  20,
                                  100000});
    return problem;
}

std::vector<Scenario> drawnScenarios(const PackingProblem& problem, std::uint64_t seed, int count, int people)
{
    std::vector<Scenario> scenarios;
    for (int s = 0; s < count; ++s) {
        Draw draw(seed, static_cast<std::uint64_t>(s));
        Scenario scenario;
        for (int i = 0; i < people; ++i)
            scenario.push_back(static_cast<std::uint32_t>(draw.below(problem.needs.size())));
        scenarios.push_back(std::move(scenario));
    }
    return scenarios;
}

/// Sets as lines that serve whoever is in them, one pack of each.
PackingProblem coverageProblem(const std::string& sets, int chosen)
{
    PackingProblem problem;
    std::map<int, Waiting> elements;
    std::uint32_t resource = 0;
    for (const auto& set : split(sets, '/')) {
        int size = 0;
        for (const auto& element : split(set, ' ')) {
            Choice choice;
            choice.resources[0] = resource;
            elements[std::stoi(element)].choices.push_back(choice);
            ++size;
        }
        problem.offers.push_back({set, {{resource, size}}, 1, 0, 1});
        problem.onHand.push_back(0);
        ++resource;
    }
    for (auto& [element, need] : elements)
        problem.needs.push_back(std::move(need));
    problem.limits.budget = chosen;
    return problem;
}

/// The best share by trying every set of packs within the budget.
double triedPacks(const PackingProblem& problem, const std::vector<Scenario>& scenarios, std::size_t offer,
                  std::vector<int>& packs)
{
    if (offer == problem.offers.size())
        return serviceOf(problem, scenarios, piecesWith(problem, packs)).served;
    double best = 0.0;
    for (packs[offer] = 0; isWithin(spendingOf(problem, packs), problem.limits); ++packs[offer])
        best = std::max(best, triedPacks(problem, scenarios, offer + 1, packs));
    packs[offer] = 0;
    return best;
}

} // namespace

BOOST_AUTO_TEST_SUITE(packing)

BOOST_DATA_TEST_CASE(newsvendor_rows, data::make(rowsOfFunction("newsvendor")), row)
{
    const auto expected = row.named();
    const double ratio =
        criticalRatio(number(row.arguments[0]), number(row.arguments[1]), number(row.arguments[2]));
    BOOST_TEST(std::abs(ratio - number(expected.at("CR"))) < 5e-5);
    if (row.function == "newsvendor normal") {
        const double quantity = number(row.arguments[3]) + number(row.arguments[4]) * normalQuantile(ratio);
        BOOST_TEST(std::abs(quantity - number(expected.at("Q"))) < row.within());
        return;
    }
    std::vector<std::pair<int, double>> chances;
    for (std::size_t i = 3; i < row.arguments.size(); ++i) {
        const auto parts = split(row.arguments[i], ' ');
        chances.emplace_back(std::stoi(parts[0]), number(parts[1]) / 100.0);
    }
    BOOST_TEST(newsvendorQuantity(chances, ratio) == std::stoi(expected.at("Q")));
}

BOOST_DATA_TEST_CASE(coverage_rows_reach_the_optimum_where_greedy_stops_short,
                     data::make(rowsOfFunction("coverage")), row)
{
    const auto problem = coverageProblem(row.arguments.at(1), std::stoi(row.arguments.at(0)));
    Scenario all(problem.needs.size());
    std::iota(all.begin(), all.end(), 0U);
    const auto plan = planPacking(problem, {all}, {});
    const auto expected = row.named();
    const auto people = static_cast<double>(all.size());
    BOOST_TEST(std::lround(plan.share * people) == std::stol(expected.at("nopt")));
    BOOST_TEST(plan.bound * people >= number(expected.at("nopt")) - 1e-6);
    BOOST_TEST(std::lround(plan.greedyShare * people) >= std::stol(expected.at("ngreedy")));
}

BOOST_AUTO_TEST_CASE(small_orders_are_nearly_never_beaten_by_trying_everything,
                     *utf::label("PROP") * utf::description("30 problems, seeds 1 to 30"))
{
    int equal = 0;
    for (std::uint32_t seed = 1; seed <= 30; ++seed) {
        const auto problem = drawnProblem(seed, 30, 5, 9000);
        const auto scenarios = drawnScenarios(problem, seed, 4, 10);
        const auto plan = planPacking(problem, scenarios, {});
        std::vector<int> packs(problem.offers.size(), 0);
        const double best = triedPacks(problem, scenarios, 0, packs);
        BOOST_TEST_CONTEXT("seed " << seed)
        {
            BOOST_TEST(isWithin(spendingOf(problem, plan.packs), problem.limits));
            BOOST_TEST(plan.share <= best + 1e-9);
            BOOST_TEST(plan.bound >= best - 1e-9);
            BOOST_TEST(plan.share == serviceOf(problem, scenarios, piecesWith(problem, plan.packs)).served,
                       boost::test_tools::tolerance(1e-9));
            equal += plan.share > best - 1e-9 ? 1 : 0;
        }
    }
    BOOST_TEST(equal >= 27);
}

BOOST_AUTO_TEST_CASE(more_budget_never_serves_fewer_beyond_the_gap_that_is_printed, *utf::label("PROP"))
{
    for (std::uint32_t seed = 1; seed <= 8; ++seed) {
        double before = 0.0;
        double boundBefore = 0.0;
        for (const long budget : {5000L, 10000L, 20000L, 40000L}) {
            const auto problem = drawnProblem(seed, 60, 12, budget);
            const auto plan = planPacking(problem, drawnScenarios(problem, seed, 6, 25), {});
            BOOST_TEST_CONTEXT("seed " << seed << ", budget " << budget)
            {
                BOOST_TEST(plan.share >= before - (plan.bound - plan.share) - 1e-9);
                BOOST_TEST(plan.bound >= boundBefore - 1e-4); // the bound stops within a hundred-thousandth
            }
            before = plan.share;
            boundBefore = plan.bound;
        }
    }
}

BOOST_AUTO_TEST_CASE(more_on_hand_never_serves_fewer, *utf::label("PROP"))
{
    for (std::uint32_t seed = 1; seed <= 20; ++seed) {
        auto problem = drawnProblem(seed, 40, 10, 0);
        const auto scenarios = drawnScenarios(problem, seed, 5, 20);
        std::vector<int> pieces(10, 1);
        const double before = serviceOf(problem, scenarios, pieces).served;
        for (auto& count : pieces) {
            ++count;
            BOOST_TEST(serviceOf(problem, scenarios, pieces).served >= before - 1e-12);
        }
    }
}

namespace
{

/// Pairs, lenses and frames; a lens costs a third of a pair, a frame as much as one.
PackingProblem mixedProblem(std::uint32_t seed, long budget)
{
    const auto line = drawLine(seed, {40, 5, 5, 2, 1.0, 40});
    PackingProblem problem;
    problem.needs = line.people;
    problem.onHand.assign(12, 0);
    problem.limits.budget = budget;
    for (std::uint32_t i = 0; i < 12; ++i)
        problem.offers.push_back(
            {"L" + std::to_string(i), {{i, 1}}, i >= 5 && i < 10 ? 300 : 1000, 20, 100000});
    return problem;
}

} // namespace

BOOST_AUTO_TEST_CASE(with_lenses_in_frames_more_budget_never_serves_fewer_beyond_the_gap, *utf::label("PROP"))
{
    for (std::uint32_t seed = 1; seed <= 8; ++seed) {
        double before = 0.0;
        double boundBefore = 0.0;
        for (const long budget : {4000L, 8000L, 16000L, 32000L}) {
            const auto problem = mixedProblem(seed, budget);
            const auto plan = planPacking(problem, drawnScenarios(problem, seed, 5, 20), {});
            BOOST_TEST_CONTEXT("seed " << seed << ", budget " << budget)
            {
                BOOST_TEST(plan.share >= before - (plan.bound - plan.share) - 1e-9);
                BOOST_TEST(plan.bound >= boundBefore - 1e-4);
                BOOST_TEST(plan.bound >= plan.share - 1e-9);
            }
            before = plan.share;
            boundBefore = plan.bound;
        }
    }
}

BOOST_AUTO_TEST_CASE(more_on_hand_never_lowers_the_bound_and_buying_nothing_is_within_it, *utf::label("PROP"))
{
    for (std::uint32_t seed = 1; seed <= 6; ++seed) {
        auto problem = mixedProblem(seed, 6000);
        const auto scenarios = drawnScenarios(problem, seed, 4, 20);
        const double before = planPacking(problem, scenarios, {}).bound;
        for (auto& pieces : problem.onHand)
            ++pieces;
        const auto more = planPacking(problem, scenarios, {});
        BOOST_TEST(more.bound >= before - 1e-4);
        BOOST_TEST(serviceOf(problem, scenarios, problem.onHand).served <= more.bound + 1e-9);
    }
}

BOOST_AUTO_TEST_CASE(the_order_of_the_people_changes_no_share_beyond_the_gap, *utf::label("PROP"))
{
    for (std::uint32_t seed = 1; seed <= 6; ++seed)
        for (const bool mixed : {false, true}) {
            const auto problem = mixed ? mixedProblem(seed, 9000) : drawnProblem(seed, 40, 8, 9000);
            auto scenarios = drawnScenarios(problem, seed, 4, 20);
            const auto plan = planPacking(problem, scenarios, {});
            const double served = serviceOf(problem, scenarios, piecesWith(problem, plan.packs)).served;
            for (auto& scenario : scenarios)
                std::reverse(scenario.begin(), scenario.end());
            const auto turned = planPacking(problem, scenarios, {});
            BOOST_TEST_CONTEXT("seed " << seed << (mixed ? ", mixed" : ", ready-made"))
            {
                BOOST_TEST(std::abs(turned.bound - plan.bound) < 1e-3);
                BOOST_TEST(turned.share >= plan.share - (plan.bound - plan.share) - 1e-9);
                if (!mixed)
                    BOOST_TEST(
                        std::abs(serviceOf(problem, scenarios, piecesWith(problem, plan.packs)).served -
                                 served) < 1e-12);
            }
        }
}

BOOST_AUTO_TEST_CASE(packing_that_is_stopped_gives_what_it_had_within_the_limits, *utf::label("PROP"))
{
    const auto problem = mixedProblem(3, 16000);
    const auto scenarios = drawnScenarios(problem, 3, 5, 20);
    for (const int asked : {0, 5, 40}) {
        PackingEffort effort;
        int left = asked;
        double last = 0.0;
        effort.goOn = [&](double done) {
            BOOST_TEST(done >= last - 0.31); // the bound and the repairs begin where the buying ended at most
            last = done;
            return left-- > 0;
        };
        const auto plan = planPacking(problem, scenarios, effort);
        BOOST_TEST(left < 0);
        BOOST_TEST(isWithin(spendingOf(problem, plan.packs), problem.limits));
    }
}

BOOST_AUTO_TEST_CASE(weight_and_boxes_are_kept_as_well_as_the_budget, *utf::label("PROP"))
{
    auto problem = drawnProblem(3, 60, 12, 60000);
    problem.limits.weight = 300;
    problem.limits.pieces = 18;
    const auto plan = planPacking(problem, drawnScenarios(problem, 3, 6, 25), {});
    const auto spending = spendingOf(problem, plan.packs);
    BOOST_TEST(spending.weight <= 300);
    BOOST_TEST(spending.pieces <= 18);
    BOOST_TEST(spending.pieces > 0);
    for (const auto& packs : {newsvendorPacks(problem, drawnScenarios(problem, 3, 6, 25)),
                              keepLevelPacks(problem, drawnScenarios(problem, 3, 6, 25))})
        BOOST_TEST(isWithin(spendingOf(problem, packs), problem.limits));
}

BOOST_AUTO_TEST_CASE(a_lens_that_serves_only_with_a_frame_is_bought_with_it, *utf::label("DER"))
{
    PackingProblem problem;
    Waiting need;
    Choice choice;
    choice.parts = 3;
    choice.resources = {0, 1, 2};
    need.choices = {choice};
    problem.needs = {need};
    problem.onHand = {0, 0, 0};
    problem.offers = {
        {"frame", {{0, 1}}, 2000, 0, 10}, {"right", {{1, 2}}, 500, 0, 10}, {"left", {{2, 2}}, 500, 0, 10}};
    problem.limits.budget = 3000;
    const auto plan = planPacking(problem, {{0}}, {});
    BOOST_TEST(plan.share == 1.0);
    BOOST_TEST(plan.packs == (std::vector<int>{1, 1, 1}), boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(the_knee_is_where_a_curve_leaves_its_straight_line_most,
                     *utf::label("DER") *
                         utf::description("by hand: heights above the line 0, 0.35, 0.3, 0.1, 0"))
{
    const std::vector<CurvePoint> curve{
        {0, 0.0, {}}, {1, 0.6, {}}, {2, 0.8, {}}, {3, 0.85, {}}, {4, 1.0, {}}};
    BOOST_TEST(kneeOf(curve) == 1U);
    BOOST_TEST(kneeOf({{0, 0.0, {}}, {1, 1.0, {}}}) == 0U);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(camp_days)

BOOST_AUTO_TEST_CASE(a_day_planned_again_serves_no_fewer_on_average_and_none_twice, *utf::label("PROP"))
{
    const auto line = drawLine(5, {200, 12, 0, 0, 0.0, 60});
    DayQuestion question;
    question.needs = &line.people;
    question.pieces.assign(12, 5);
    question.likely.assign(line.people.size(), 1.0);
    int first = 0;
    int again = 0;
    for (std::uint64_t day = 0; day < 20; ++day) {
        Draw draw(9, day);
        Scenario arrivals;
        for (int i = 0; i < 80; ++i)
            arrivals.push_back(static_cast<std::uint32_t>(draw.below(line.people.size())));
        question.rule = DayRule::firstCome;
        const auto one = simulateDay(question, arrivals, Draw(1, day));
        question.rule = DayRule::replanned;
        const auto other = simulateDay(question, arrivals, Draw(1, day));
        BOOST_TEST(one.served <= 60);
        BOOST_TEST(other.served <= 60);
        first += one.served;
        again += other.served;
    }
    BOOST_TEST(again >= first);
}

BOOST_AUTO_TEST_CASE(a_quantile_lies_between_its_neighbours, *utf::label("DER"))
{
    BOOST_TEST(quantileOf({3.0, 1.0, 2.0}, 0.5) == 2.0);
    BOOST_TEST(quantileOf({0.0, 10.0}, 0.25) == 2.5);
    BOOST_TEST(quantileOf({}, 0.5) == 0.0);
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep::check
