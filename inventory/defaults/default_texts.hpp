// SPDX-License-Identifier: GPL-3.0-or-later
// The YAML files of this folder, compiled in.
#pragma once

#include <string_view>

namespace quarterstep
{

/// rules.yaml: the profiles and settings used when a camp says nothing else.
[[nodiscard]] std::string_view defaultRulesText();
/// tolerances.yaml: the tolerance sets.
[[nodiscard]] std::string_view defaultTolerancesText();
/// age_tables.yaml: additions and amplitudes by age.
[[nodiscard]] std::string_view defaultAgeTablesText();
/// audit.yaml: thresholds of the audit and priors of slips.
[[nodiscard]] std::string_view defaultAuditText();

} // namespace quarterstep
