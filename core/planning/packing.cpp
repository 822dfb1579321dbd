// SPDX-License-Identifier: GPL-3.0-or-later
// Greedy by served needs for what a pack takes of the limits, with stale gains looked at again only at the
// top (Minoux M, Accelerated greedy algorithms, 1978), then repairs: some packs out at random, filled up
// again, kept when better. Where everything is ready-made the served needs of a scenario are the rank of a
// matching: the gain of a pack never grows, so the lazy way gives the same packs as the plain one.
#include "core/planning/packing.hpp"

#include "core/planning/service_state.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <queue>
#include <set>

namespace quarterstep
{

namespace
{

/// Offers bought together: one, or the parts of lenses in a frame.
struct Move {
    std::vector<std::pair<std::size_t, int>> packs;    ///< offer, packs
    std::vector<std::pair<std::uint32_t, int>> pieces; ///< resource, pieces
    Spending spending;
    double share = 0.0; ///< of the limits that it takes, the largest
};

void addSpending(Spending& sum, const Spending& more)
{
    sum.cost += more.cost;
    sum.weight += more.weight;
    sum.pieces += more.pieces;
}

class Packer
{
  public:
    Packer(const PackingProblem& problem, const std::vector<Scenario>& scenarios)
        : problem_(problem), scenarios_(scenarios)
    {
        for (const auto& scenario : scenarios)
            needs_ += static_cast<double>(scenario.size());
        wanted_.assign(problem.onHand.size(), 0.0);
        for (const auto& scenario : scenarios)
            for (const auto need : scenario)
                for (const auto& choice : problem.needs[need].choices)
                    for (const auto resource : choice.used())
                        wanted_[resource] += 1.0 / static_cast<double>(problem.needs[need].choices.size());
        for (std::size_t offer = 0; offer < problem.offers.size(); ++offer)
            addMove({{offer, 1}});
        addBundles();
        start({});
    }

    /// Begins anew with these packs.
    void start(const std::vector<int>& packs)
    {
        states_.clear();
        for (const auto& scenario : scenarios_)
            states_.emplace_back(problem_.needs, scenario, problem_.onHand.size());
        packs_.assign(problem_.offers.size(), 0);
        if (!packs.empty())
            packs_ = packs;
        spending_ = spendingOf(problem_, packs_);
        pieces_ = piecesWith(problem_, packs_);
        const auto& pieces = pieces_;
        for (auto& state : states_)
            for (std::uint32_t resource = 0; resource < pieces.size(); ++resource)
                if (pieces[resource] > 0)
                    state.add(resource, pieces[resource]);
    }

    /// Buys until nothing more can be bought that serves anybody. Every purchase goes into the curve. With a
    /// draw, some moves seem dearer and some cheaper than they are, so that another order comes about.
    void fill(std::vector<CurvePoint>* curve, Draw* draw = nullptr)
    {
        std::vector<double> favour(moves_.size(), 1.0);
        if (draw != nullptr)
            for (auto& factor : favour)
                factor = std::exp(0.3 * draw->normal());
        struct Entry {
            double worth;
            double gain;
            std::size_t move;
            bool operator<(const Entry& other) const
            {
                return worth != other.worth ? worth < other.worth : move > other.move;
            }
        };
        if (curve != nullptr)
            curve->push_back({spending_.cost, share(), packs_});
        bool bought = true;
        while (bought) { // once for what is ready-made; bundles may open more
            bought = false;
            std::priority_queue<Entry> queue;
            for (std::size_t move = 0; move < moves_.size(); ++move)
                queue.push({std::numeric_limits<double>::infinity(), 0.0, move});
            while (!queue.empty()) {
                auto top = queue.top();
                queue.pop();
                if (!fits(moves_[top.move]))
                    continue;
                const double gain = gainOf(moves_[top.move]);
                if (gain <= 0.0)
                    continue;
                const double worth =
                    favour[top.move] * (gain + spareOf(moves_[top.move])) / moves_[top.move].share;
                if (!queue.empty() && worth < queue.top().worth) {
                    queue.push({worth, gain, top.move});
                    continue;
                }
                buy(moves_[top.move]);
                bought = hasBundles_;
                if (curve != nullptr)
                    curve->push_back({spending_.cost, share(), packs_});
                queue.push({worth, gain, top.move});
            }
        }
    }

    [[nodiscard]] double share() const
    {
        double served = 0.0;
        for (const auto& state : states_)
            served += state.served();
        return needs_ > 0.0 ? served / needs_ : 0.0;
    }
    [[nodiscard]] const std::vector<int>& packs() const { return packs_; }

