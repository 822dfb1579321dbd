// SPDX-License-Identifier: GPL-3.0-or-later
// rules.yaml: profiles of fit. What a camp leaves out comes from the defaults compiled in
// (inventory/defaults).
#pragma once

#include "core/finding.hpp"
#include "core/fitting/fitting_rules.hpp"

namespace quarterstep
{

/// The defaults. Parsed once from the YAML compiled in; a broken default is a programming error (assert).
[[nodiscard]] const FittingRules& defaultRules();

/// Defaults with the file's profiles and settings over them; errors located, all in one run.
[[nodiscard]] Reading<FittingRules> readRulesFile(const std::string& path);
[[nodiscard]] Reading<FittingRules> readRulesText(std::string bytes, const std::string& name);

} // namespace quarterstep
