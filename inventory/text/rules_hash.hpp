// SPDX-License-Identifier: GPL-3.0-or-later
// What stands behind the hash that is written into every entry: the rules as one canonical text.
#pragma once

#include "core/fitting/fitting_rules.hpp"

namespace quarterstep
{

/// Profiles by name, criteria in their fixed order, numbers in their shortest form: the same for any order of
/// keys, spacing or comments in the file.
[[nodiscard]] std::string canonicalRules(const FittingRules& rules);

/// SHA-256 of canonicalRules, first 16 hex digits.
[[nodiscard]] std::string rulesHash(const FittingRules& rules);
/// The same of a text that was kept.
[[nodiscard]] std::string rulesHash(const std::string& canonicalText);

} // namespace quarterstep
