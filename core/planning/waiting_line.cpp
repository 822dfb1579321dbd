// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/waiting_line.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace quarterstep
{

namespace
{

constexpr double sightStep = 0.3; ///< logMAR, a doubling of the angle

int rankBy(Priority priority, const Waiting& one)
{
    switch (priority) {
    case Priority::firstPairs:
        return one.secondPair ? 1 : 0;
    case Priority::children:
        return one.child ? 0 : 1;
    case Priority::worstSight:
        return -static_cast<int>(std::floor(one.bareLoss / sightStep));
    }
    return 0;
}

/// Ranks by every priority, made into class numbers from 0.
void classify(const std::vector<Waiting>& line, const PlanOptions& options, Aims& aims)
{
    std::vector<std::vector<int>> ranks;
    std::map<std::vector<int>, int> classes;
    for (const auto& one : line) {
        std::vector<int> rank;
        rank.reserve(options.priorities.size());
        for (const auto priority : options.priorities)
            rank.push_back(rankBy(priority, one));
        classes.emplace(rank, 0);
        ranks.push_back(std::move(rank));
    }
    int next = 0;
    for (auto& [rank, number] : classes)
        number = next++;
    for (const auto& rank : ranks)
        aims.classOf.push_back(classes.at(rank));
    aims.classes = std::max(1, next);
}

bool fits(const GroupChoice& group, const Waiting& one)
{
    return (!group.purpose || *group.purpose == one.purpose) && (!group.child || *group.child == one.child);
}

void applyGroups(const std::vector<Waiting>& line, const PlanOptions& options, Aims& aims)
{
    aims.weightOf.assign(line.size(), 1);
    std::vector<ServiceFloor> floors(options.groups.size());
    for (std::size_t i = 0; i < line.size(); ++i)
        for (std::size_t g = 0; g < options.groups.size(); ++g)
            if (fits(options.groups[g], line[i])) {
                aims.weightOf[i] = options.groups[g].weight;
                floors[g].people.push_back(static_cast<std::uint32_t>(i));
                break;
            }
    for (std::size_t g = 0; g < floors.size(); ++g) {
        const auto share = options.groups[g].floor * static_cast<double>(floors[g].people.size());
        floors[g].least = static_cast<int>(std::floor(share + 1e-9));
        if (floors[g].least > 0)
            aims.floors.push_back(std::move(floors[g]));
    }
}

Transport transportOf(const std::vector<Waiting>& line, const std::vector<int>& available, const Aims& aims)
{
    Transport transport;
    transport.people = line.size();
    transport.capacity = available;
    transport.floors = aims.floors;
    std::size_t edges = 0;
    for (const auto& one : line)
        edges += one.choices.size();
    transport.edges.reserve(edges);
    transport.levels.resize(static_cast<std::size_t>(aims.classes) + 2);
    auto& loss = transport.levels[static_cast<std::size_t>(aims.classes)];
    auto& scarcity = transport.levels.back();
    for (auto& level : transport.levels)
        level.unserved.assign(line.size(), 0);
    loss.edge.reserve(edges);
    scarcity.edge.reserve(edges);
    for (std::size_t i = 0; i < line.size(); ++i) {
        transport.levels[static_cast<std::size_t>(aims.classOf[i])].unserved[i] = aims.weightOf[i];
        for (const auto& choice : line[i].choices) {
            transport.edges.push_back({static_cast<std::uint32_t>(i), choice.resources[0]});
            loss.edge.push_back(choice.loss);
            scarcity.edge.push_back(aims.scarcity[choice.resources[0]]);
        }
    }
    return transport;
}

LinePlan planByFlow(const std::vector<Waiting>& line, const std::vector<int>& available,
                    const PlanOptions& options, const Aims& aims)
{
    const auto transport = transportOf(line, available, aims);
    const auto flow = solveTransport(transport);
    LinePlan plan;
    std::size_t firstEdge = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        plan.choiceOf.push_back(flow.edgeOf[i] == nothingGiven
                                    ? nothingGiven
                                    : flow.edgeOf[i] - static_cast<std::int32_t>(firstEdge));
        plan.proof.reached += flow.edgeOf[i] == nothingGiven ? 0.0 : aims.weightOf[i];
        firstEdge += line[i].choices.size();
    }
    plan.proof.bound = plan.proof.reached;
    plan.proof.coarserBy = flow.coarserBy;
    if (!options.gains)
        return plan;
    for (const auto& gains : gainsOfOneMore(transport, flow)) {
        OneMore more;
        for (int k = 0; k < aims.classes; ++k)
            more.served += static_cast<double>(gains[static_cast<std::size_t>(k)]);
        more.lossLogMar = static_cast<double>(gains[static_cast<std::size_t>(aims.classes)]) * 1e-4 *
                          static_cast<double>(flow.coarserBy);
        plan.oneMore.push_back(more);
    }
    return plan;
}

} // namespace

