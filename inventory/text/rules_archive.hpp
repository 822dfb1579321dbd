// SPDX-License-Identifier: GPL-3.0-or-later
// The rules of the time: the canonical text that the ledger keeps with the first hand-over under each rules
// hash, read back, so that an audit judges by the rules that were in force.
#pragma once

#include "core/fitting/fitting_rules.hpp"

namespace quarterstep
{

/// The rules of this canonical text; empty when a line of it does not come out of canonicalRules again (a
/// source with a tab or a line end in it cannot be read back either). A criterion that this program has and
/// the text has not, because it came later, is not judged. `hash` is that of the text.
[[nodiscard]] std::optional<FittingRules> readCanonicalRules(const std::string& text);

} // namespace quarterstep
