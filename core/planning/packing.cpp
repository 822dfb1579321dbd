// SPDX-License-Identifier: GPL-3.0-or-later
// Greedy, then the point of the linear bound rounded down and filled up, then repairs while they help: each
// pack out in turn and some out by lot, filled up again.
#include "core/planning/packer.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

/// About 40 points of a curve, its ends among them.
void thinOut(std::vector<CurvePoint>& curve)
{
    constexpr std::size_t most = 40;
    if (curve.size() <= most)
        return;
    std::vector<CurvePoint> kept;
    kept.reserve(most);
    for (std::size_t i = 0; i < most; ++i)
        kept.push_back(std::move(curve[i * (curve.size() - 1) / (most - 1)]));
    curve = std::move(kept);
}

std::vector<int> withSomeOut(const std::vector<int>& packs, Draw& draw)
{
    auto fewer = packs;
    int all = 0;
    for (const int count : packs)
        all += count;
    const int out = std::min(all, static_cast<int>(draw.below(static_cast<std::size_t>(all) / 3 + 2)) + 1);
    for (int i = 0; i < out; ++i) {
        auto place = static_cast<int>(draw.below(static_cast<std::size_t>(std::max(1, all - i))));
        for (auto& count : fewer) {
            if (place < count) {
                --count;
                break;
            }
            place -= count;
        }
    }
    return fewer;
}

/// What was done of what there is to do, for whoever waits.
class Asked
{
  public:
    explicit Asked(const PackingEffort& effort) : goOn_(effort.goOn) {}
    bool operator()(double done)
    {
        stopped_ = stopped_ || (goOn_ && !goOn_(std::clamp(done, 0.0, 1.0)));
        return !stopped_;
    }
    [[nodiscard]] bool stopped() const { return stopped_; }

  private:
    const std::function<bool(double)>& goOn_;
    bool stopped_ = false;
};

constexpr double greedyPart = 0.3; ///< of the work, roughly
constexpr double boundPart = 0.4;

class Planner
{
  public:
    Planner(const PackingProblem& problem, const std::vector<Scenario>& scenarios,
            const PackingEffort& effort)
        : problem_(problem), scenarios_(scenarios), effort_(effort), packer_(problem, scenarios),
          asked_(effort)
    {
        for (const auto& scenario : scenarios)
            needs_ += static_cast<double>(scenario.size());
    }

    PackingPlan plan;

    void run()
    {
        packer_.fill(&plan.curve, nullptr, [&](double spent) { return asked_(greedyPart * spent); });
        plan.packs = plan.greedyPacks = packer_.packs();
        plan.share = plan.greedyShare = packer_.share();
        value_ = packer_.value();
        if (effort_.boundRounds > 0 && !asked_.stopped())
            bound();
        const auto most = std::min(static_cast<double>(effort_.repairs), mostPlaced / needs_);
        takeOutInTurn(most);
        takeOutByLot(most);
        plan.bound = std::max(plan.bound, plan.share);
        thinOut(plan.curve);
    }

  private:
    void keepBetter()
    {
        if (packer_.value() <= value_ + 1e-12)
            return;
        value_ = packer_.value();
        plan.share = packer_.share();
        plan.packs = packer_.packs();
    }

    void bound()
    {
        std::vector<double> parts;
        double rounds = 0.0;
        plan.bound = packingBound(
            problem_, scenarios_, effort_.boundRounds, plan.packs,
            [&] { return asked_(greedyPart + boundPart * rounds++ / effort_.boundRounds); }, parts);
        std::vector<int> below;
        below.reserve(parts.size());
        for (const double packs : parts)
            below.push_back(static_cast<int>(std::floor(packs + 1e-6)));
        if (asked_.stopped() || !isWithin(spendingOf(problem_, below), problem_.limits))
            return;
        packer_.start(below);
        packer_.fill(nullptr);
        keepBetter();
    }

    [[nodiscard]] bool goOn(double done)
    {
        return plan.share < plan.bound - 1e-9 &&
               asked_(greedyPart + boundPart + (1.0 - greedyPart - boundPart) * done);
    }

    /// One pack of each offer out, for whatever serves more in its place.
    void takeOutInTurn(double most)
    {
        double tried = 0.0;
        bool better = true;
        while (better) {
            better = false;
            for (std::size_t offer = 0; offer < problem_.offers.size(); ++offer) {
                if (plan.packs[offer] == 0)
                    continue;
                if (tried >= most / 2.0 || !goOn(0.5 * tried / most))
                    return;
                ++tried;
                auto fewer = plan.packs;
                --fewer[offer];
                const double before = value_;
                packer_.start(fewer);
                packer_.fill(nullptr);
                keepBetter();
                better = better || value_ > before;
            }
        }
    }

    void takeOutByLot(double most)
    {
        Draw draw(effort_.seed, 77);
        for (int i = 0; i < static_cast<int>(most / 2.0) && goOn(0.5 + 0.5 * i / most); ++i) {
            packer_.start(withSomeOut(plan.packs, draw));
            packer_.fill(nullptr, i % 3 == 0 ? nullptr : &draw);
            packer_.fill(nullptr);
            keepBetter();
        }
    }

    static constexpr double mostPlaced = 6e5; ///< needs placed again in all repairs together

    const PackingProblem& problem_;
    const std::vector<Scenario>& scenarios_;
    const PackingEffort& effort_;
    Packer packer_;
    Asked asked_;
    double value_ = 0.0;
    double needs_ = 1.0;
};

} // namespace

PackingPlan planPacking(const PackingProblem& problem, const std::vector<Scenario>& scenarios,
                        const PackingEffort& effort)
{
    Planner planner(problem, scenarios, effort);
    planner.run();
    return planner.plan;
}

std::size_t kneeOf(const std::vector<CurvePoint>& curve)
{
    if (curve.size() < 3)
        return 0;
    const auto& first = curve.front();
    const auto& last = curve.back();
    const double width = std::max(1.0, static_cast<double>(last.spend - first.spend));
    const double height = last.share - first.share;
    std::size_t knee = 0;
    double farthest = 0.0;
    for (std::size_t i = 0; i < curve.size(); ++i) {
        const double line = first.share + height * static_cast<double>(curve[i].spend - first.spend) / width;
        if (curve[i].share - line > farthest) {
            farthest = curve[i].share - line;
            knee = i;
        }
    }
    return knee;
}

} // namespace quarterstep
