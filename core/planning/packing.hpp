// SPDX-License-Identifier: GPL-3.0-or-later
// What goes into the boxes: packs of a supplier under a budget, a weight and a number of boxes, together with
// what is on hand, so that most of the next people are served. Safety comes from scenarios, draws of the
// people who may come, never from one average.
#pragma once

#include "core/planning/choices.hpp"
#include "core/planning/draw.hpp"

#include <functional>
#include <optional>

namespace quarterstep
{

/// One pack as a supplier sells it: pieces of one line, or of several (assorted).
struct Offer {
    std::string name;
    std::vector<std::pair<std::uint32_t, int>> holds; ///< resource, pieces
    long cost = 0;                                    ///< of a pack, thousandths of the currency unit
    long weight = 0;                                  ///< of a pack, grams; 0 = not stated
    int most = 100000;                                ///< packs to be had

    [[nodiscard]] int pieces() const
    {
        int sum = 0;
        for (const auto& [resource, count] : holds)
            sum += count;
        return sum;
    }
};

/// The needs of the people who come on one draw, as places in the list of needs.
using Scenario = std::vector<std::uint32_t>;

struct PackingLimits {
    long budget = 0;            ///< thousandths
    std::optional<long> weight; ///< grams of what is bought
    std::optional<int> pieces;  ///< that fit into the boxes beside what is on hand
};

struct PackingProblem {
    std::vector<Waiting> needs; ///< choices over the resources of stock and supplier together
    std::vector<int> onHand;    ///< of each resource
    std::vector<Offer> offers;
    PackingLimits limits;
};

struct Spending {
    long cost = 0;
    long weight = 0;
    int pieces = 0;
};
[[nodiscard]] Spending spendingOf(const PackingProblem& problem, const std::vector<int>& packs); ///< in all
[[nodiscard]] bool isWithin(const Spending& spending, const PackingLimits& limits);
/// Pieces of each resource with these packs added to what is on hand.
[[nodiscard]] std::vector<int> piecesWith(const PackingProblem& problem, const std::vector<int>& packs);

struct CurvePoint {
    long spend = 0;
    double share = 0.0; ///< of the needs in the scenarios that were planned for
    std::vector<int> packs;
};

struct PackingPlan {
    std::vector<int> packs; ///< of each offer
    double share = 0.0;     ///< served of the needs in the scenarios that were planned for
    double greedyShare = 0.0;
    std::vector<int> greedyPacks;
    double bound = 1.0;            ///< no packs within the limits serve more of these scenarios
    std::vector<CurvePoint> curve; ///< by rising spend, of the greedy way
};

struct PackingEffort {
    int repairs = 40;     ///< rounds of taking packs out at random and filling up again
    int boundRounds = 40; ///< of cuts for the bound; 0 = no bound
    std::uint64_t seed = 1;
    /// Asked again and again with the part that is done, 0 to 1; false: no more is tried, and the best found
    /// by then comes back. Empty: nobody asks.
    std::function<bool(double done)> goOn;
};

/// Pure; the same question has the same answer.
[[nodiscard]] PackingPlan planPacking(const PackingProblem& problem, const std::vector<Scenario>& scenarios,
                                      const PackingEffort& effort);

/// What no packs within the limits can pass, as a share of the needs: a linear program over the packs with a
/// cut a scenario and round (Benders), lenses in frames included. `from`: packs within the limits to begin
/// at. `packs`: receives the best point found, in parts. `goOn` false: ends with the bound known by then.
[[nodiscard]] double packingBound(const PackingProblem& problem, const std::vector<Scenario>& scenarios,
                                  int rounds, const std::vector<int>& from, const std::function<bool()>& goOn,
                                  std::vector<double>& packs);

/// Served needs of each scenario with these pieces: everybody placed as well as can be, or first come.
struct Service {
    double served = 0.0; ///< mean over the scenarios of the share served
    double firstCome = 0.0;
    std::vector<double> shares; ///< by scenario, placed as well as can be
};
[[nodiscard]] Service serviceOf(const PackingProblem& problem, const std::vector<Scenario>& scenarios,
                                const std::vector<int>& pieces);

/// The point of a curve farthest above the straight line between its ends (Satopää V et al., Finding a
/// "kneedle" in a haystack, ICDCS Workshops 2011:166-171); 0 for fewer than three points.
[[nodiscard]] std::size_t kneeOf(const std::vector<CurvePoint>& curve);

// Baselines, each within the same limits.

/// Smallest quantity whose chance to cover demand reaches the ratio. `chances`: demand and its probability,
/// rising.
[[nodiscard]] int newsvendorQuantity(const std::vector<std::pair<int, double>>& chances, double ratio);
/// What a unit short costs against a unit over: (price - cost) / (price - salvage).
[[nodiscard]] double criticalRatio(double cost, double price, double salvage);

/// Everybody asks for the best line alone: each line bought up to the newsvendor quantity of its own demand,
/// one price of money for all lines so that the budget is spent (Hadley G, Whitin TM, Analysis of Inventory
/// Systems, 1963).
[[nodiscard]] std::vector<int> newsvendorPacks(const PackingProblem& problem,
                                               const std::vector<Scenario>& scenarios);
/// Each line bought up to its mean use by best line, all raised alike until the budget is spent.
[[nodiscard]] std::vector<int> keepLevelPacks(const PackingProblem& problem,
                                              const std::vector<Scenario>& scenarios);

} // namespace quarterstep
