// SPDX-License-Identifier: GPL-3.0-or-later
// Prints drawn packing problems and the orders found for them, for packing_oracle.py to solve again by
// another program. usage: packing_instances SMALL LARGE: that many of each, every other one with lenses in
// frames. One instance: `instance NAME RESOURCES BUDGET`, `onhand …`, one `offer COST RESOURCE PIECES …` an
// offer, one `need SCENARIO` a need and after it one `way RESOURCE…` a way to serve it, then `plan SERVED
// BOUND GREEDY COST`, in needs of all scenarios together.
#include "core/planning/packing.hpp"
#include "tests/core/planning_lines.hpp"

#include <chrono>
#include <cstdio>
#include <cstdlib>

using namespace quarterstep;
using namespace quarterstep::check;

namespace
{

struct Size {
    DrawnSize line;
    int scenarios = 3;
    int people = 10;
    long budget = 9000;
};

PackingProblem problemOf(std::uint32_t seed, const Size& size)
{
    const auto line = drawLine(seed, size.line);
    PackingProblem problem;
    problem.needs = line.people;
    problem.limits.budget = size.budget;
    const int resources = size.line.pairs + size.line.lenses + size.line.frames;
    for (int i = 0; i < resources; ++i) {
        problem.onHand.push_back((i + static_cast<int>(seed)) % 4 == 0 ? 1 : 0);
        const int pieces = 1 + (i + static_cast<int>(seed)) % 3;
        const bool lens = i >= size.line.pairs && i < size.line.pairs + size.line.lenses;
        problem.offers.push_back({"L" + std::to_string(i),
                                  {{static_cast<std::uint32_t>(i), pieces}},
                                  (lens ? 300 : 1000) * pieces + 100 * (i % 5),
                                  20,
                                  100000});
    }
    problem.offers.push_back({"MIX", {{0, 1}, {1, 1}, {2, 1}}, 2400, 60, 100000});
    return problem;
}

void print(const char* kind, int number, std::uint32_t seed, const Size& size)
{
    const auto problem = problemOf(seed, size);
    std::vector<Scenario> scenarios;
    for (int s = 0; s < size.scenarios; ++s) {
        Draw draw(seed, static_cast<std::uint64_t>(s));
        Scenario scenario;
        for (int i = 0; i < size.people; ++i)
            scenario.push_back(static_cast<std::uint32_t>(draw.below(problem.needs.size())));
        scenarios.push_back(std::move(scenario));
    }
    std::printf("instance %s-%d %zu %ld\nonhand", kind, number, problem.onHand.size(), problem.limits.budget);
    for (const int pieces : problem.onHand)
        std::printf(" %d", pieces);
    for (const auto& offer : problem.offers) {
        std::printf("\noffer %ld", offer.cost);
        for (const auto& [resource, pieces] : offer.holds)
            std::printf(" %u %d", resource, pieces);
    }
    std::printf("\n");
    for (std::size_t s = 0; s < scenarios.size(); ++s)
        for (const auto need : scenarios[s]) {
            std::printf("need %zu\n", s);
            for (const auto& choice : problem.needs[need].choices) {
                std::printf("way");
                for (const auto resource : choice.used())
                    std::printf(" %u", resource);
                std::printf("\n");
            }
        }
    const auto begin = std::chrono::steady_clock::now();
    const auto plan = planPacking(problem, scenarios, {});
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
    const double needs = static_cast<double>(size.scenarios) * size.people;
    std::printf("plan %.6f %.6f %.6f %ld\n", plan.share * needs, plan.bound * needs, plan.greedyShare * needs,
                spendingOf(problem, plan.packs).cost);
    std::fprintf(stderr, "%s-%d: served %.0f, bound %.3f, greedy %.0f, %.2f s\n", kind, number,
                 plan.share * needs, plan.bound * needs, plan.greedyShare * needs, took.count());
}

} // namespace

int main(int count, char** words)
{
    const int small = count > 1 ? std::atoi(words[1]) : 60;
    const int large = count > 2 ? std::atoi(words[2]) : 4;
    for (int i = 0; i < small; ++i) {
        const bool mixed = i % 2 == 1;
        print(mixed ? "small-mixed" : "small-ready-made", i, static_cast<std::uint32_t>(4000 + i),
              {{25, mixed ? 4 : 7, mixed ? 4 : 0, mixed ? 2 : 0, 1.0, 40}, 3, 10, mixed ? 8000 : 6000});
    }
    for (int i = 0; i < large; ++i) {
        const bool mixed = i % 2 == 1;
        print(mixed ? "large-mixed" : "large-ready-made", i, static_cast<std::uint32_t>(5000 + i),
              {{80, mixed ? 10 : 20, mixed ? 10 : 0, mixed ? 3 : 0, 1.0, 60}, 8, 30, 24000});
    }
    return 0;
}