bool isFree(const Choice& choice, const std::vector<int>& left)
{
    if (choice.parts == 3 && choice.resources[1] == choice.resources[2])
        return left[choice.resources[0]] > 0 && left[choice.resources[1]] > 1;
    return std::all_of(choice.used().begin(), choice.used().end(),
                       [&](std::uint32_t resource) { return left[resource] > 0; });
}

void take(const Choice& choice, std::vector<int>& left, int pieces)
{
    for (const auto resource : choice.used())
        left[resource] -= pieces;
}

void addUp(const std::vector<Waiting>& line, LinePlan& plan)
{
    plan.served = 0;
    plan.lossLogMar = plan.prism = 0.0;
    for (std::size_t i = 0; i < line.size(); ++i)
        if (plan.choiceOf[i] != nothingGiven) {
            const auto& choice = line[i].choices[static_cast<std::size_t>(plan.choiceOf[i])];
            ++plan.served;
            plan.lossLogMar += static_cast<double>(choice.lossLogMar);
            plan.prism += std::abs(static_cast<double>(choice.prism));
        }
}

std::vector<int> scarcityOf(const std::vector<Waiting>& line, const std::vector<int>& available)
{
    constexpr int most = 15;
    std::vector<int> wanted(available.size(), 0);
    for (const auto& one : line)
        for (const auto& choice : one.choices)
            for (const auto resource : choice.used())
                ++wanted[resource];
    std::vector<int> scarcity;
    for (std::size_t i = 0; i < available.size(); ++i) {
        const double each = wanted[i] / static_cast<double>(std::max(1, available[i]));
        scarcity.push_back(std::min(most, static_cast<int>(std::lround(3.0 * std::log2(1.0 + each)))));
    }
    return scarcity;
}

Aims aimsOf(const std::vector<Waiting>& line, const std::vector<int>& available, const PlanOptions& options)
{
    Aims aims;
    classify(line, options, aims);
    applyGroups(line, options, aims);
    aims.scarcity = scarcityOf(line, available);
    return aims;
}

LinePlan planLine(const std::vector<Waiting>& line, const std::vector<int>& available,
                  const PlanOptions& options)
{
    const auto aims = aimsOf(line, available, options);
    const bool mixed = std::any_of(line.begin(), line.end(), [](const Waiting& one) {
        return std::any_of(one.choices.begin(), one.choices.end(),
                           [](const Choice& choice) { return choice.parts != 1; });
    });
    auto plan =
        mixed ? planMixedLine(line, available, options, aims) : planByFlow(line, available, options, aims);
    plan.classOf = aims.classOf;
    addUp(line, plan);
    if (plan.proof.method == PlanMethod::flow)
        plan.proof.lossBound = plan.lossLogMar;
    return plan;
}

LinePlan firstComeLine(const std::vector<Waiting>& line, const std::vector<int>& available,
                       bool secondPairsLast)
{
    LinePlan plan;
    plan.choiceOf.assign(line.size(), nothingGiven);
    auto left = available;
    for (const bool second : {false, true})
        for (std::size_t i = 0; i < line.size(); ++i) {
            if (secondPairsLast ? line[i].secondPair != second : second)
                continue;
            const auto& choices = line[i].choices;
            const auto best = std::find_if(choices.begin(), choices.end(),
                                           [&](const Choice& choice) { return isFree(choice, left); });
            if (best == choices.end())
                continue;
            plan.choiceOf[i] = static_cast<std::int32_t>(best - choices.begin());
            take(*best, left);
        }
    addUp(line, plan);
    return plan;
}

} // namespace quarterstep
