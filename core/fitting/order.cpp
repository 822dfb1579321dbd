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

double meanSupplied(const Need& need, const Candidate& candidate)
{
    double sum = 0.0;
    int eyes = 0;
    for (const Eye eye : bothEyes)
        if (need.eyes.of(eye).seeing) {
            sum += meanSphere(candidate.supply.power.of(eye)).value();
            ++eyes;
        }
    return eyes > 0 ? sum / eyes : 0.0;
}

/// Keeps `most` in order: the first, the best weaker and the best stronger neighbour always, then whoever
/// ranks highest.
void shorten(const Need& need, std::vector<Candidate>& ranked, std::size_t most)
{
    if (ranked.size() <= most || most < 3)
        return;
    const double first = std::abs(meanSupplied(need, ranked.front()));
    const auto place = [&](auto wanted) {
        return static_cast<std::size_t>(std::find_if(ranked.begin(), ranked.end(), wanted) - ranked.begin());
    };
    std::set<std::size_t> kept{
        0, place([&](const Candidate& c) { return std::abs(meanSupplied(need, c)) < first - 1e-6; }),
        place([&](const Candidate& c) { return std::abs(meanSupplied(need, c)) > first + 1e-6; })};
    kept.erase(ranked.size()); // no such neighbour
    for (std::size_t i = 1; kept.size() < most; ++i)
        kept.insert(i);
    std::vector<Candidate> shortList;
    shortList.reserve(kept.size());
    for (const std::size_t i : kept)
        shortList.push_back(std::move(ranked[i]));
    ranked = std::move(shortList);
}

struct Keyed {
    RankKey key;
    Candidate candidate;
};

std::vector<Candidate> sorted(std::vector<Keyed> keyed)
{
    std::sort(keyed.begin(), keyed.end(), [](const Keyed& a, const Keyed& b) { return a.key < b.key; });
    std::vector<Candidate> candidates;
    candidates.reserve(keyed.size());
    for (auto& one : keyed)
        candidates.push_back(std::move(one.candidate));
    return candidates;
}

} // namespace

RankKey rankKey(const Need& need, std::span<const StockLine> stock, const Profile& profile,
                const CandidateOptions& options, const Candidate& candidate)
{
    const Fit& fit = candidate.fit;
    RankKey key;
    key.onTrial = fit.onTrial();
    key.costStep = steps(fit.cost, 0.02);
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
    key.scarcity = scarcityOf(options, candidate.parts);
    key.cost = fit.cost;
    key.parts = candidate.parts.size();
    for (const auto& part : candidate.parts)
        key.name += stock[part.line].name + ' ';
    return key;
}

CandidateLists orderCandidates(const Need& need, std::span<const StockLine> stock, const Profile& profile,
                               const CandidateOptions& options, std::vector<Candidate> found)
{
    CandidateLists lists;
    lists.anyStockedPower = !found.empty();
    std::vector<Keyed> ranked;
    std::vector<Keyed> misses;
    for (auto& candidate : found) {
        auto key = rankKey(need, stock, profile, options, candidate);
        if (candidate.fit.acceptable() || candidate.fit.onTrial()) {
            ranked.push_back({std::move(key), std::move(candidate)});
            continue;
        }
        RankKey byCost;
        byCost.cost = key.cost;
        byCost.name = std::move(key.name);
        misses.push_back({std::move(byCost), std::move(candidate)});
    }
    lists.ranked = sorted(std::move(ranked));
    lists.misses = sorted(std::move(misses));
    if (!options.everyLine)
        shorten(need, lists.ranked, options.most);
    if (lists.misses.size() > options.most)
        lists.misses.resize(options.most);
    return lists;
}

} // namespace quarterstep
