// SPDX-License-Identifier: GPL-3.0-or-later
// Who should get which pair, so that most people are served, and of these plans one with the least expected
// loss of acuity and prism, and of these one that spares what few others could replace.
// Ready-made pairs alone are a transport problem, solved exactly (flow.hpp). Lenses that snap into frames tie
// three groups together: a linear bound, a plan, and the gap between them.
#pragma once

#include "core/planning/choices.hpp"
#include "core/planning/flow.hpp"

#include <optional>

namespace quarterstep
{

/// Who comes first when not all can be served. Each turns into classes that are served one before the other.
enum class Priority {
    firstPairs, ///< before second pairs
    children,   ///< before adults
    worstSight  ///< by the loss without any pair, in steps of 0.3 logMAR
};

/// A stated choice about a group: what one person of it counts, and how many of it are served at least.
struct GroupChoice {
    std::optional<Purpose> purpose;
    std::optional<bool> child;
    int weight = 1;     ///< 1 to 100
    double floor = 0.0; ///< share of those of the group who wait, 0 to 1; the first group that fits counts
};

struct PlanOptions {
    std::vector<Priority> priorities; ///< the first named matters most
    std::vector<GroupChoice> groups;
    bool proof = true;  ///< work out the bound also where classes make it a question of its own
    bool gains = false; ///< work out what one more of each line would change
    int nodes = 300;    ///< of the search after the linear bound; ten times as many for small lines
    /// Of each resource, from a plan before (LinePlan::prices), to begin near its end: lines with lenses in
    /// frames alone. Changes the time, and among equally good plans which one is found.
    std::vector<double> pricesBefore;
};

enum class PlanMethod { flow, linear, wholeNumbers };

/// How sure it is that no plan serves more.
struct Proof {
    double bound = 0.0; ///< no plan serves more people (with weights: no plan has more weight)
    double reached = 0.0;
    double lossBound = 0.0; ///< logMAR: no plan that serves as many loses less
    PlanMethod method = PlanMethod::flow;
    int coarserBy = 1;
    [[nodiscard]] double gap() const { return bound > 0.0 ? (bound - reached) / bound : 0.0; }
    [[nodiscard]] bool proved() const { return bound <= reached; }
};

struct OneMore {
    double served = 0.0;     ///< people, or weight
    double lossLogMar = 0.0; ///< less loss with the same number served
};

struct LinePlan {
    std::vector<std::int32_t> choiceOf; ///< of each in the line, nothingGiven = -1
    std::vector<int> classOf;           ///< of each in the line, 0 first
    int served = 0;
    double lossLogMar = 0.0; ///< of the served
    double prism = 0.0;      ///< sum of sizes, Δ
    Proof proof;
    std::vector<OneMore> oneMore; ///< of each resource, when asked for
    std::vector<double> prices;   ///< of each resource in the linear program; empty where there was none
};

/// Plans for a line. `available` of each resource, after what is kept for people already told. Pure; the
/// order of the people changes no total.
[[nodiscard]] LinePlan planLine(const std::vector<Waiting>& line, const std::vector<int>& available,
                                const PlanOptions& options);

/// Each takes the best that is left, in the order of the line, first pairs before second pairs.
[[nodiscard]] LinePlan firstComeLine(const std::vector<Waiting>& line, const std::vector<int>& available,
                                     bool secondPairsLast);

/// How scarce a resource is, 0 to 15: people who could use it for each piece, in steps of a doubling's
/// third.
[[nodiscard]] std::vector<int> scarcityOf(const std::vector<Waiting>& line,
                                          const std::vector<int>& available);

/// Classes, weights and floors of a line, made once for both ways to plan.
struct Aims {
    std::vector<int> classOf;
    int classes = 1;
    std::vector<int> weightOf;
    std::vector<ServiceFloor> floors;
    std::vector<int> scarcity; ///< of each resource
};
[[nodiscard]] Aims aimsOf(const std::vector<Waiting>& line, const std::vector<int>& available,
                          const PlanOptions& options);

/// The way for lines where somebody could be given lenses in a frame (waiting_mixed.cpp).
[[nodiscard]] LinePlan planMixedLine(const std::vector<Waiting>& line, const std::vector<int>& available,
                                     const PlanOptions& options, const Aims& aims);

/// Adds up served, loss and prism of a plan.
void addUp(const std::vector<Waiting>& line, LinePlan& plan);
[[nodiscard]] bool isFree(const Choice& choice, const std::vector<int>& left);
void take(const Choice& choice, std::vector<int>& left, int pieces = 1);

} // namespace quarterstep
