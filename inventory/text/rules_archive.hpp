// SPDX-License-Identifier: GPL-3.0-or-later
// The rules of the time: the canonical text that the ledger keeps with the first hand-over under each rules
// hash, read back, so that an audit judges by the rules that were in force.
#pragma once

#include "core/fitting/fitting_rules.hpp"

namespace quarterstep
{

/// The rules whose canonicalRules are exactly this text; empty when the text is not one (a source with a tab
/// or a line end in it cannot be read back either). `hash` is set.
[[nodiscard]] std::optional<FittingRules> readCanonicalRules(const std::string& text);

} // namespace quarterstep
