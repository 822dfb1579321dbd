// SPDX-License-Identifier: GPL-3.0-or-later
// One criterion's result as a sentence.
#pragma once

#include "core/fitting/fit.hpp"

namespace quarterstep
{

/// Why a pair is outside: "horizontal prism 1.40, limit 1.00".
[[nodiscard]] Sentence failingSentence(const CriterionResult& result);
/// What a caution says: "0.50 D too much plus".
[[nodiscard]] Sentence cautionSentence(const CriterionResult& result);
/// Two decimals without a plus, never -0.00.
[[nodiscard]] std::string twoDecimals(double value);

} // namespace quarterstep
