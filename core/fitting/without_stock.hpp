// SPDX-License-Identifier: GPL-3.0-or-later
// What helps where nothing in the box fits: a pair for the time until a custom order comes, and what the
// prescriber's mark "balance" would change.
#pragma once

#include "core/fitting/recommendation.hpp"

namespace quarterstep
{

/// Names of the lines of a pair, joined by " + ".
[[nodiscard]] std::string partNames(const Candidate& candidate, std::span<const StockLine> stock);

/// Sets `answer.interim`: for adults whose better eye gains two lines or more with it, never a bifocal; each
/// eye within +0.75 and -0.5 D (-1.0 D under 40 years) of its need and 1.0 D of blur strength, prism up
/// to 1.5 horizontally and 0.5 vertically (common practice).
void findInterim(const PersonRecord& person, const Profile& profile, std::span<const StockLine> stock,
                 const FittingRules& rules, const StockIndex* index, Recommendation& answer);
/// Adds the flag balance-would-fit for an eye of 6/60 or less at best (common practice).
void suggestBalance(const PersonRecord& person, const Profile& profile, std::span<const StockLine> stock,
                    const FittingRules& rules, const StockIndex* index, Recommendation& answer);

} // namespace quarterstep
