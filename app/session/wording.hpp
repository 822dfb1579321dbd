// SPDX-License-Identifier: GPL-3.0-or-later
// The one place that turns templates and arguments into sentences of the chosen language.
#pragma once

#include "core/fitting/criteria/table.hpp"
#include "core/fitting/recommendation.hpp"

#include <QString>

namespace quarterstep
{

[[nodiscard]] QString say(const Sentence& sentence);
/// file:line:column: severity: sentence [code]
[[nodiscard]] QString say(const Finding& finding);
[[nodiscard]] QString say(Verdict verdict);
[[nodiscard]] QString say(Referral referral);
[[nodiscard]] QString say(Urgency urgency);
[[nodiscard]] QString say(Purpose purpose);
[[nodiscard]] QString say(Band band);
[[nodiscard]] QString say(Criterion criterion);
[[nodiscard]] QString say(LineKind kind);

/// Powers, axes, line names and codes stay left-to-right in any language: U+2066 … U+2069 around the text.
[[nodiscard]] QString ltr(const QString& text);
[[nodiscard]] QString ltr(const std::string& text);
/// Sign always, two decimals, no -0.00.
[[nodiscard]] QString dioptres(double value);
/// "0.70 in", "0.40 out", "0.00".
[[nodiscard]] QString prismWords(double horizontal);
/// Where to fetch a part: "RIGHT L-100 bin A3".
[[nodiscard]] QString pullWords(const Part& part, std::span<const StockLine> stock);

} // namespace quarterstep
