// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/ranking.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace quarterstep
{

namespace
{

constexpr double costRounding = 1e-9; ///< above the rounding of a cost added up in another order

double meanSupplied(const Need& need, const Supply& supply)
{
    double sum = 0.0;
    int eyes = 0;
    for (const Eye eye : bothEyes)
        if (need.eyes.of(eye).seeing) {
            sum += meanSphere(supply.power.of(eye)).value();
            ++eyes;
        }
    return eyes > 0 ? sum / eyes : 0.0;
}

bool enough(const Query& query, std::size_t right, std::size_t left)
{
    return right != left || !query.options.onlyAvailable || query.stock[right].available() >= 2;
}

std::vector<Part> mountedParts(std::size_t frame, std::size_t right, std::size_t left)
{
    return {{frame, PartSide::frame}, {right, PartSide::right}, {left, PartSide::left}};
}

/// Mark to which a lens is turned, 0 = none.
double markOf(const StockLine& lens, const SpheroCylinder& power)
{
    return lens.anyAxis && power.cylinder != Dioptres{} ? power.axis.value() : 0.0;
}

void sortByKey(std::vector<Judged>& judged)
{
    std::sort(judged.begin(), judged.end(), [](const Judged& a, const Judged& b) { return a.key < b.key; });
}

} // namespace

std::vector<std::vector<Part>> Makings::ways(const Query& query) const
{
    std::vector<std::vector<Part>> all;
    for (const std::size_t line : pairs)
        all.push_back({{line, PartSide::pair}});
    for (const std::size_t frame : frames)
        for (const std::size_t right : lenses.right)
            for (const std::size_t left : lenses.left)
                if (enough(query, right, left))
                    all.push_back(mountedParts(frame, right, left));
    return all;
}

std::vector<Part> Makings::firstWay(const Query& query) const
{
    if (!pairs.empty())
        return {{pairs.front(), PartSide::pair}};
    if (frames.empty())
        return {};
    for (const std::size_t right : lenses.right)
        for (const std::size_t left : lenses.left)
            if (enough(query, right, left))
                return mountedParts(frames.front(), right, left);
    return {};
}

std::vector<Judged> Ranking::keyed(const Supply& supply, const Makings& makings, const RankKey& key,
                                   bool fails) const
{
    std::vector<Judged> all;
    const auto add = [&](std::vector<Part> parts, Makings alike) {
        Judged judged{key, std::move(parts), supply, std::move(alike), meanSupplied(query_.need, supply)};
        nameParts(judged.key, query_.stock, query_.options, judged.parts);
        if (fails) { // misses go by cost and name alone
            judged.key.scarcity = 0.0;
            judged.key.parts = 0;
        }
        all.push_back(std::move(judged));
    };
    if (query_.options.everyLine) {
        for (auto& parts : makings.ways(query_))
            add(std::move(parts), {});
    } else if (auto parts = makings.firstWay(query_); !parts.empty()) {
        add(std::move(parts), makings);
    }
    return all;
}

double Failures::limit() const
{
    if (most_ == 0)
        return -1.0;
    return costs_.size() < most_ ? std::numeric_limits<double>::infinity() : costs_.top();
}

bool Failures::admits(double cost) const
{
    return cost <= limit() + costRounding;
}

void Failures::add(Judged judged)
{
    costs_.push(judged.key.cost);
    if (costs_.size() > most_)
        costs_.pop();
    all_.push_back(std::move(judged));
}

bool Ranking::judge(const Supply& supply, const Makings& makings)
{
    judgeInto(fit_, query_.need, supply, query_.profile);
    if (!fit_.acceptable() && !fit_.onTrial()) {
        fail(fit_.cost, supply, makings);
        return false;
    }
    for (auto& judged : keyed(supply, makings, fitKey(query_.need, query_.profile, fit_), false))
        ranked_.push_back(std::move(judged));
    return true;
}

bool Ranking::anyAcceptable() const
{
    return std::any_of(ranked_.begin(), ranked_.end(),
                       [](const Judged& judged) { return !judged.key.onTrial; });
}

bool Ranking::failsNear(double cost) const
{
    return failed_.admits(cost);
}

void Ranking::keepNear(Failures& failures, double cost, const Supply& supply, const Makings& makings)
{
    RankKey key;
    key.cost = cost;
    if (failures.admits(cost))
        for (auto& judged : keyed(supply, makings, key, true))
            failures.add(std::move(judged));
}

void Ranking::fail(double cost, const Supply& supply, const Makings& makings)
{
    keepNear(failed_, cost, supply, makings);
}

void Ranking::miss(double cost, const Supply& supply, const Makings& makings)
{
    keepNear(misses_, cost, supply, makings);
}

void Ranking::judgeForMiss(double cost, const Supply& supply, const Makings& makings)
{
    if (!misses_.admits(cost))
        return;
    judgeInto(fit_, query_.need, supply, query_.profile);
    if (!fit_.acceptable() && !fit_.onTrial())
        miss(fit_.cost, supply, makings);
}

double Ranking::missLimit() const
{
    return misses_.limit() + costRounding;
}

void Ranking::restartMisses()
{
    misses_ = failed_;
}

bool Ranking::settled(double cost)
{
    const long step = costStepOf(cost - costRounding);
    if (settled_ || query_.options.everyLine || query_.options.everyRanked || step == lookedAtStep_)
        return settled_;
    lookedAtStep_ = step;
    const Judged* first = nullptr;
    std::size_t before = 0;
    for (const auto& judged : ranked_)
        if (!judged.key.onTrial && judged.key.costStep < step) {
            ++before;
            if (first == nullptr || judged.key < first->key)
                first = &judged;
        }
    if (before == 0 || before < query_.options.most)
        return false;
    const double size = std::abs(first->meanSphere);
    const auto any = [&](auto wanted) {
        return std::any_of(ranked_.begin(), ranked_.end(), [&](const Judged& judged) {
            return !judged.key.onTrial && judged.key.costStep < step && wanted(std::abs(judged.meanSphere));
        });
    };
    settled_ = query_.options.most < 3 || (any([&](double other) { return weakerThan(other, size); }) &&
                                           any([&](double other) { return strongerThan(other, size); }));
    return settled_;
}

Candidate Ranking::candidateOf(Judged& judged) const
{
    Candidate candidate;
    candidate.fit = quarterstep::judge(query_.need, judged.supply, query_.profile);
    if (!query_.options.everyRanked)
        nameSources(candidate.fit, query_.profile);
    candidate.supply = std::move(judged.supply);
    candidate.parts = std::move(judged.parts);
    if (candidate.parts.size() == 3)
        candidate.mountedAxis = {markOf(query_.stock[candidate.parts[1].line], candidate.supply.power.right),
                                 markOf(query_.stock[candidate.parts[2].line], candidate.supply.power.left)};
    if (query_.options.alike) {
        candidate.alike = judged.makings.ways(query_);
        if (!candidate.alike.empty())
            candidate.alike.erase(candidate.alike.begin()); // the parts named above
    }
    return candidate;
}

CandidateLists Ranking::lists()
{
    CandidateLists lists;
    lists.anyStockedPower = !ranked_.empty() || !misses_.all().empty();
    sortByKey(ranked_);
    sortByKey(misses_.all());
    std::vector<double> sizes;
    sizes.reserve(ranked_.size());
    for (const auto& judged : ranked_)
        sizes.push_back(std::abs(judged.meanSphere));
    const bool all = query_.options.everyLine || query_.options.everyRanked;
    const auto most = all ? ranked_.size() : query_.options.most;
    for (const std::size_t place : shortList(sizes, most))
        lists.ranked.push_back(candidateOf(ranked_[place]));
    for (std::size_t i = 0; i < std::min(misses_.all().size(), query_.options.most); ++i)
        lists.misses.push_back(candidateOf(misses_.all()[i]));
    return lists;
}

} // namespace quarterstep
