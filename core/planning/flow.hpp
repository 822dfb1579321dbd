// SPDX-License-Identifier: GPL-3.0-or-later
// People to groups of like lines, each person at most one piece: a transport problem, solved exactly as a
// minimum-cost flow in whole numbers (network simplex: Király and Kovács, Acta Univ. Sapientiae Inform.
// 2012;4:67-118, as in the LEMON library, which this file alone sees).
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace quarterstep
{

struct TransportEdge {
    std::uint32_t person = 0;
    std::uint32_t resource = 0;
    bool operator==(const TransportEdge&) const = default;
};

/// One aim: what it costs to leave a person unserved, and what each edge costs. All >= 0.
struct CostLevel {
    std::vector<std::int64_t> unserved; ///< one a person
    std::vector<std::int64_t> edge;     ///< one an edge; empty = 0 throughout
};

/// At least so many of these people are to be served, before anything else counts. Groups do not overlap.
struct ServiceFloor {
    std::vector<std::uint32_t> people;
    int least = 0;
};

struct Transport {
    std::size_t people = 0;
    std::vector<int> capacity;        ///< pieces of each resource
    std::vector<TransportEdge> edges; ///< sorted by person
    std::vector<CostLevel> levels;    ///< aims, the first matters most: lexicographic
    std::vector<ServiceFloor> floors;
};

/// The aims as one cost in whole numbers, so that a step of an earlier aim outweighs all of the later ones.
struct PackedCosts {
    std::vector<std::int64_t> unserved;
    std::vector<std::int64_t> edge;
    std::vector<std::int64_t> weight; ///< of one unit of each aim
    std::int64_t shortOfFloor = 0;    ///< of each person below a floor
    int coarserBy = 1; ///< the last aims were divided by this to fit into 63 bits; 1 = nothing lost
};
[[nodiscard]] PackedCosts packCosts(const Transport& transport);

inline constexpr std::int32_t nothingGiven = -1;

struct TransportPlan {
    std::vector<std::int32_t> edgeOf; ///< of each person, index into edges or nothingGiven
    int coarserBy = 1;
};

/// Exact for the packed costs. Pure.
[[nodiscard]] TransportPlan solveTransport(const Transport& transport);

/// What one more piece of a resource would change, in units of each aim (gains positive).
using Gains = std::vector<std::int64_t>;
/// Exact for one more piece of one resource at a time: shortest ways through what is left open by the plan.
[[nodiscard]] std::vector<Gains> gainsOfOneMore(const Transport& transport, const TransportPlan& plan);

/// A network with capacities between a source (node 0) and a sink (node 1).
struct CapacityArc {
    std::uint32_t from = 0;
    std::uint32_t to = 0;
    std::int64_t capacity = 0;
};
struct MaximumFlow {
    std::int64_t value = 0;
    std::vector<bool> onSourceSide; ///< of a smallest cut, by node
};
/// Largest flow and a smallest cut (push-relabel).
[[nodiscard]] MaximumFlow maximumFlow(std::size_t nodes, const std::vector<CapacityArc>& arcs);

} // namespace quarterstep
