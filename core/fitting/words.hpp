// SPDX-License-Identifier: GPL-3.0-or-later
// Stable words of ledgers and machine output; never translated, never changed.
#pragma once

#include "core/fitting/recommendation.hpp"

namespace quarterstep
{

[[nodiscard]] const char*
wordOf(Purpose purpose); ///< "unstated" "distance" "near" "intermediate" "bifocal" "both"
[[nodiscard]] const char* wordOf(Referral referral); ///< "no" "with" "before"

} // namespace quarterstep
