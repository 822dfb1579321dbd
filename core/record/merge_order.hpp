// SPDX-License-Identifier: GPL-3.0-or-later
// In which order the entries of several stations can be applied: each station's in the order of its numbers,
// no count ever below zero, no entry taken back before it is there.
#pragma once

#include "core/record/entry.hpp"

#include <set>
#include <span>

namespace quarterstep
{

struct MergeStep {
    std::string id;
    std::string station;
    std::int64_t number = 0;
    std::int64_t atMs = 0;
    std::string site;
    std::string cancels;
    std::vector<Movement> movements;
};

/// Counts of one line at one site.
struct MergeCount {
    std::int64_t onHand = 0;
    std::int64_t held = 0;
    std::int64_t quarantined = 0;
};
using SiteLine = std::pair<std::string, std::string>;
using MergeCounts = std::map<SiteLine, MergeCount>;

enum class MergeObstacle { none, belowZero, takenBackTwice, takesBackUnknown };

struct MergeOrder {
    std::vector<std::size_t> order; ///< indices of the steps; all of them, or those before the obstacle
    MergeObstacle obstacle = MergeObstacle::none;
    std::size_t step = 0; ///< the earliest that cannot be applied
    SiteLine line;        ///< of belowZero
    std::string other;    ///< the entry that took last from the line, or took the same entry back; or empty
};

/// @param steps      grouped by station or not; within a station in the order of the numbers
/// @param counts     as they are before; lines not named have none
/// @param known      ids of entries already there
/// @param cancelled  id of an entry taken back already -> the entry that did it
/// Among the entries that can be applied the earliest goes first, then the lower station id: the result does
/// not depend on the order of `steps` between stations.
[[nodiscard]] MergeOrder mergeOrder(std::span<const MergeStep> steps, MergeCounts counts,
                                    std::set<std::string> known,
                                    std::map<std::string, std::string> cancelled = {});

} // namespace quarterstep
