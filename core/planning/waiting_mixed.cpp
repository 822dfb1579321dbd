// SPDX-License-Identifier: GPL-3.0-or-later
// Lines where a frame, a right and a left lens serve somebody together: choosing from such bundles is as hard
// as matching in three dimensions. Class after class is planned by a linear program and rounding
// (mixed_problem.hpp).
#include "core/planning/mixed_problem.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace quarterstep
{

namespace
{

double weightServed(const std::vector<std::int32_t>& choiceOf, const Aims& aims)
{
    double weight = 0.0;
    for (std::size_t i = 0; i < choiceOf.size(); ++i)
        weight += choiceOf[i] == nothingGiven ? 0.0 : aims.weightOf[i];
    return weight;
}

std::vector<ServiceFloor> floorsAmong(const std::vector<ServiceFloor>& floors, const std::vector<bool>& there)
{
    std::vector<ServiceFloor> kept;
    for (const auto& floor : floors) {
        ServiceFloor one{{}, floor.least};
        for (const auto person : floor.people)
            if (there[person])
                one.people.push_back(person);
        one.least = std::min(one.least, static_cast<int>(one.people.size()));
        if (one.least > 0)
            kept.push_back(std::move(one));
    }
    return kept;
}

/// Whose aims and choices are the same stand in an order of their own, so that the order of the table decides
/// nothing.
std::vector<std::size_t> ownOrder(const std::vector<Waiting>& line, const Aims& aims)
{
    std::vector<std::size_t> order(line.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto before = [](const Choice& a, const Choice& b) {
        return std::tie(a.loss, a.parts, a.resources) < std::tie(b.loss, b.parts, b.resources);
    };
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        if (aims.classOf[a] != aims.classOf[b])
            return aims.classOf[a] < aims.classOf[b];
        if (aims.weightOf[a] != aims.weightOf[b])
            return aims.weightOf[a] > aims.weightOf[b];
        const auto& one = line[a].choices;
        const auto& other = line[b].choices;
        return std::lexicographical_compare(one.begin(), one.end(), other.begin(), other.end(), before);
    });
    return order;
}

Aims inOrder(const Aims& aims, const std::vector<std::size_t>& order)
{
    Aims sorted = aims;
    std::vector<std::uint32_t> placeOf(order.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        sorted.classOf[i] = aims.classOf[order[i]];
        sorted.weightOf[i] = aims.weightOf[order[i]];
        placeOf[order[i]] = static_cast<std::uint32_t>(i);
    }
    for (auto& floor : sorted.floors)
        for (auto& person : floor.people)
            person = placeOf[person];
    return sorted;
}

LinePlan planSorted(const std::vector<Waiting>& line, const std::vector<int>& available,
                    const PlanOptions& options, const Aims& aims)
{
    std::vector<MixedMember> everybody;
    everybody.reserve(line.size());
    for (std::size_t i = 0; i < line.size(); ++i)
        everybody.push_back({i, static_cast<double>(aims.weightOf[i])});
    LinePlan plan;
    plan.proof.method = PlanMethod::linear;
    // Class after class: whoever was served counts more than the whole next class, and so stays served.
    MixedResult result;
    result.choiceOf.assign(line.size(), nothingGiven);
    for (int now = 0; now < aims.classes; ++now) {
        std::vector<MixedMember> members;
        std::vector<bool> there(line.size(), false);
        double ofThisClass = 1.0;
        for (std::size_t i = 0; i < line.size(); ++i)
            ofThisClass += aims.classOf[i] == now ? aims.weightOf[i] : 0.0;
        for (std::size_t i = 0; i < line.size(); ++i) {
            const bool kept = result.choiceOf[i] != nothingGiven;
            if (kept || aims.classOf[i] == now)
                members.push_back({i, kept ? ofThisClass : aims.weightOf[i]});
            there[i] = kept || aims.classOf[i] == now;
        }
        result = MixedProblem(line, available, aims, std::move(members), floorsAmong(aims.floors, there))
                     .solve(options);
    }
    plan.choiceOf = result.choiceOf;
    plan.proof.reached = weightServed(result.choiceOf, aims);
    const bool oneClass = aims.classes == 1;
    MixedProblem all(line, available, aims, everybody, {});
    auto prices = result.prices;
    if (!oneClass && options.proof)
        prices = all.solve(options).prices;
    plan.prices = prices.resource;
    plan.proof.bound = all.bound(prices);
    plan.proof.lossBound = all.lossBound(prices, plan.proof.reached);
    if (oneClass && result.proved) {
        plan.proof.bound = plan.proof.reached;
        plan.proof.method = PlanMethod::wholeNumbers;
    }
    if (options.gains)
        for (const double price : prices.resource)
            plan.oneMore.push_back({price, 0.0});
    return plan;
}

} // namespace

LinePlan planMixedLine(const std::vector<Waiting>& line, const std::vector<int>& available,
                       const PlanOptions& options, const Aims& aims)
{
    const auto order = ownOrder(line, aims);
    std::vector<Waiting> sorted;
    sorted.reserve(line.size());
    for (const auto place : order)
        sorted.push_back(line[place]);
    auto plan = planSorted(sorted, available, options, inOrder(aims, order));
    const auto choiceOf = plan.choiceOf;
    for (std::size_t i = 0; i < order.size(); ++i)
        plan.choiceOf[order[i]] = choiceOf[i];
    return plan;
}

} // namespace quarterstep
