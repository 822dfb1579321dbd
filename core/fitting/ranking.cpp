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

double meanSupplied(const Need& need, const PerEye<SpheroCylinder>& power)
{
    double sum = 0.0;
    int eyes = 0;
    for (const Eye eye : bothEyes)
        if (need.eyes.of(eye).seeing) {
            sum += meanSphere(power.of(eye)).value();
            ++eyes;
        }
    return eyes > 0 ? sum / eyes : 0.0;
}

bool enough(const Query& query, std::size_t right, std::size_t left)
{
    return right != left || !query.options.onlyAvailable || query.stock[right].available() >= 2;
}

/// Mark to which a lens is turned, 0 = none.
double markOf(const StockLine& lens, const SpheroCylinder& power)
{
    return lens.anyAxis && power.cylinder != Dioptres{} ? power.axis.value() : 0.0;
}

/// Calls `act` for the usable lines until it says that it has enough.
template <class Act>
bool eachUsable(const Query& query, const StockIndex::Lines& lines, Act act)
{
    return std::any_of(lines.begin(), lines.end(),
                       [&](std::uint32_t line) { return query.usable(line) && act(line); });
}

} // namespace

namespace
{

template <class Act>
void eachWay(const Query& query, const Makings& makings, Act act)
{
    if (makings.pairs != nullptr)
        eachUsable(query, *makings.pairs, [&](std::size_t line) { return act(Way(line)); });
    if (makings.frames != nullptr)
        eachUsable(query, *makings.frames, [&](std::size_t frame) {
            return eachUsable(query, *makings.lenses.right, [&](std::size_t right) {
                return eachUsable(query, *makings.lenses.left, [&](std::size_t left) {
                    return enough(query, right, left) && act(Way(frame, right, left));
                });
            });
        });
}

} // namespace

std::vector<Way> Makings::ways(const Query& query) const
{
    std::vector<Way> all;
    eachWay(query, *this, [&](const Way& way) {
        all.push_back(way);
        return false;
    });
    return all;
}

Way Makings::firstWay(const Query& query) const
{
    Way first;
    eachWay(query, *this, [&](const Way& way) {
        first = way;
        return true;
    });
    return first;
}

Supply Makings::supply(const Query& query) const
{
    const auto& lines = pairs != nullptr ? *pairs : *frames;
    std::size_t first = lines.front();
    eachUsable(query, lines, [&](std::size_t line) {
        first = line;
        return true;
    });
    if (pairs != nullptr)
        return readyMadeSupply(query.stock[first], query.settings);
    Supply supply = frameSupply(query.stock[first], query.settings);
    supply.power = mounted;
    return supply;
}

