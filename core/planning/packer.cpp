// SPDX-License-Identifier: GPL-3.0-or-later
// Stale gains are looked at again only at the top (Minoux M, Accelerated greedy algorithms, 1978). Where
// everything is ready-made the served needs of a scenario are the rank of a matching: the gain of a pack
// never grows, so the lazy way gives the same packs as the plain one.
#include "core/planning/packer.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <queue>

namespace quarterstep
{

namespace
{

constexpr double spareWeight = 0.03;

struct Worth {
    double worth = 0.0;
    double gain = 0.0;
    std::size_t move = 0;
    bool operator<(const Worth& other) const
    {
        return worth != other.worth ? worth < other.worth : move > other.move;
    }
};

} // namespace

Packer::Packer(const PackingProblem& problem, const std::vector<Scenario>& scenarios)
    : problem_(problem), scenarios_(scenarios), wanted_(problem.onHand.size(), 0.0), moves_(movesOf(problem))
{
    for (const auto& scenario : scenarios) {
        needs_ += static_cast<double>(scenario.size());
        for (const auto need : scenario)
            for (const auto& choice : problem.needs[need].choices)
                for (const auto resource : choice.used())
                    wanted_[resource] += 1.0 / static_cast<double>(problem.needs[need].choices.size());
    }
    start({});
}

void Packer::start(const std::vector<int>& packs)
{
    packs_ = packs;
    packs_.resize(problem_.offers.size(), 0);
    spending_ = spendingOf(problem_, packs_);
    pieces_ = piecesWith(problem_, packs_);
    std::vector<std::pair<std::uint32_t, int>> all;
    for (std::uint32_t resource = 0; resource < pieces_.size(); ++resource)
        if (pieces_[resource] > 0)
            all.emplace_back(resource, pieces_[resource]);
    states_.clear();
    for (const auto& scenario : scenarios_) {
        states_.emplace_back(problem_.needs, scenario, problem_.onHand.size());
        states_.back().addAll(all);
        states_.back().makeRoom();
    }
}

void Packer::fill(std::vector<CurvePoint>* curve, Draw* draw, const std::function<bool(double)>& goOn)
{
    std::vector<double> favour(moves_.moves.size(), 1.0);
    if (draw != nullptr)
        for (auto& factor : favour)
            factor = std::exp(0.3 * draw->normal());
    if (curve != nullptr)
        curve->push_back({spending_.cost, share(), packs_});
    while (fillOnce(curve, favour, goOn) && moves_.bundles) { // a bundle may open what was worth nothing
    }
}

/// True when something was bought.
bool Packer::fillOnce(std::vector<CurvePoint>* curve, const std::vector<double>& favour,
                      const std::function<bool(double)>& goOn)
{
    bool bought = false;
    std::priority_queue<Worth> queue;
    for (std::size_t move = 0; move < moves_.moves.size(); ++move)
        queue.push({std::numeric_limits<double>::infinity(), 0.0, move});
    while (!queue.empty()) {
        const auto top = queue.top();
        queue.pop();
        const auto& move = moves_.moves[top.move];
        if (!fits(move))
            continue;
        const double gain = gainOf(move);
        if (gain <= 0.0)
            continue;
        const double worth = favour[top.move] * (gain + spareOf(move)) / move.share;
        if (!queue.empty() && worth < queue.top().worth) {
            queue.push({worth, gain, top.move});
            continue;
        }
        buy(move);
        bought = true;
        if (curve != nullptr)
            curve->push_back({spending_.cost, share(), packs_});
        const double budget = std::max(1.0, static_cast<double>(problem_.limits.budget));
        if (goOn && !goOn(static_cast<double>(spending_.cost) / budget))
            return false;
        queue.push({worth, gain, top.move});
    }
    return bought;
}

double Packer::share() const
{
    double served = 0.0;
    for (const auto& state : states_)
        served += state.served();
    return needs_ > 0.0 ? served / needs_ : 0.0;
}

double Packer::value() const
{
    const auto draws = static_cast<double>(states_.size());
    double spare = 0.0;
    for (std::size_t resource = 0; resource < pieces_.size(); ++resource)
        for (int piece = 1; piece <= pieces_[resource] && wanted_[resource] > 0.0; ++piece)
            spare += std::min(1.0, wanted_[resource] / (draws * piece));
    return share() + (needs_ > 0.0 ? spareWeight * draws * spare / needs_ : 0.0);
}

bool Packer::fits(const PackingMove& move) const
{
    for (const auto& [offer, count] : move.packs)
        if (packs_[offer] + count > problem_.offers[offer].most)
            return false;
    auto sum = spending_;
    addSpending(sum, move.spending);
    return isWithin(sum, problem_.limits);
}

double Packer::gainOf(const PackingMove& move)
{
    double gain = 0.0;
    for (auto& state : states_) {
        state.mark();
        gain += state.addAll(move.pieces);
        state.undo();
    }
    return gain;
}

/// Between moves that serve the same on the draws, the one whose lines more people could use for each piece:
/// the next people are not those of the draws. Weighs a thirtieth of a person a piece at most.
double Packer::spareOf(const PackingMove& move) const
{
    const auto draws = static_cast<double>(states_.size());
    double spare = 0.0;
    for (const auto& [resource, count] : move.pieces)
        spare += count * std::min(1.0, wanted_[resource] / (draws * (1.0 + pieces_[resource])));
    return spareWeight * draws * spare;
}

void Packer::buy(const PackingMove& move)
{
    for (const auto& [resource, count] : move.pieces)
        pieces_[resource] += count;
    for (auto& state : states_) {
        state.addAll(move.pieces);
        state.makeRoom();
    }
    for (const auto& [offer, count] : move.packs)
        packs_[offer] += count;
    addSpending(spending_, move.spending);
}

} // namespace quarterstep
