// SPDX-License-Identifier: GPL-3.0-or-later
// The order in which people are shown candidates, and which of them make the short list.
#pragma once

#include "core/fitting/candidates.hpp"

namespace quarterstep
{

/// What is compared, one after the other; smaller comes first. Costs are cut into steps of 0.02 logMAR.
struct RankKey {
    bool onTrial = false;
    long costStep = 0;
    int cautions = 0;
    int worseSideEyes = 0;
    long balanceStep = 0; ///< 0.25 D
    long prismStep = 0;   ///< quarters of the limit
    bool baseOutAtNear = false;
    double sizeSteps = 0.0;
    double scarcity = 0.0;
    double cost = 0.0;
    std::size_t parts = 0;
    std::string name;

    auto operator<=>(const RankKey&) const = default;
};

[[nodiscard]] RankKey rankKey(const Need& need, std::span<const StockLine> stock, const Profile& profile,
                              const CandidateOptions& options, const Candidate& candidate);

/// Ranked (acceptable, then on trial) and misses (nearest by cost). The short list keeps at most options.most
/// and always the best weaker and the best stronger neighbour of the first.
[[nodiscard]] CandidateLists orderCandidates(const Need& need, std::span<const StockLine> stock,
                                             const Profile& profile, const CandidateOptions& options,
                                             std::vector<Candidate> found);

} // namespace quarterstep
