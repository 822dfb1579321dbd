// SPDX-License-Identifier: GPL-3.0-or-later
// What packs cost and hold, and whom they serve.
#include "core/planning/packing.hpp"

#include "core/planning/service_state.hpp"

#include <algorithm>

namespace quarterstep
{

Spending spendingOf(const PackingProblem& problem, const std::vector<int>& packs)
{
    Spending sum;
    for (std::size_t i = 0; i < packs.size(); ++i) {
        sum.cost += problem.offers[i].cost * packs[i];
        sum.weight += problem.offers[i].weight * packs[i];
        sum.pieces += problem.offers[i].pieces() * packs[i];
    }
    return sum;
}

bool isWithin(const Spending& spending, const PackingLimits& limits)
{
    return spending.cost <= limits.budget && (!limits.weight || spending.weight <= *limits.weight) &&
           (!limits.pieces || spending.pieces <= *limits.pieces);
}

std::vector<int> piecesWith(const PackingProblem& problem, const std::vector<int>& packs)
{
    auto pieces = problem.onHand;
    for (std::size_t i = 0; i < packs.size(); ++i)
        for (const auto& [resource, count] : problem.offers[i].holds)
            pieces[resource] += count * packs[i];
    return pieces;
}

Service serviceOf(const PackingProblem& problem, const std::vector<Scenario>& scenarios,
                  const std::vector<int>& pieces)
{
    Service service;
    for (const auto& scenario : scenarios) {
        if (scenario.empty())
            continue;
        ServiceState state(problem.needs, scenario, pieces.size());
        std::vector<std::pair<std::uint32_t, int>> all;
        for (std::uint32_t resource = 0; resource < pieces.size(); ++resource)
            if (pieces[resource] > 0)
                all.emplace_back(resource, pieces[resource]);
        state.addAll(all);
        state.makeRoom();
        auto left = pieces;
        int firstCome = 0;
        for (const auto need : scenario)
            for (const auto& choice : problem.needs[need].choices) {
                const bool same = choice.parts == 3 && choice.resources[1] == choice.resources[2];
                const bool free = std::all_of(choice.used().begin(), choice.used().end(),
                                              [&](auto resource) { return left[resource] > 0; }) &&
                                  (!same || left[choice.resources[1]] > 1);
                if (!free)
                    continue;
                for (const auto resource : choice.used())
                    --left[resource];
                ++firstCome;
                break;
            }
        const auto count = static_cast<double>(scenario.size());
        service.shares.push_back(std::max(state.served(), firstCome) / count);
        service.firstCome += firstCome / count;
    }
    const auto scenariosSeen = static_cast<double>(std::max<std::size_t>(1, service.shares.size()));
    for (const double share : service.shares)
        service.served += share / scenariosSeen;
    service.firstCome /= scenariosSeen;
    return service;
}

} // namespace quarterstep
