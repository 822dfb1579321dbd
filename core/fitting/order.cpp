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
    const auto& prismLimit = profile.of(Criterion::horizontalPrism).bands.fits;
    key.prismStep = steps(fit.prismSize / (prismLimit ? prismLimit->value : 1.0), 0.25);
    key.sizeSteps = fit.sizeSteps;
    key.baseOutAtNear = need.nearWork() && fit.prism.horizontal < -stepTolerance;
    key.cost = fit.cost;
    return key;
}

double scarcityOf(const CandidateOptions& options, std::span<const Part> parts)
{
    double most = 0.0;
    for (const auto& part : parts)
        if (part.line < options.scarcity.size())
            most = std::max(most, options.scarcity[part.line]);
    return most;
}

std::string nameOf(std::span<const StockLine> stock, std::span<const Part> parts)
{
    std::string name;
    for (const auto& part : parts) {
        name += stock[part.line].name;
        name += ' ';
    }
    return name;
}

void nameParts(RankKey& key, std::span<const StockLine> stock, const CandidateOptions& options,
               std::span<const Part> parts)
{
    key.scarcity = scarcityOf(options, parts);
    key.parts = parts.size();
    key.name = nameOf(stock, parts);
}

RankKey rankKey(const Need& need, std::span<const StockLine> stock, const Profile& profile,
                const CandidateOptions& options, const Candidate& candidate)
{
    auto key = fitKey(need, profile, candidate.fit);
    nameParts(key, stock, options, candidate.parts);
    return key;
}

} // namespace quarterstep
