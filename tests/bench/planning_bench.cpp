// SPDX-License-Identifier: GPL-3.0-or-later
// The waiting line against the bare flow it stands on, mixed lines against their bound, packing against the
// clock. Lines are drawn as in the tests (needs and powers on a quarter-dioptre grid).
#include "core/planning/packing.hpp"
#include "tests/bench/plan.hpp"
#include "tests/core/planning_lines.hpp"

#include <benchmark/benchmark.h>
#include <lemon/network_simplex.h>
#include <lemon/smart_graph.h>

#include <chrono>
#include <cmath>
#include <memory>

namespace quarterstep::bench
{
namespace
{

using check::drawLine;
using check::DrawnLine;

/// The graph of a line with one cost, as one would hand it to the library: people, resources, a sink.
class BareFlow
{
  public:
    explicit BareFlow(const DrawnLine& line) : people_(line.people.size()), resources_(line.available.size())
    {
        for (std::size_t i = 0; i < people_; ++i)
            for (const auto& choice : line.people[i].choices)
                edges_.push_back({i, choice.resources[0], choice.loss});
        available_ = line.available;
    }

    [[nodiscard]] std::int64_t solve() const
    {
        using Graph = lemon::SmartDigraph;
        constexpr std::int64_t unserved = 1'000'000'000;
        Graph graph;
        const auto nodes = static_cast<int>(people_ + resources_ + 1);
        graph.reserveNode(nodes);
        graph.reserveArc(static_cast<int>(edges_.size()) + nodes);
        for (int i = 0; i < nodes; ++i)
            graph.addNode();
        Graph::ArcMap<int> capacity(graph);
        Graph::ArcMap<std::int64_t> cost(graph);
        Graph::NodeMap<int> supply(graph, 0);
        const auto node = [](std::size_t place) { return Graph::nodeFromId(static_cast<int>(place)); };
        const auto add = [&](std::size_t from, std::size_t to, int most, std::int64_t each) {
            const auto arc = graph.addArc(node(from), node(to));
            capacity[arc] = most;
            cost[arc] = each;
        };
        const auto sink = people_ + resources_;
        for (const auto& edge : edges_)
            add(edge.person, people_ + edge.resource, 1, edge.loss);
        for (std::size_t resource = 0; resource < resources_; ++resource)
            add(people_ + resource, sink, available_[resource], 0);
        for (std::size_t person = 0; person < people_; ++person) {
            add(person, sink, 1, unserved);
            supply[node(person)] = 1;
        }
        supply[node(sink)] = -static_cast<int>(people_);
        lemon::NetworkSimplex<Graph, int, std::int64_t> simplex(graph);
        simplex.upperMap(capacity).costMap(cost).supplyMap(supply);
        simplex.run();
        return simplex.totalCost<std::int64_t>();
    }