  private:
    void addMove(std::vector<std::pair<std::size_t, int>> packs)
    {
        Move move;
        std::map<std::uint32_t, int> pieces;
        for (const auto& [offer, count] : packs) {
            const auto& sold = problem_.offers[offer];
            addSpending(move.spending, {sold.cost * count, sold.weight * count, sold.pieces() * count});
            for (const auto& [resource, held] : sold.holds)
                pieces[resource] += held * count;
        }
        move.pieces.assign(pieces.begin(), pieces.end());
        move.packs = std::move(packs);
        const auto& limits = problem_.limits;
        const auto part = [](double used, double limit) { return used / std::max(1.0, limit); };
        move.share =
            std::max(1e-9, part(static_cast<double>(move.spending.cost), static_cast<double>(limits.budget)));
        if (limits.weight)
            move.share = std::max(move.share, part(static_cast<double>(move.spending.weight),
                                                   static_cast<double>(*limits.weight)));
        if (limits.pieces)
            move.share = std::max(move.share, part(move.spending.pieces, *limits.pieces));
        moves_.push_back(std::move(move));
    }

    /// Frame, right and left lens of the best such choices of each need, bought together: a part alone serves
    /// nobody. A part that nobody offers must be on hand.
    void addBundles()
    {
        std::map<std::uint32_t, std::size_t> cheapest; // offer of one resource alone
        for (std::size_t offer = 0; offer < problem_.offers.size(); ++offer)
            if (const auto& sold = problem_.offers[offer]; sold.holds.size() == 1) {
                const auto [found, isNew] = cheapest.emplace(sold.holds.front().first, offer);
                if (!isNew && sold.cost < problem_.offers[found->second].cost)
                    found->second = offer;
            }
        constexpr int choicesLookedAt = 4;
        for (const auto& need : problem_.needs) {
            int looked = 0;
            for (const auto& choice : need.choices) {
                if (choice.parts != 3)
                    continue;
                hasBundles_ = true;
                if (++looked > choicesLookedAt)
                    break;
                addBundle(choice, 0, cheapest);
                addBundle(choice, 1, cheapest); // a frame may be there already
            }
        }
    }

    void addBundle(const Choice& choice, std::size_t firstPart,
                   const std::map<std::uint32_t, std::size_t>& cheapest)
    {
        std::map<std::size_t, int> counted;
        for (std::size_t part = firstPart; part < 3; ++part) {
            const auto resource = choice.resources.at(part);
            if (const auto found = cheapest.find(resource); found != cheapest.end())
                ++counted[found->second];
            else if (problem_.onHand[resource] == 0)
                return;
        }
        for (auto& [offer, count] : counted) // two pieces may come in one pack
            if (problem_.offers[offer].pieces() >= count)
                count = 1;
        std::vector<std::pair<std::size_t, int>> packs(counted.begin(), counted.end());
        if (packs.size() > 1 && seen_.insert(packs).second)
            addMove(std::move(packs));
    }

    [[nodiscard]] bool fits(const Move& move) const
    {
        for (const auto& [offer, count] : move.packs)
            if (packs_[offer] + count > problem_.offers[offer].most)
                return false;
        auto sum = spending_;
        addSpending(sum, move.spending);
        return isWithin(sum, problem_.limits);
    }

    double gainOf(const Move& move)
    {
        double gain = 0.0;
        for (auto& state : states_) {
            state.mark();
            gain += state.addAll(move.pieces);
            state.undo();
        }
        return gain;
    }

    /// Between moves that serve the same on the draws, the one whose lines more people could use for each
    /// piece: the next people are not those of the draws. Weighs a thirtieth of a person a piece at most.
    [[nodiscard]] double spareOf(const Move& move) const
    {
        constexpr double weight = 0.03;
        double spare = 0.0;
        for (const auto& [resource, count] : move.pieces) {
            const double each =
                wanted_[resource] / (static_cast<double>(states_.size()) * (1.0 + pieces_[resource]));
            spare += count * std::min(1.0, each);
        }
        return weight * static_cast<double>(states_.size()) * spare;
    }

    void buy(const Move& move)
    {
        for (const auto& [resource, count] : move.pieces)
            pieces_[resource] += count;
        for (auto& state : states_)
            state.addAll(move.pieces);
        for (const auto& [offer, count] : move.packs)
            packs_[offer] += count;
        addSpending(spending_, move.spending);
    }

