// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/auditing/sampling.hpp"

#include "core/auditing/rates.hpp"

#include <algorithm>
#include <set>

namespace quarterstep
{

namespace
{

std::uint64_t nextRandom(std::uint64_t& state)
{
    state += 0x9E3779B97F4A7C15U;
    std::uint64_t mixed = state;
    mixed = (mixed ^ (mixed >> 30U)) * 0xBF58476D1CE4E5B9U;
    mixed = (mixed ^ (mixed >> 27U)) * 0x94D049BB133111EBU;
    return mixed ^ (mixed >> 31U);
}

/// Even among 0 … most: what would lean is drawn again.
std::uint64_t evenUpTo(std::uint64_t most, std::uint64_t& state)
{
    const std::uint64_t count = most + 1;
    const std::uint64_t fair = UINT64_MAX - UINT64_MAX % count;
    std::uint64_t draw = nextRandom(state);
    while (draw >= fair)
        draw = nextRandom(state);
    return draw % count;
}

} // namespace

double acceptedAt(const SamplingPlan& plan, double share)
{
    return binomialUpTo(plan.allowed, plan.sample, share);
}

PlanRisks risksOf(const SamplingPlan& plan, double fine, double bad)
{
    return {1.0 - acceptedAt(plan, fine), acceptedAt(plan, bad)};
}

SamplingPlan planFor(int sample, double fine, double bad)
{
    SamplingPlan best{sample, 0};
    double least = 2.0;
    for (int allowed = 0; allowed < sample; ++allowed) {
        const auto risks = risksOf({sample, allowed}, fine, bad);
        const double larger = std::max(risks.provider, risks.consumer);
        if (larger < least) {
            least = larger;
            best.allowed = allowed;
        }
    }
    return best;
}

std::vector<std::size_t> drawn(std::size_t lot, std::size_t sample, std::uint64_t seed)
{
    std::uint64_t state = seed;
    std::set<std::size_t> places;
    const std::size_t count = std::min(lot, sample);
    for (std::size_t last = lot - count; last < lot; ++last)
        if (!places.insert(static_cast<std::size_t>(evenUpTo(last, state))).second)
            places.insert(last);
    return {places.begin(), places.end()};
}

} // namespace quarterstep