    /// People left over by a total.
    [[nodiscard]] static std::int64_t unservedIn(std::int64_t total) { return total / 1'000'000'000; }

  private:
    struct Edge {
        std::size_t person;
        std::size_t resource;
        std::int64_t loss;
    };
    std::size_t people_;
    std::size_t resources_;
    std::vector<Edge> edges_;
    std::vector<int> available_;
};

/// About as many pieces as people.
DrawnLine readyMade(std::size_t people, std::size_t lines)
{
    return check::drawWideLine(11, static_cast<int>(people), static_cast<int>(lines), 1.0);
}

void planLines(Plan& plan)
{
    const auto people = plan.size(5000, 100);
    const auto lines = plan.size(2000, 40);
    const auto line = std::make_shared<DrawnLine>(readyMade(people, lines));
    const auto bare = std::make_shared<BareFlow>(*line);
    plan.measure("planning/bare-flow", 1.0, [=] { benchmark::DoNotOptimize(bare->solve()); });
    plan.measure("planning/assign", 1.0,
                 [=] { benchmark::DoNotOptimize(planLine(line->people, line->available, {}).served); });
    plan.keep({"planning/assign-over-bare-flow",
               [](const Medians& medians) {
                   return medians.at("planning/assign") / medians.at("planning/bare-flow");
               },
               Bound::atMost, 2.0});
    const auto ours = planLine(line->people, line->available, {});
    const auto total = bare->solve();
    if (static_cast<std::int64_t>(people) - ours.served != BareFlow::unservedIn(total) ||
        check::lossOfPlan(*line, ours) != total % 1'000'000'000)
        plan.disagree("planning: the plan and the bare flow differ in served or loss");
    const auto firstCome = firstComeLine(line->people, line->available, false);
    std::size_t edges = 0;
    for (const auto& one : line->people)
        edges += one.choices.size();
    plan.note("planning: " + std::to_string(edges) + " edges, " + std::to_string(people) + " people, " +
              std::to_string(lines) + " lines: served " + std::to_string(ours.served) + ", first come " +
              std::to_string(firstCome.served));
}

void planGrowthOfLines(Plan& plan)
{
    for (const std::size_t people : {1250, 5000}) {
        const auto line =
            std::make_shared<DrawnLine>(readyMade(plan.size(people, people / 25), plan.size(2000, 80)));
        plan.measure("planning/people-" + std::to_string(people), 1.0,
                     [=] { benchmark::DoNotOptimize(planLine(line->people, line->available, {}).served); });
    }
    for (const std::size_t lines : {500, 2000}) {
        const auto line =
            std::make_shared<DrawnLine>(readyMade(plan.size(5000, 100), plan.size(lines, lines / 25)));
        plan.measure("planning/lines-" + std::to_string(lines), 1.0,
                     [=] { benchmark::DoNotOptimize(planLine(line->people, line->available, {}).served); });
    }
    const auto exponent = [&plan](const char* name, const char* small, const char* large, double limit) {
        plan.keep({name,
                   [=](const Medians& medians) {
                       return std::log(medians.at(large) / medians.at(small)) / std::log(4.0);
                   },
                   Bound::atMost, limit});
    };
    exponent("planning/exponent-of-people", "planning/people-1250", "planning/people-5000", 2.0);
    exponent("planning/exponent-of-lines", "planning/lines-500", "planning/lines-2000", 2.0);
}

void planMixed(Plan& plan)
{
    const auto line = std::make_shared<DrawnLine>(
        drawLine(3000, {static_cast<int>(plan.size(2000, 60)), static_cast<int>(plan.size(120, 12)),
                        static_cast<int>(plan.size(33, 8)), static_cast<int>(plan.size(8, 3)), 8.0, 60}));
    const auto gap = std::make_shared<double>(1.0);
    plan.measure("planning/mixed", 1.0, [=] {
        const auto found = planLine(line->people, line->available, {});
        *gap = found.proof.gap();
        benchmark::DoNotOptimize(found.served);
    });
    plan.keep({"planning/mixed-seconds",
               [](const Medians& medians) { return medians.at("planning/mixed") * 1e-9; }, Bound::atMost,
               10.0});
    plan.keep({"planning/mixed-gap", [=](const Medians&) { return *gap; }, Bound::atMost, 0.005});
}

/// A line that was planned, and one more person: begun where the plan before ended.
void planAgain(Plan& plan)
{
    const auto line = std::make_shared<DrawnLine>(
        drawLine(3001, {static_cast<int>(plan.size(2000, 60)), static_cast<int>(plan.size(450, 12)),
                        static_cast<int>(plan.size(42, 8)), static_cast<int>(plan.size(8, 3)), 3.0, 60}));
    auto options = std::make_shared<PlanOptions>();
    auto before = *line;
    before.people.pop_back();
    options->pricesBefore = planLine(before.people, before.available, {}).prices;
    const auto gap = std::make_shared<double>(1.0);
    plan.measure("planning/again", 1.0, [=] {
        const auto found = planLine(line->people, line->available, *options);
        *gap = found.proof.gap();
        benchmark::DoNotOptimize(found.served);
    });
    plan.keep({"planning/again-seconds",
               [](const Medians& medians) { return medians.at("planning/again") * 1e-9; }, Bound::atMost,
               1.0});
    plan.keep({"planning/again-gap", [=](const Medians&) { return *gap; }, Bound::atMost, 0.005});
}

/// Lenses in frames among what is offered.
void planMixedPacking(Plan& plan)
{
    const auto people = static_cast<int>(plan.size(200, 30));
    const int pairs = 60;
    const int lenses = 30;
    const int frames = 6;
    const auto line = drawLine(19, {people, pairs, lenses, frames, 0.0, 60});
    const auto problem = std::make_shared<PackingProblem>();
    problem->needs = line.people;
    problem->onHand.assign(pairs + lenses + frames, 0);
    problem->limits.budget = 600L * people;
    for (int i = 0; i < pairs + lenses + frames; ++i)
        problem->offers.push_back({std::to_string(i),
                                   {{static_cast<std::uint32_t>(i), 2}},
                                   i >= pairs && i < pairs + lenses ? 700 : 2000,
                                   0,
                                   100000});
    const auto scenarios = std::make_shared<std::vector<Scenario>>();
    for (std::uint64_t s = 0; s < plan.size(20, 3); ++s) {
        Draw draw(6, s);
        Scenario scenario;
        for (int i = 0; i < people; ++i)
            scenario.push_back(static_cast<std::uint32_t>(draw.below(problem->needs.size())));
        scenarios->push_back(std::move(scenario));
    }
    const auto found = std::make_shared<PackingPlan>();
    plan.measure("planning/packing-mixed", 1.0, [=] { *found = planPacking(*problem, *scenarios, {}); });
    plan.keep({"planning/packing-mixed-seconds",
               [](const Medians& medians) { return medians.at("planning/packing-mixed") * 1e-9; },
               Bound::atMost, 30.0});
    plan.keep({"planning/packing-mixed-of-bound", [=](const Medians&) { return found->share / found->bound; },
               Bound::atLeast, 0.97});
}

void planPackingOf(Plan& plan)
{
    const auto people = static_cast<int>(plan.size(2000, 60));
    const auto lines = static_cast<int>(plan.size(400, 12));
    const auto line = check::drawWideLine(17, people, lines, 0.0);
    const auto problem = std::make_shared<PackingProblem>();
    problem->needs = line.people;
    problem->onHand.assign(static_cast<std::size_t>(lines), 0);
    problem->limits.budget = 1000L * people; // a piece a person: nothing is certain to find somebody
    for (int i = 0; i < lines; ++i)
        problem->offers.push_back({std::to_string(i), {{static_cast<std::uint32_t>(i), 1}}, 1000, 0, 100000});
    const auto scenarios = std::make_shared<std::vector<Scenario>>();
    for (std::uint64_t s = 0; s < plan.size(50, 5); ++s) {
        Draw draw(4, s);
        Scenario scenario;
        for (int i = 0; i < people; ++i)
            scenario.push_back(static_cast<std::uint32_t>(draw.below(problem->needs.size())));
        scenarios->push_back(std::move(scenario));
    }
    const auto found = std::make_shared<PackingPlan>();
    plan.measure("planning/packing", 1.0, [=] { *found = planPacking(*problem, *scenarios, {}); });
    plan.keep({"planning/packing-seconds",
               [](const Medians& medians) { return medians.at("planning/packing") * 1e-9; }, Bound::atMost,
               30.0});
    plan.keep({"planning/packing-of-bound", [=](const Medians&) { return found->share / found->bound; },
               Bound::atLeast, 0.995});
}

} // namespace

void planPlanning(Plan& plan)
{
    planLines(plan);
    planGrowthOfLines(plan);
    planMixed(plan);
    planAgain(plan);
    planPackingOf(plan);
    planMixedPacking(plan);
}

} // namespace quarterstep::bench