    const PackingProblem& problem_;
    const std::vector<Scenario>& scenarios_;
    double needs_ = 0.0;
    std::vector<double>
        wanted_; ///< of each resource, each need shared out among its choices, all draws together
    std::vector<int> pieces_;
    std::vector<Move> moves_;
    std::set<std::vector<std::pair<std::size_t, int>>> seen_; ///< bundles
    bool hasBundles_ = false;
    std::vector<ServiceState> states_;
    std::vector<int> packs_;
    Spending spending_;
};

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

} // namespace

Spending spendingOf(const PackingProblem& problem, const std::vector<int>& packs)
{
    Spending sum;
    for (std::size_t i = 0; i < packs.size(); ++i) {
        sum.cost += problem.offers[i].cost * packs[i];
        sum.weight += problem.offers[i].weight * packs[i];
        sum.pieces += problem.offers[i].pieces() * packs[i];
    }
    return sum;
}

bool isWithin(const Spending& spending, const PackingLimits& limits)
{
    return spending.cost <= limits.budget && (!limits.weight || spending.weight <= *limits.weight) &&
           (!limits.pieces || spending.pieces <= *limits.pieces);
}

std::vector<int> piecesWith(const PackingProblem& problem, const std::vector<int>& packs)
{
    auto pieces = problem.onHand;
    for (std::size_t i = 0; i < packs.size(); ++i)
        for (const auto& [resource, count] : problem.offers[i].holds)
            pieces[resource] += count * packs[i];
    return pieces;
}

PackingPlan planPacking(const PackingProblem& problem, const std::vector<Scenario>& scenarios,
                        const PackingEffort& effort)
{
    PackingPlan plan;
    Packer packer(problem, scenarios);
    packer.fill(&plan.curve);
    plan.packs = plan.greedyPacks = packer.packs();
    plan.share = plan.greedyShare = packer.share();
    const auto keepBetter = [&] {
        if (packer.share() > plan.share + 1e-12) {
            plan.share = packer.share();
            plan.packs = packer.packs();
        }
    };
    if (effort.boundRounds > 0) {
        std::vector<double> parts(plan.packs.begin(), plan.packs.end());
        plan.bound = packingBound(problem, scenarios, effort.boundRounds, parts);
        if (!parts.empty()) {
            std::vector<int> below;
            below.reserve(parts.size());
            for (const double packs : parts)
                below.push_back(static_cast<int>(std::floor(packs + 1e-6)));
            if (isWithin(spendingOf(problem, below), problem.limits)) {
                packer.start(below);
                packer.fill(nullptr);
                keepBetter();
            }
        }
        plan.bound = std::max(plan.bound, plan.share);
    }
    Draw draw(effort.seed, 77);
    constexpr double mostPlaced = 3e5; // needs placed again in all repairs together
    std::size_t needs = 1;
    for (const auto& scenario : scenarios)
        needs += scenario.size();
    const int repairs = std::min(effort.repairs, static_cast<int>(mostPlaced / static_cast<double>(needs)));
    for (int i = 0; i < repairs && plan.share < plan.bound - 1e-9; ++i) {
        packer.start(withSomeOut(plan.packs, draw));
        packer.fill(nullptr, i % 3 == 0 ? nullptr : &draw);
        packer.fill(nullptr);
        keepBetter();
    }
    thinOut(plan.curve);
    return plan;
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

Service serviceOf(const PackingProblem& problem, const std::vector<Scenario>& scenarios,
                  const std::vector<int>& pieces)
{
    Service service;
    for (const auto& scenario : scenarios) {
        if (scenario.empty())
            continue;
        ServiceState state(problem.needs, scenario, pieces.size());
        std::vector<std::pair<std::uint32_t, int>> all;
        for (std::uint32_t resource = 0; resource < pieces.size(); ++resource)
            if (pieces[resource] > 0)
                all.emplace_back(resource, pieces[resource]);
        state.addAll(all);
        auto left = pieces;
        int firstCome = 0;
        for (const auto need : scenario)
            for (const auto& choice : problem.needs[need].choices) {
                const bool same = choice.parts == 3 && choice.resources[1] == choice.resources[2];
                const bool free = std::all_of(choice.used().begin(), choice.used().end(),
                                              [&](auto resource) { return left[resource] > 0; }) &&
                                  (!same || left[choice.resources[1]] > 1);
                if (!free)
                    continue;
                for (const auto resource : choice.used())
                    --left[resource];
                ++firstCome;
                break;
            }
        const auto count = static_cast<double>(scenario.size());
        service.shares.push_back(std::max(state.served(), firstCome) / count);
        service.firstCome += firstCome / count;
    }
    const auto scenariosSeen = static_cast<double>(std::max<std::size_t>(1, service.shares.size()));
    for (const double share : service.shares)
        service.served += share / scenariosSeen;
    service.firstCome /= scenariosSeen;
    return service;
}

} // namespace quarterstep
