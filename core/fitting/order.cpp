// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/order.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace quarterstep
{

namespace
{

constexpr double stepTolerance = 1e-9;

long steps(double size, double step)
{
    return static_cast<long>(std::floor(size / step + stepTolerance));
}

double scarcityOf(const CandidateOptions& options, const std::vector<Part>& parts)
{
    double most = 0.0;
    for (const auto& part : parts)
        if (part.line < options.scarcity.size())
            most = std::max(most, options.scarcity[part.line]);
    return most;
}

} // namespace

long costStepOf(double cost)
{
    return steps(cost, 0.02);
}

bool weakerThan(double size, double other)
{
    return size < other - 1e-6;
}

bool strongerThan(double size, double other)
{
    return size > other + 1e-6;
}

std::vector<std::size_t> shortList(const std::vector<double>& sizes, std::size_t most)
{
    std::set<std::size_t> kept;
    const auto keep = [&](auto wanted) {
        const auto found = std::find_if(sizes.begin(), sizes.end(), wanted);
        if (found != sizes.end())
            kept.insert(static_cast<std::size_t>(found - sizes.begin()));
    };
    if (most >= 3 && !sizes.empty()) {
        kept.insert(0);
        keep([&](double size) { return weakerThan(size, sizes.front()); });
        keep([&](double size) { return strongerThan(size, sizes.front()); });
    }
    for (std::size_t i = 0; i < sizes.size() && kept.size() < most; ++i)
        kept.insert(i);
    return {kept.begin(), kept.end()};
}

RankKey fitKey(const Need& need, const Profile& profile, const Fit& fit)
{
    RankKey key;
    key.onTrial = fit.onTrial();
    key.costStep = costStepOf(fit.cost);
    key.cautions = fit.cautions;
    key.worseSideEyes = fit.worseSideEyes;
    if (fit.eyes.right && fit.eyes.left)
        key.balanceStep = steps(std::abs(fit.eyes.right->error.m - fit.eyes.left->error.m), 0.25);
    for (const auto& result : fit.criteria) {
        if (result.criterion == Criterion::horizontalPrism) {
            const auto& limit = profile.of(Criterion::horizontalPrism).bands.fits;
            key.prismStep = steps(result.measured / (limit ? limit->value : 1.0), 0.25);
        }
        if (result.criterion == Criterion::frameSize)
            key.sizeSteps = result.measured;
    }
    key.baseOutAtNear = need.nearWork() && fit.prism.horizontal < -stepTolerance;
    key.cost = fit.cost;
    return key;
}

void nameParts(RankKey& key, std::span<const StockLine> stock, const CandidateOptions& options,
               const std::vector<Part>& parts)
{
    key.scarcity = scarcityOf(options, parts);
    key.parts = parts.size();
    for (const auto& part : parts) {
        key.name += stock[part.line].name;
        key.name += ' ';
    }
}

RankKey rankKey(const Need& need, std::span<const StockLine> stock, const Profile& profile,
                const CandidateOptions& options, const Candidate& candidate)
{
    auto key = fitKey(need, profile, candidate.fit);
    nameParts(key, stock, options, candidate.parts);
    return key;
}

} // namespace quarterstep
