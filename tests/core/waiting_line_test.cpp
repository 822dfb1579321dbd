// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/check_values.hpp"
#include "tests/core/planning_lines.hpp"

#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <numeric>

namespace utf = boost::unit_test;
namespace data = boost::unit_test::data;

namespace quarterstep::check
{
namespace
{

constexpr DrawnSize readyMade{6, 4, 0, 0, 0.8, 60};
constexpr DrawnSize mixed{7, 3, 3, 2, 0.8, 12};

int served(const DrawnLine& line, const PlanOptions& options = {})
{
    return planLine(line.people, line.available, options).served;
}

/// The matrix of a textbook assignment as a line: each task one piece, its cost the loss.
DrawnLine textbookLine(const std::vector<std::vector<int>>& costs)
{
    DrawnLine line;
    line.available.assign(costs.front().size(), 1);
    for (const auto& row : costs) {
        Waiting person;
        for (std::size_t task = 0; task < row.size(); ++task) {
            Choice choice;
            choice.resources[0] = static_cast<std::uint32_t>(task);
            choice.loss = row[task];
            person.choices.push_back(choice);
        }
        line.people.push_back(std::move(person));
    }
    return line;
}

std::vector<Row> rowsFor(const std::string& function)
{
    std::vector<Row> rows;
    for (auto& row : rowsOf("planning.csv"))
        if (row.function == function)
            rows.push_back(row);
    return rows;
}

std::vector<std::vector<int>> matrixOf(const std::string& text)
{
    std::vector<std::vector<int>> rows;
    for (const auto& row : split(text, '/')) {
        rows.emplace_back();
        for (const auto& cell : split(row, ' '))
            rows.back().push_back(std::stoi(cell));
    }
    return rows;
}

} // namespace

BOOST_AUTO_TEST_SUITE(waiting_line)

BOOST_DATA_TEST_CASE(textbook_assignments_reach_their_least_cost, data::make(rowsFor("assignment")), row)
{
    const auto line = textbookLine(matrixOf(row.arguments.at(0)));
    const auto plan = planLine(line.people, line.available, {});
    BOOST_TEST(lossOfPlan(line, plan) == std::stol(row.named().at("min")));
    BOOST_TEST(plan.proof.proved());
}

BOOST_AUTO_TEST_CASE(ready_made_lines_of_up_to_six_are_never_beaten_by_trying_everything,
                     *utf::label("PROP") * utf::description("300 lines, seeds 1 to 300"))
{
    for (std::uint32_t seed = 1; seed <= 300; ++seed) {
        BOOST_TEST_CONTEXT("seed " << seed)
        {
            const auto line = drawLine(seed, readyMade);
            const auto plan = planLine(line.people, line.available, {});
            const auto best = tryEverything(line);
            BOOST_TEST(canBeDone(line, plan));
            BOOST_TEST(plan.served == best.served);
            BOOST_TEST(lossOfPlan(line, plan) == best.loss);
            BOOST_TEST(plan.proof.bound == plan.served);
        }
    }
}

BOOST_AUTO_TEST_CASE(mixed_lines_of_seven_are_never_beaten_by_trying_everything,
                     *utf::label("PROP") * utf::description("150 lines, seeds 1 to 150"))
{
    for (std::uint32_t seed = 1; seed <= 150; ++seed) {
        BOOST_TEST_CONTEXT("seed " << seed)
        {
            const auto line = drawLine(seed, mixed);
            const auto plan = planLine(line.people, line.available, {});
            const auto best = tryEverything(line);
            BOOST_TEST(canBeDone(line, plan));
            BOOST_TEST(plan.served == best.served);
            BOOST_TEST(plan.proof.bound >= best.served);
            if (plan.served == best.served) // the hundredths of scarcity may choose among equal losses only
                BOOST_TEST(lossOfPlan(line, plan) == best.loss);
        }
    }
}

BOOST_AUTO_TEST_CASE(the_bound_of_a_larger_mixed_line_holds_and_the_gap_is_what_it_says, *utf::label("PROP"))
{
    for (const std::uint32_t seed : {1U, 2U, 3U}) {
        const auto line = drawLine(seed, {120, 20, 16, 6, 2.0, 60});
        const auto plan = planLine(line.people, line.available, {});
        BOOST_TEST(canBeDone(line, plan));
        BOOST_TEST(plan.proof.bound >= plan.served);
        BOOST_TEST(plan.proof.reached == plan.served);
        BOOST_TEST(plan.proof.gap() <= 0.02);
        BOOST_TEST(plan.served >= firstComeLine(line.people, line.available, true).served);
    }
}

BOOST_AUTO_TEST_CASE(one_more_piece_never_serves_fewer_and_its_price_says_how_many, *utf::label("PROP"))
{
    for (std::uint32_t seed = 1; seed <= 60; ++seed) {
        auto line = drawLine(seed, {12, 6, 0, 0, 1.0, 60});
        PlanOptions options;
        options.gains = true;
        const auto before = planLine(line.people, line.available, options);
        for (std::size_t resource = 0; resource < line.available.size(); ++resource) {
            ++line.available[resource];
            const auto after = planLine(line.people, line.available, {});
            --line.available[resource];
            BOOST_TEST_CONTEXT("seed " << seed << ", resource " << resource)
            {
                BOOST_TEST(after.served >= before.served);
                BOOST_TEST(after.served - before.served == before.oneMore[resource].served);
                if (after.served == before.served)
                    BOOST_TEST(lossOfPlan(line, before) - lossOfPlan(line, after) ==
                               std::lround(before.oneMore[resource].lossLogMar * 1e4));
            }
        }
    }
}

BOOST_AUTO_TEST_CASE(the_order_of_the_people_changes_no_total, *utf::label("PROP"))
{
    for (std::uint32_t seed = 1; seed <= 30; ++seed)
        for (const auto& size : {DrawnSize{40, 12, 0, 0, 2.0, 60}, DrawnSize{24, 6, 6, 3, 1.5, 40}}) {
            auto line = drawLine(seed, size);
            const auto before = planLine(line.people, line.available, {});
            const long lossBefore = lossOfPlan(line, before);
            std::reverse(line.people.begin(), line.people.end());
            const auto after = planLine(line.people, line.available, {});
            BOOST_TEST(after.proof.bound == before.proof.bound);
            BOOST_TEST(after.served == before.served);
            BOOST_TEST(lossOfPlan(line, after) == lossBefore);
        }
}

BOOST_AUTO_TEST_CASE(children_first_serves_as_many_children_as_there_could_be, *utf::label("PROP"))
{
    PlanOptions options;
    options.priorities = {Priority::children};
    for (std::uint32_t seed = 1; seed <= 40; ++seed)
        for (const auto& size : {DrawnSize{20, 8, 0, 0, 1.0, 60}, DrawnSize{12, 4, 4, 2, 1.0, 20}}) {
            const auto line = drawLine(seed, size);
            auto alone = line;
            std::erase_if(alone.people, [](const Waiting& one) { return !one.child; });
            const auto plan = planLine(line.people, line.available, options);
            int children = 0;
            for (std::size_t i = 0; i < line.people.size(); ++i)
                children += line.people[i].child && plan.choiceOf[i] != nothingGiven ? 1 : 0;
            BOOST_TEST_CONTEXT("seed " << seed << ", lenses " << size.lenses)
            {
                BOOST_TEST(children == served(alone));
                BOOST_TEST(plan.served <= served(line));
            }
        }
}

BOOST_AUTO_TEST_CASE(a_floor_is_kept_where_it_can_be_and_costs_the_others_no_more_than_it_must,
                     *utf::label("PROP"))
{
    for (std::uint32_t seed = 1; seed <= 40; ++seed)
        for (const auto& size : {DrawnSize{20, 8, 0, 0, 1.0, 60}, DrawnSize{12, 4, 4, 2, 1.0, 20}}) {
            const auto line = drawLine(seed, size);
            auto alone = line;
            std::erase_if(alone.people, [](const Waiting& one) { return !one.child; });
            PlanOptions options;
            GroupChoice children;
            children.child = true;
            children.floor = 0.5;
            options.groups = {children};
            const auto plan = planLine(line.people, line.available, options);
            int count = 0;
            int given = 0;
            for (std::size_t i = 0; i < line.people.size(); ++i)
                if (line.people[i].child) {
                    ++count;
                    given += plan.choiceOf[i] != nothingGiven ? 1 : 0;
                }
            BOOST_TEST_CONTEXT("seed " << seed << ", lenses " << size.lenses)
            BOOST_TEST(given >= std::min(count / 2, served(alone)));
        }
}

BOOST_AUTO_TEST_CASE(a_line_without_anybody_or_without_choices_has_an_empty_plan, *utf::label("PROP"))
{
    const auto nobody = planLine({}, {3, 4}, {});
    BOOST_TEST(nobody.served == 0);
    BOOST_TEST(nobody.proof.proved());
    const auto nothing = planLine(std::vector<Waiting>(3), {0}, {});
    BOOST_TEST(nothing.served == 0);
    BOOST_TEST(nothing.choiceOf == std::vector<std::int32_t>(3, nothingGiven),
               boost::test_tools::per_element());
}

BOOST_AUTO_TEST_SUITE_END()

} // namespace quarterstep::check
