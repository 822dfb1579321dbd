// SPDX-License-Identifier: GPL-3.0-or-later
// What can be bought in one go: an offer; or the parts of lenses in a frame, which serve nobody one by one.
#pragma once

#include "core/planning/packing.hpp"

namespace quarterstep
{

struct PackingMove {
    std::vector<std::pair<std::size_t, int>> packs;    ///< offer, packs
    std::vector<std::pair<std::uint32_t, int>> pieces; ///< resource, pieces
    Spending spending;
    double share = 0.0; ///< of the limits that it takes, the largest
};

struct PackingMoves {
    std::vector<PackingMove> moves;
    bool bundles = false;
};
/// Every offer alone, and the parts of a pair together where a need takes lenses in a frame.
[[nodiscard]] PackingMoves movesOf(const PackingProblem& problem);
/// Adds cost, weight and pieces.
void addSpending(Spending& sum, const Spending& more);

} // namespace quarterstep
