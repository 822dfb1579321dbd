// SPDX-License-Identifier: GPL-3.0-or-later
// Why one candidate stands above another, in words: the first of the keys of order.hpp at which they differ.
#pragma once

#include "core/fitting/order.hpp"

namespace quarterstep
{

/// What decided between two candidates, in the order in which it is asked.
enum class RankStep {
    outsideLimit, ///< one fails a criterion, the other does not
    onTrial,
    cost, ///< in steps of 0.02 logMAR; between two that fail, exactly
    cautions,
    worseSide,
    balance,
    prism,
    baseOutAtNear,
    frameSize,
    scarcity,
    exactCost,
    parts,
    name,
    same ///< nothing: they are one and the same
};

struct Comparison {
    bool firstAbove = false; ///< whether the first given stands above the second
    RankStep step = RankStep::same;
    Sentence sentence; ///< names the upper and the lower, with the two figures
};

/// Deterministic, and the same as the order in which findCandidates ranks any two candidates of one need.
[[nodiscard]] Comparison whyAbove(const Need& need, std::span<const StockLine> stock, const Profile& profile,
                                  const CandidateOptions& options, const Candidate& first,
                                  const Candidate& second);

} // namespace quarterstep