template <class Act>
void Ranking::eachKeyed(const Makings& makings, const RankKey& key, bool fails, Act act) const
{
    const auto add = [&](const Way& way) {
        Judged judged{key, way, makings, 0.0};
        if (!fails) { // misses go by cost and name alone
            judged.key.scarcity = scarcityOf(query_.options, way.parts());
            judged.key.parts = way.parts().size();
        }
        const auto& first = query_.stock[way.parts().front().line];
        judged.meanSphere =
            meanSupplied(query_.need, makings.pairs != nullptr ? first.power : makings.mounted);
        act(std::move(judged));
    };
    if (query_.options.everyLine) {
        for (const auto& way : makings.ways(query_))
            add(way);
    } else if (const auto way = makings.firstWay(query_); !way.parts().empty()) {
        add(way);
    }
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

bool Ranking::judge(const Supply& supply, const Makings& makings, const KnownSupply* known)
{
    judgeBriefly(fit_, query_.need, supply, query_.profile, known);
    if (!fit_.acceptable() && !fit_.onTrial()) {
        fail(fit_.cost, makings);
        return false;
    }
    eachKeyed(makings, fitKey(query_.need, query_.profile, fit_), false,
              [&](Judged judged) { ranked_.push_back(std::move(judged)); });
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

void Ranking::keepNear(Failures& failures, double cost, const Makings& makings)
{
    if (!failures.admits(cost))
        return;
    RankKey key;
    key.cost = cost;
    eachKeyed(makings, key, true, [&](Judged judged) { failures.add(std::move(judged)); });
}

void Ranking::fail(double cost, const Makings& makings)
{
    keepNear(failed_, cost, makings);
}

void Ranking::miss(double cost, const Makings& makings)
{
    keepNear(misses_, cost, makings);
}

void Ranking::judgeForMiss(double cost, const Supply& supply, const Makings& makings,
                           const KnownSupply* known)
{
    if (!misses_.admits(cost))
        return;
    judgeBriefly(fit_, query_.need, supply, query_.profile, known);
    if (!fit_.acceptable() && !fit_.onTrial())
        miss(fit_.cost, makings);
}

/// Names are long to make and seldom decide: only for the two that are equal in everything else.
bool Ranking::before(Judged& a, Judged& b) const
{
    const auto named = [&](Judged& judged) {
        if (judged.key.name.empty())
            judged.key.name = nameOf(query_.stock, judged.way.parts());
    };
    const auto order = a.key.withoutName() <=> b.key.withoutName();
    if (order != 0)
        return order < 0;
    named(a);
    named(b);
    return a.key.name < b.key.name;
}

std::vector<Judged*> Ranking::inOrder(std::vector<Judged>& judged) const
{
    std::vector<Judged*> order;
    order.reserve(judged.size());
    for (auto& one : judged)
        order.push_back(&one);
    std::sort(order.begin(), order.end(), [&](Judged* a, Judged* b) { return before(*a, *b); });
    return order;
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
    Judged* first = nullptr;
    std::size_t cheaper = 0;
    for (auto& judged : ranked_)
        if (!judged.key.onTrial && judged.key.costStep < step) {
            ++cheaper;
            if (first == nullptr || before(judged, *first))
                first = &judged;
        }
    if (cheaper == 0 || cheaper < query_.options.most)
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

Candidate Ranking::candidateOf(const Judged& judged) const
{
    const auto partsOf = [](const Way& way) {
        return std::vector<Part>(way.parts().begin(), way.parts().end());
    };
    Candidate candidate;
    candidate.supply = judged.makings.supply(query_);
    candidate.fit = quarterstep::judge(query_.need, candidate.supply, query_.profile);
    if (!query_.options.everyRanked)
        nameSources(candidate.fit, query_.profile);
    candidate.parts = partsOf(judged.way);
    if (candidate.parts.size() == 3)
        candidate.mountedAxis = {markOf(query_.stock[candidate.parts[1].line], candidate.supply.power.right),
                                 markOf(query_.stock[candidate.parts[2].line], candidate.supply.power.left)};
    if (query_.options.alike && !query_.options.everyLine) {
        const auto ways = judged.makings.ways(query_);
        for (std::size_t i = 1; i < ways.size(); ++i) // the first is named above
            candidate.alike.push_back(partsOf(ways[i]));
    }
    return candidate;
}

CandidateLists Ranking::lists()
{
    CandidateLists lists;
    lists.anyStockedPower = !ranked_.empty() || !misses_.all().empty();
    const auto ranked = inOrder(ranked_);
    const auto misses = inOrder(misses_.all());
    std::vector<double> sizes;
    sizes.reserve(ranked.size());
    for (const auto* judged : ranked)
        sizes.push_back(std::abs(judged->meanSphere));
    const bool all = query_.options.everyLine || query_.options.everyRanked;
    const auto most = all ? ranked.size() : query_.options.most;
    for (const std::size_t place : shortList(sizes, most))
        lists.ranked.push_back(candidateOf(*ranked[place]));
    for (std::size_t i = 0; i < std::min(misses.size(), query_.options.most); ++i)
        lists.misses.push_back(candidateOf(*misses[i]));
    return lists;
}

} // namespace quarterstep
