// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/session/exhaustive_search.hpp"

#include "core/fitting/order.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

bool usable(const StockLine& line, const Settings& settings, const CandidateOptions& options)
{
    return (line.origin != Origin::used || settings.useUsedPairs) &&
           (!options.onlyAvailable || line.available() > 0);
}

bool samePower(const SpheroCylinder& a, const SpheroCylinder& b)
{
    return minusCylinderForm(a) == minusCylinderForm(b);
}

bool sameBox(const StockLine& a, const StockLine& b)
{
    const auto centres = [](const StockLine& line) {
        const bool fromFrame = !line.centres && line.kind == LineKind::frame && line.frame.lens > 0.0;
        return fromFrame ? std::optional(line.frame.lens + line.frame.bridge) : line.centres;
    };
    return centres(a) == centres(b) && a.heightsDiffer == b.heightsDiffer &&
           a.frame.sizeClass == b.frame.sizeClass &&
           (a.centresFrom == CentresFrom::assumed) == (b.centresFrom == CentresFrom::assumed);
}

bool sameShapes(const StockLine& a, const StockLine& b)
{
    return std::is_permutation(a.takes.begin(), a.takes.end(), b.takes.begin(), b.takes.end()) &&
           a.axisStep == b.axisStep;
}

/// Whether two candidates are the same to the eye.
bool alike(const Candidate& a, const Candidate& b, const std::vector<StockLine>& stock)
{
    const auto& first = stock[a.parts[0].line];
    const auto& second = stock[b.parts[0].line];
    if (a.parts.size() != b.parts.size() || !sameBox(first, second) ||
        !samePower(a.supply.power.right, b.supply.power.right) ||
        !samePower(a.supply.power.left, b.supply.power.left))
        return false;
    return a.parts.size() == 3 ? sameShapes(first, second)
                               : first.use == second.use && first.bifocalAddition == second.bifocalAddition;
}

/// With one seeing eye the fellow gets a lens of a group that holds the same lines: of the same mounted power
/// on either side.
bool oneGroup(const Need& need, const std::vector<StockLine>& stock, const Settings& settings,
              const CandidateOptions& options, const std::vector<Part>& parts)
{
    const auto group = [&](Eye eye, std::size_t place) {
        std::vector<std::size_t> lines;
        const auto powerOf = [&](std::size_t line) -> std::optional<SpheroCylinder> {
            if (stock[line].kind != LineKind::lens || !usable(stock[line], settings, options))
                return {};
            for (std::size_t fellow = 0; fellow < stock.size(); ++fellow) {
                const auto right = eye == Eye::right ? line : fellow;
                const auto left = eye == Eye::right ? fellow : line;
                const std::vector<Part> made{parts[0], {right, PartSide::right}, {left, PartSide::left}};
                if (const auto supply = supplyOf(made, stock, need, settings))
                    return supply->power.of(eye);
            }
            return {};
        };
        const auto wanted = powerOf(place);
        for (std::size_t line = 0; line < stock.size(); ++line)
            if (const auto power = powerOf(line); power && samePower(*power, *wanted))
                lines.push_back(line);
        return lines;
    };
    return group(Eye::right, parts[1].line) == group(Eye::left, parts[2].line);
}

class Exhaustive
{
  public:
    Exhaustive(const Need& need, const std::vector<StockLine>& stock, const Profile& profile,
               const Settings& settings, const CandidateOptions& options)
        : need_(need), stock_(stock), profile_(profile), settings_(settings), options_(options)
    {
    }

    std::vector<Candidate> found()
    {
        const bool bifocal = need_.purpose == Purpose::bifocal;
        for (std::size_t i = 0; i < stock_.size(); ++i)
            if (stock_[i].kind == LineKind::readyMade && stock_[i].bifocalAddition.has_value() == bifocal &&
                usable(stock_[i], settings_, options_))
                add({{i, PartSide::pair}});
        for (std::size_t frame = 0; frame < stock_.size() && !bifocal; ++frame)
            if (stock_[frame].kind == LineKind::frame && usable(stock_[frame], settings_, options_))
                addMounted(frame);
        return std::move(found_);
    }

  private:
    void addMounted(std::size_t frame)
    {
        for (std::size_t right = 0; right < stock_.size(); ++right)
            for (std::size_t left = 0; left < stock_.size(); ++left) {
                if (stock_[right].kind != LineKind::lens || stock_[left].kind != LineKind::lens ||
                    !usable(stock_[right], settings_, options_) || !usable(stock_[left], settings_, options_))
                    continue;
                if (right == left && options_.onlyAvailable && stock_[right].available() < 2)
                    continue;
                add({{frame, PartSide::frame}, {right, PartSide::right}, {left, PartSide::left}});
            }
    }

    void add(std::vector<Part> parts)
    {
        const auto supply = supplyOf(parts, stock_, need_, settings_);
        if (!supply ||
            (parts.size() == 3 && !need_.pairLevel() && !oneGroup(need_, stock_, settings_, options_, parts)))
            return;
        Candidate candidate;
        candidate.parts = std::move(parts);
        candidate.supply = *supply;
        if (!options_.everyLine)
            for (auto& other : found_)
                if (alike(other, candidate, stock_)) {
                    other.alike.push_back(candidate.parts);
                    return;
                }
        candidate.fit = judge(need_, candidate.supply, profile_);
        found_.push_back(std::move(candidate));
    }

    const Need& need_;
    const std::vector<StockLine>& stock_;
    const Profile& profile_;
    const Settings& settings_;
    const CandidateOptions& options_;
    std::vector<Candidate> found_;
};

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

/// Ranked (acceptable, then on trial) and misses by cost, cut to the short list.
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
    if (!options.everyLine) {
        std::vector<double> sizes;
        sizes.reserve(lists.ranked.size());
        for (const auto& candidate : lists.ranked)
            sizes.push_back(std::abs(meanSupplied(need, candidate)));
        std::vector<Candidate> kept;
        for (const std::size_t place : shortList(sizes, options.most))
            kept.push_back(std::move(lists.ranked[place]));
        lists.ranked = std::move(kept);
    }
    if (lists.misses.size() > options.most)
        lists.misses.resize(options.most);
    return lists;
}

} // namespace

CandidateLists exhaustiveSearch(const Need& need, const std::vector<StockLine>& stock, const Profile& profile,
                                const Settings& settings, const CandidateOptions& options)
{
    return orderCandidates(need, stock, profile, options,
                           Exhaustive(need, stock, profile, settings, options).found());
}

} // namespace quarterstep
