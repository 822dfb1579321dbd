// SPDX-License-Identifier: GPL-3.0-or-later
// Stable words of ledgers and machine output; never translated, never changed.
#pragma once

#include "core/fitting/recommendation.hpp"

namespace quarterstep
{

[[nodiscard]] const char*
wordOf(Purpose purpose); ///< "unstated" "distance" "near" "intermediate" "bifocal" "both"
/// The purpose of a word; empty when it is none of distance, near, intermediate, bifocal.
[[nodiscard]] std::optional<Purpose> purposeNamed(const std::string& word);
[[nodiscard]] const char* wordOf(Referral referral); ///< "no" "with" "before"
[[nodiscard]] const char* wordOf(PartSide side);     ///< "pair" "right" "left" "frame"
/// The side of a word; any other word, and none, is the whole pair.
[[nodiscard]] PartSide sideNamed(std::string_view word);

} // namespace quarterstep
