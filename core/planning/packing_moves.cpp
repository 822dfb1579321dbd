// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/packing_moves.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace quarterstep
{

namespace
{

class Mover
{
  public:
    explicit Mover(const PackingProblem& problem) : problem_(problem), wantedBy_(problem.onHand.size(), 0)
    {
        for (const auto& need : problem.needs)
            for (const auto& choice : need.choices)
                for (const auto resource : choice.used())
                    ++wantedBy_[resource];
        for (std::size_t offer = 0; offer < problem.offers.size(); ++offer) {
            addMove({{offer, 1}});
            const auto& sold = problem.offers[offer];
            if (sold.holds.size() != 1)
                continue;
            const auto [known, isNew] = cheapest_.emplace(sold.holds.front().first, offer);
            if (!isNew && eachOf(sold) < eachOf(problem.offers[known->second]))
                known->second = offer;
        }
        for (const auto& need : problem.needs)
            addBundlesOf(need);
    }

    PackingMoves found;

  private:
    static double eachOf(const Offer& offer)
    {
        return static_cast<double>(offer.cost) / std::max(1, offer.pieces());
    }

    void addMove(std::vector<std::pair<std::size_t, int>> packs)
    {
        PackingMove move;
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
        found.moves.push_back(std::move(move));
    }

    /// Frame, right and left lens of the best choices of a need, and of those whose parts most others could
    /// use. A part that nobody offers must be on hand.
    void addBundlesOf(const Waiting& need)
    {
        constexpr std::size_t best = 4;
        constexpr std::size_t shared = 3;
        std::vector<std::pair<int, std::size_t>> bundles; // how few want its parts, place among the choices
        for (std::size_t i = 0; i < need.choices.size(); ++i) {
            if (need.choices[i].parts != 3)
                continue;
            int wanted = 0;
            for (const auto resource : need.choices[i].used())
                wanted += wantedBy_[resource];
            bundles.emplace_back(-wanted, i);
        }
        found.bundles = found.bundles || !bundles.empty();
        const auto add = [&](std::size_t most) {
            for (std::size_t i = 0; i < std::min(most, bundles.size()); ++i) {
                const auto& choice = need.choices[bundles[i].second];
                addBundle(choice, 0);
                addBundle(choice, 1); // a frame may be there already
            }
        };
        add(best);
        std::sort(bundles.begin(), bundles.end());
        add(shared);
    }

    void addBundle(const Choice& choice, std::size_t firstPart)
    {
        std::map<std::size_t, int> counted;
        for (std::size_t part = firstPart; part < 3; ++part) {
            const auto resource = choice.resources.at(part);
            if (const auto offer = cheapest_.find(resource); offer != cheapest_.end())
                ++counted[offer->second];
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

    const PackingProblem& problem_;
    std::vector<int> wantedBy_;                     ///< ways of all needs together, of each resource
    std::map<std::uint32_t, std::size_t> cheapest_; ///< offer of one resource alone
    std::set<std::vector<std::pair<std::size_t, int>>> seen_;
};

} // namespace

PackingMoves movesOf(const PackingProblem& problem)
{
    return Mover(problem).found;
}

void addSpending(Spending& sum, const Spending& more)
{
    sum.cost += more.cost;
    sum.weight += more.weight;
    sum.pieces += more.pieces;
}

} // namespace quarterstep
