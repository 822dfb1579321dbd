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

} // namespace quarterstep
