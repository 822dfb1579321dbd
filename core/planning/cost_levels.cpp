// SPDX-License-Identifier: GPL-3.0-or-later
// Lexicographic aims in one whole number, and what one more piece would change.
// With R the most that an aim can add up to, one unit of the aim before it weighs 2R + 1 of its units: no sum
// of the later aims, and no difference of two such sums, reaches it; and a difference of packed costs falls
// apart into its aims again by rounding.
#include "core/planning/flow.hpp"

#include <algorithm>
#include <deque>
#include <limits>

namespace quarterstep
{

namespace
{

/// A potential of network simplex stays below this many largest costs: its artificial arcs cost (nodes + 1)
/// of them, and a path adds as much again.
constexpr long double mostCost = 4.0e18L;

std::int64_t mostOf(const Transport& transport, const CostLevel& level)
{
    std::vector<std::int64_t> most = level.unserved;
    for (std::size_t i = 0; i < level.edge.size(); ++i)
        most[transport.edges[i].person] = std::max(most[transport.edges[i].person], level.edge[i]);
    std::int64_t sum = 0;
    for (const auto value : most)
        sum += value;
    return sum;
}

/// Weights of the aims for these ranges; the front of what comes back is that of a floor.
std::vector<long double> weightsOf(const std::vector<std::int64_t>& ranges)
{
    std::vector<long double> weights(ranges.size() + 1, 1.0L);
    for (std::size_t k = ranges.size(); k-- > 0;)
        weights[k] = weights[k + 1] * (2.0L * static_cast<long double>(ranges[k]) + 1.0L);
    return weights;
}

std::int64_t dividedBy(std::int64_t value, int divisor)
{
    return (value + divisor / 2) / divisor;
}

std::int64_t nearestMultiple(std::int64_t value, std::int64_t weight)
{
    const std::int64_t half = weight / 2;
    return value >= 0 ? (value + half) / weight : -((-value + half) / weight);
}

} // namespace

PackedCosts packCosts(const Transport& transport)
{
    PackedCosts packed;
    packed.unserved.assign(transport.people, 0);
    packed.edge.assign(transport.edges.size(), 0);
    std::vector<CostLevel> coarser; // a copy, only when one is needed
    const auto* levels = &transport.levels;
    std::vector<std::int64_t> ranges;
    for (const auto& level : *levels)
        ranges.push_back(mostOf(transport, level));
    const auto nodes = static_cast<long double>(transport.people + transport.capacity.size() + 8);
    std::int64_t heaviestPerson = 1;
    for (const auto weight : levels->front().unserved)
        heaviestPerson = std::max(heaviestPerson, weight);
    const auto heaviest = static_cast<long double>(heaviestPerson);
    const auto tooLarge = [&] {
        const auto weights = weightsOf(ranges);
        const auto largest = transport.floors.empty() ? weights[1] * (heaviest + 1.0L) : weights[0];
        return largest * nodes > mostCost;
    };
    // Only aims after the first are made coarser: who is served is never rounded.
    while (levels->size() > 1 && packed.coarserBy < (1 << 20) && tooLarge()) {
        packed.coarserBy *= 2;
        if (coarser.empty())
            coarser = transport.levels;
        levels = &coarser;
        for (std::size_t k = 1; k < coarser.size(); ++k) {
            for (auto& value : coarser[k].unserved)
                value = dividedBy(value, 2);
            for (auto& value : coarser[k].edge)
                value = dividedBy(value, 2);
            ranges[k] = mostOf(transport, coarser[k]);
        }
    }
    const auto weights = weightsOf(ranges);
    for (std::size_t k = 0; k < levels->size(); ++k) {
        const auto& level = (*levels)[k];
        packed.weight.push_back(static_cast<std::int64_t>(weights[k + 1]));
        for (std::size_t i = 0; i < transport.people; ++i)
            packed.unserved[i] += packed.weight[k] * level.unserved[i];
        for (std::size_t i = 0; i < level.edge.size(); ++i)
            packed.edge[i] += packed.weight[k] * level.edge[i];
    }
    packed.shortOfFloor = transport.floors.empty() ? 0 : static_cast<std::int64_t>(weights[0]);
    return packed;
}

std::vector<Gains> gainsOfOneMore(const Transport& transport, const TransportPlan& plan)
{
    const auto costs = packCosts(transport);
    const auto people = transport.people;
    const auto resources = transport.capacity.size();
    std::vector<std::vector<std::uint32_t>> holders(resources);
    std::vector<std::size_t> firstEdge(people + 1, transport.edges.size());
    for (std::size_t i = transport.edges.size(); i-- > 0;)
        firstEdge[transport.edges[i].person] = i;
    for (std::size_t person = people; person-- > 0;)
        firstEdge[person] = std::min(firstEdge[person], firstEdge[person + 1]);
    constexpr auto far = std::numeric_limits<std::int64_t>::max() / 4;
    std::vector<std::int64_t> toPerson(people, far);
    std::vector<std::int64_t> toResource(resources, far);
    std::deque<std::uint32_t> queue; // people whose distance fell
    std::vector<bool> queued(people, false);
    const auto reach = [&](std::uint32_t person, std::int64_t distance) {
        if (distance >= toPerson[person])
            return;
        toPerson[person] = distance;
        if (!queued[person]) {
            queued[person] = true;
            queue.push_back(person);
        }
    };
    for (std::uint32_t person = 0; person < people; ++person)
        if (plan.edgeOf[person] == nothingGiven)
            reach(person, -costs.unserved[person]);
        else
            holders[transport.edges[static_cast<std::size_t>(plan.edgeOf[person])].resource].push_back(
                person);
    const auto pass = [&](std::uint32_t resource, std::int64_t distance) {
        if (distance >= toResource[resource])
            return;
        toResource[resource] = distance;
        for (const auto holder : holders[resource])
            reach(holder, distance - costs.edge[static_cast<std::size_t>(plan.edgeOf[holder])]);
    };
    for (std::uint32_t resource = 0; resource < resources; ++resource)
        if (!holders[resource].empty())
            pass(resource, 0); // whoever holds one may leave it
    while (!queue.empty()) {
        const auto person = queue.front();
        queue.pop_front();
        queued[person] = false;
        for (auto i = firstEdge[person]; i < firstEdge[person + 1]; ++i)
            if (static_cast<std::int32_t>(i) != plan.edgeOf[person])
                pass(transport.edges[i].resource, toPerson[person] + costs.edge[i]);
    }
    std::vector<Gains> gains(resources, Gains(costs.weight.size(), 0));
    for (std::size_t resource = 0; resource < resources; ++resource) {
        std::int64_t left = toResource[resource] >= 0 ? 0 : -toResource[resource];
        for (std::size_t k = 0; k < costs.weight.size(); ++k) {
            gains[resource][k] = nearestMultiple(left, costs.weight[k]);
            left -= gains[resource][k] * costs.weight[k];
        }
    }
    return gains;
}

} // namespace quarterstep
