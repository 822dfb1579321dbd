// SPDX-License-Identifier: GPL-3.0-or-later
// With x packs, scenario s serves at most the capacity of any cut of its network: needs outside the cut's
// reach, and the pieces of the resources inside it. The program picks x within the limits and one served
// number a scenario below all cuts known; where its point serves less than it says, a smallest cut there is
// the next to be known.
#include "core/planning/flow.hpp"
#include "core/planning/linear_program.hpp"
#include "core/planning/packing.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace quarterstep
{

namespace
{

constexpr double units = 1e6; ///< of capacity for a whole piece, so that parts of packs keep six digits

/// Needs of a scenario with the same choices together.
struct Group {
    std::vector<std::uint32_t> resources;
    int needs = 0;
};

struct Network {
    std::vector<Group> groups;
    int always = 0; ///< needs that bundles could serve: taken as served
    int never = 0;
};

Network networkOf(const PackingProblem& problem, const Scenario& scenario)
{
    Network network;
    std::map<std::vector<std::uint32_t>, int> counts;
    for (const auto need : scenario) {
        std::vector<std::uint32_t> resources;
        bool bundle = false;
        for (const auto& choice : problem.needs[need].choices) {
            bundle = bundle || choice.parts > 1;
            resources.push_back(choice.resources[0]);
        }
        if (bundle) {
            ++network.always;
            continue;
        }
        std::sort(resources.begin(), resources.end());
        if (resources.empty())
            ++network.never;
        else
            ++counts[resources];
    }
    for (auto& [resources, count] : counts)
        network.groups.push_back({resources, count});
    return network;
}

/// A cut: served <= fixed + Σ over `resources` of their pieces.
struct Cut {
    double flow = 0.0;
    double fixed = 0.0;
    std::vector<std::uint32_t> resources;
};

Cut smallestCut(const Network& network, const std::vector<double>& pieces)
{
    std::vector<CapacityArc> arcs;
    const auto groups = static_cast<std::uint32_t>(network.groups.size());
    const auto resourceNode = [&](std::uint32_t resource) { return 2 + groups + resource; };
    std::int64_t most = 0;
    for (const auto& group : network.groups)
        most += group.needs;
    most *= static_cast<std::int64_t>(units);
    for (std::uint32_t g = 0; g < groups; ++g) {
        arcs.push_back({0, 2 + g, static_cast<std::int64_t>(units) * network.groups[g].needs});
        for (const auto resource : network.groups[g].resources)
            arcs.push_back({2 + g, resourceNode(resource), most});
    }
    for (std::uint32_t resource = 0; resource < pieces.size(); ++resource)
        arcs.push_back(
            {resourceNode(resource), 1, static_cast<std::int64_t>(std::llround(units * pieces[resource]))});
    const auto flow = maximumFlow(2 + groups + pieces.size(), arcs);
    Cut cut;
    cut.flow = static_cast<double>(flow.value) / units + network.always;
    cut.fixed = network.always;
    for (std::uint32_t g = 0; g < groups; ++g)
        if (!flow.onSourceSide[2 + g])
            cut.fixed += network.groups[g].needs;
    for (std::uint32_t resource = 0; resource < pieces.size(); ++resource)
        if (flow.onSourceSide[resourceNode(resource)])
            cut.resources.push_back(resource);
    return cut;
}

class Benders
{
  public:
    Benders(const PackingProblem& problem, const std::vector<Scenario>& scenarios) : problem_(problem)
    {
        for (const auto& scenario : scenarios) {
            networks_.push_back(networkOf(problem, scenario));
            needs_ += static_cast<double>(scenario.size());
        }
        const auto cost = program_.addRow(static_cast<double>(problem.limits.budget) / 1000.0);
        const auto weight =
            program_.addRow(static_cast<double>(problem.limits.weight.value_or(1'000'000'000)) / 1000.0);
        const auto pieces = program_.addRow(problem.limits.pieces.value_or(1'000'000'000));
        offersOf_.resize(problem.onHand.size());
        for (const auto& offer : problem.offers) {
            packs_.push_back(program_.addColumn(0.0, offer.most,
                                                {{cost, static_cast<double>(offer.cost) / 1000.0},
                                                 {weight, static_cast<double>(offer.weight) / 1000.0},
                                                 {pieces, static_cast<double>(offer.pieces())}}));
            for (const auto& [resource, count] : offer.holds)
                offersOf_[resource].emplace_back(packs_.back(), count);
        }
        for (std::size_t s = 0; s < scenarios.size(); ++s)
            served_.push_back(program_.addColumn(
                1.0, static_cast<double>(scenarios[s].size() - static_cast<std::size_t>(networks_[s].never)),
                {}));
    }

    /// The bound after at most `rounds`, as a share of the needs. Cuts are made halfway between the program's
    /// point and the best point known (Ben-Ameur W, Neto J, Networks 2007;49:3-17): they bite deeper there.
    double run(int rounds, std::vector<double>& point)
    {
        double bound = 1.0;
        double bestReached = 0.0;
        if (!point.empty())
            bestReached = reachedAt(point);
        for (int round = 0; round < rounds && program_.solve(); ++round) {
            bound = std::min(bound, needs_ > 0.0 ? program_.best() / needs_ : 0.0);
            if (program_.best() - bestReached <= 1e-4 * (1.0 + needs_))
                break;
            std::vector<double> packs;
            packs.reserve(packs_.size());
            for (const auto column : packs_)
                packs.push_back(std::max(0.0, program_.value(column)));
            auto between = packs;
            for (std::size_t i = 0; i < between.size() && !point.empty(); ++i)
                between[i] = (between[i] + point[i]) / 2.0;
            auto outcome = cutAt(between, packs);
            if (outcome.added == 0 && !point.empty()) {
                between = packs;
                outcome = cutAt(packs, packs);
            }
            if (point.empty() || outcome.reached > bestReached) {
                bestReached = outcome.reached;
                point = between;
            }
            if (outcome.added == 0)
                break;
        }
        return bound;
    }

  private:
    struct Outcome {
        double reached = 0.0; ///< served at the point, parts allowed
        int added = 0;
    };

    [[nodiscard]] std::vector<double> piecesAt(const std::vector<double>& packs) const
    {
        std::vector<double> pieces;
        pieces.reserve(problem_.onHand.size());
        for (std::size_t resource = 0; resource < problem_.onHand.size(); ++resource)
            pieces.push_back(problem_.onHand[resource]);
        for (std::size_t i = 0; i < packs.size(); ++i)
            for (const auto& [resource, count] : problem_.offers[i].holds)
                pieces[resource] += count * packs[i];
        return pieces;
    }

    [[nodiscard]] double reachedAt(const std::vector<double>& packs) const
    {
        const auto pieces = piecesAt(packs);
        double reached = 0.0;
        for (const auto& network : networks_)
            reached += smallestCut(network, pieces).flow;
        return reached;
    }

    /// Smallest cuts at `packs`; those that the program's point `solved` is above go in.
    Outcome cutAt(const std::vector<double>& packs, const std::vector<double>& solved)
    {
        const auto pieces = piecesAt(packs);
        const auto there = piecesAt(solved);
        Outcome outcome;
        std::vector<std::pair<double, std::vector<ColumnEntry>>> rows;
        for (std::size_t s = 0; s < networks_.size(); ++s) {
            const auto cut = smallestCut(networks_[s], pieces);
            outcome.reached += cut.flow;
            double fixed = cut.fixed;
            double allowed = cut.fixed;
            std::map<std::size_t, double> factors;
            for (const auto resource : cut.resources) {
                fixed += problem_.onHand[resource];
                allowed += there[resource];
                for (const auto& [column, count] : offersOf_[resource])
                    factors[column] -= count;
            }
            if (program_.value(served_[s]) <= allowed + 1e-6)
                continue;
            std::vector<ColumnEntry> entries{{served_[s], 1.0}};
            for (const auto& [column, factor] : factors)
                entries.push_back({column, factor});
            rows.emplace_back(fixed, std::move(entries));
        }
        for (const auto& [fixed, entries] : rows)
            program_.addRow(fixed, entries);
        outcome.added = static_cast<int>(rows.size());
        return outcome;
    }

    const PackingProblem& problem_;
    std::vector<Network> networks_;
    double needs_ = 0.0;
    LinearProgram program_;
    std::vector<std::size_t> packs_;
    std::vector<std::size_t> served_;
    std::vector<std::vector<std::pair<std::size_t, int>>> offersOf_; ///< column, pieces; of each resource
};

} // namespace

double packingBound(const PackingProblem& problem, const std::vector<Scenario>& scenarios, int rounds,
                    std::vector<double>& packs)
{
    return Benders(problem, scenarios).run(rounds, packs);
}

} // namespace quarterstep
