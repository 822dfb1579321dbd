// SPDX-License-Identifier: GPL-3.0-or-later
// What is worked out only when people ask for it: chances, single changes of the nearest misses, the order
// for the laboratory.
#pragma once

#include "core/fitting/recommendation.hpp"

namespace quarterstep
{

/// How many of the nearest misses are looked at for a single change.
inline constexpr std::size_t missesExplained = 3;

/// Fills the details of an answer and adds the caution repeat-readings where the first candidate's chance is
/// below one half.
void addDetails(const PersonRecord& person, const Profile& profile, const MatchOptions& options,
                Recommendation& answer);

} // namespace quarterstep
