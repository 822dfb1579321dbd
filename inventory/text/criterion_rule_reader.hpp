// SPDX-License-Identifier: GPL-3.0-or-later
// One criterion of a profile in rules.yaml: limits, what they depend on, source.
#pragma once

#include "core/fitting/fitting_rules.hpp"
#include "inventory/text/yaml_map.hpp"

namespace quarterstep
{

/// Reads the limits of a criterion. Empty when anything in it was wrong; all of it is told.
[[nodiscard]] std::optional<CriterionRule> readCriterionRule(YamlDocument& document, const YamlValue& value,
                                                             Criterion criterion);

} // namespace quarterstep
