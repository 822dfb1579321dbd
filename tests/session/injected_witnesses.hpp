// SPDX-License-Identifier: GPL-3.0-or-later
// What is measured of hand-overs with known slips: acuity with the pair, readings of it, counts and returns.
#pragma once

#include "tests/session/injected_truth.hpp"

namespace quarterstep::testing
{

inline constexpr std::size_t aDay = 60;                             ///< hand-overs
using Misplaced = std::vector<std::pair<std::size_t, std::string>>; ///< case, and the line that lay elsewhere

/// Puts the cases in time and measures some of them; then counts boxes and takes pieces back.
[[nodiscard]] LineHistory measured(std::mt19937& random, std::vector<TruthCase>& cases,
                                   const std::vector<PersonRecord>& truths, const Misplaced& wasBack);
/// Whether anything measured speaks of the slip of this case.
[[nodiscard]] bool witnessed(const TruthCase& each, const PersonRecord& truth, const LineHistory& lines);

} // namespace quarterstep::testing
