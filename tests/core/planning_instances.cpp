// SPDX-License-Identifier: GPL-3.0-or-later
// Prints drawn lines and the plans for them, for planning_oracle.py to solve again by another program.
// usage: planning_instances SMALL LARGE: that many of each. One instance: `instance NAME PEOPLE RESOURCES`,
// then `pieces …`, one `way PERSON LOSS RESOURCE…` a way to serve somebody, and `plan SERVED LOSS BOUND
// LOSS_BOUND`.
#include "tests/core/planning_lines.hpp"

#include <chrono>
#include <cstdio>
#include <cstdlib>

using namespace quarterstep;
using namespace quarterstep::check;

namespace
{

void print(const char* kind, int number, const DrawnLine& line)
{
    std::printf("instance %s-%d %zu %zu\npieces", kind, number, line.people.size(), line.available.size());
    for (const int pieces : line.available)
        std::printf(" %d", pieces);
    std::printf("\n");
    for (std::size_t i = 0; i < line.people.size(); ++i)
        for (const auto& choice : line.people[i].choices) {
            std::printf("way %zu %d", i, choice.loss);
            for (const auto resource : choice.used())
                std::printf(" %u", resource);
            std::printf("\n");
        }
    const auto begin = std::chrono::steady_clock::now();
    const auto plan = planLine(line.people, line.available, {});
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
    std::printf("plan %d %ld %.0f %.2f\n", plan.served, lossOfPlan(line, plan), plan.proof.bound,
                1e4 * plan.proof.lossBound);
    std::fprintf(stderr, "%s-%d: %d served, bound %.0f, loss %ld, bound %.0f, %.2f s\n", kind, number,
                 plan.served, plan.proof.bound, lossOfPlan(line, plan), 1e4 * plan.proof.lossBound,
                 took.count());
}

} // namespace

int main(int count, char** words)
{
    const int small = count > 1 ? std::atoi(words[1]) : 200;
    const int large = count > 2 ? std::atoi(words[2]) : 4;
    for (int i = 0; i < small; ++i) {
        const bool mixed = i % 2 == 1;
        print(mixed ? "small-mixed" : "small-ready-made", i,
              drawLine(static_cast<std::uint32_t>(1000 + i),
                       {10 + i % 25, 6 + i % 5, mixed ? 4 + i % 4 : 0, mixed ? 2 + i % 3 : 0, 1.5, 40}));
    }
    for (int i = 0; i < large; ++i) {
        const bool mixed = i % 2 == 1;
        print(mixed ? "large-mixed" : "large-ready-made", i,
              drawLine(static_cast<std::uint32_t>(2000 + i),
                       mixed ? DrawnSize{300, 40, 25, 6, 3.0, 60} : DrawnSize{500, 200, 0, 0, 1.8, 40}));
    }
    if (count > 3)
        print("huge-mixed", 0, drawLine(3000, {std::atoi(words[3]), 120, 33, 8, 8.0, 60}));
    return 0;
}
