// SPDX-License-Identifier: GPL-3.0-or-later
// What plans are compared with: the quantity of the newsvendor for each resource alone, and keep levels.
#include "core/planning/packing.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace quarterstep
{

namespace
{

/// What is asked of each resource on every draw when everybody asks for the best choice alone.
std::vector<std::vector<int>> askedFor(const PackingProblem& problem, const std::vector<Scenario>& scenarios)
{
    std::vector<std::vector<int>> asked(problem.onHand.size(), std::vector<int>(scenarios.size(), 0));
    for (std::size_t s = 0; s < scenarios.size(); ++s)
        for (const auto need : scenarios[s])
            if (const auto& choices = problem.needs[need].choices; !choices.empty())
                for (const auto resource : choices.front().used())
                    ++asked[resource][s];
    return asked;
}

/// The offer with the least cost a piece for each resource.
std::map<std::uint32_t, std::size_t> cheapestOffers(const PackingProblem& problem)
{
    std::map<std::uint32_t, std::size_t> cheapest;
    const auto each = [&](std::size_t offer) {
        return static_cast<double>(problem.offers[offer].cost) / std::max(1, problem.offers[offer].pieces());
    };
    for (std::size_t offer = 0; offer < problem.offers.size(); ++offer)
        for (const auto& [resource, count] : problem.offers[offer].holds) {
            const auto [found, isNew] = cheapest.emplace(resource, offer);
            if (!isNew && each(offer) < each(found->second))
                found->second = offer;
        }
    return cheapest;
}

/// Packs so that each resource holds at least so many; then what is left of the limits goes round once more.
std::vector<int> packsFor(const PackingProblem& problem, const std::vector<int>& wanted)
{
    std::vector<int> packs(problem.offers.size(), 0);
    for (const auto& [resource, offer] : cheapestOffers(problem)) {
        const int lacking = wanted[resource] - problem.onHand[resource];
        int held = 0;
        for (const auto& [other, count] : problem.offers[offer].holds)
            if (other == resource)
                held = count;
        if (lacking > 0 && held > 0)
            packs[offer] =
                std::max(packs[offer], std::min(problem.offers[offer].most, (lacking + held / 2) / held));
    }
    return packs;
}

/// The largest level whose packs are within the limits, by halving; `packsAt` grows with the level.
template <class PacksAt>
std::vector<int> largestWithin(const PackingProblem& problem, double most, PacksAt packsAt)
{
    double low = 0.0;
    double high = most;
    auto best = packsAt(low);
    if (!isWithin(spendingOf(problem, best), problem.limits))
        return std::vector<int>(problem.offers.size(), 0);
    constexpr int halvings = 50;
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2.0;
        auto packs = packsAt(middle);
        if (isWithin(spendingOf(problem, packs), problem.limits)) {
            low = middle;
            best = std::move(packs);
        } else {
            high = middle;
        }
    }
    return best;
}

} // namespace

double criticalRatio(double cost, double price, double salvage)
{
    return (price - cost) / (price - salvage);
}

int newsvendorQuantity(const std::vector<std::pair<int, double>>& chances, double ratio)
{
    double sum = 0.0;
    for (const auto& [demand, chance] : chances) {
        sum += chance;
        if (sum >= ratio - 1e-12)
            return demand;
    }
    return chances.empty() ? 0 : chances.back().first;
}

std::vector<int> newsvendorPacks(const PackingProblem& problem, const std::vector<Scenario>& scenarios)
{
    const auto asked = askedFor(problem, scenarios);
    const auto cheapest = cheapestOffers(problem);
    std::vector<std::vector<std::pair<int, double>>> chances;
    for (const auto& draws : asked) {
        std::map<int, double> counts;
        for (const int demand : draws)
            counts[demand] += 1.0 / static_cast<double>(std::max<std::size_t>(1, draws.size()));
        chances.emplace_back(counts.begin(), counts.end());
    }
    // A person served is worth `value`, one piece costs its price: ratio = (value - price) / value.
    long dearest = 1;
    for (const auto& offer : problem.offers)
        dearest = std::max(dearest, offer.cost);
    return largestWithin(problem, 1e4, [&](double level) {
        std::vector<int> wanted(asked.size(), 0);
        for (const auto& [resource, offer] : cheapest) {
            const auto& sold = problem.offers[offer];
            const double price = static_cast<double>(sold.cost) / std::max(1, sold.pieces());
            const double value = level * static_cast<double>(dearest) / 100.0;
            if (value > price)
                wanted[resource] = newsvendorQuantity(chances[resource], criticalRatio(price, value, 0.0));
        }
        return packsFor(problem, wanted);
    });
}

std::vector<int> keepLevelPacks(const PackingProblem& problem, const std::vector<Scenario>& scenarios)
{
    const auto asked = askedFor(problem, scenarios);
    std::vector<double> mean;
    for (const auto& draws : asked) {
        double sum = 0.0;
        for (const int demand : draws)
            sum += demand;
        mean.push_back(sum / static_cast<double>(std::max<std::size_t>(1, draws.size())));
    }
    return largestWithin(problem, 20.0, [&](double level) {
        std::vector<int> wanted;
        wanted.reserve(mean.size());
        for (const double use : mean)
            wanted.push_back(static_cast<int>(std::lround(level * use)));
        return packsFor(problem, wanted);
    });
}

} // namespace quarterstep
