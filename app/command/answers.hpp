// SPDX-License-Identifier: GPL-3.0-or-later
// Recommendations as JSON (names are a promise) and as lines for people.
#pragma once

#include "core/fitting/recommendation.hpp"

#include <QJsonObject>
#include <QString>

#include <span>

namespace quarterstep
{

// Stable words of JSON.
[[nodiscard]] const char* jsonWord(Verdict verdict);
[[nodiscard]] const char* jsonWord(Referral referral);
[[nodiscard]] const char* jsonWord(Urgency urgency);
[[nodiscard]] const char* jsonWord(Purpose purpose);
[[nodiscard]] const char* jsonWord(Band band);
[[nodiscard]] const char* jsonWord(PartSide side);
[[nodiscard]] const char* jsonWord(LineKind kind);

/// One entry of `match --json`.
[[nodiscard]] QJsonObject jsonRecommendation(const Recommendation& answer, std::span<const StockLine> stock);

/// Pieces of that entry, for other answers.
[[nodiscard]] QJsonObject jsonCandidate(const Candidate& candidate, std::span<const StockLine> stock);
[[nodiscard]] QJsonObject jsonFlag(const Flag& flag);
[[nodiscard]] QJsonObject jsonOrder(const LaboratoryOrder& order);
[[nodiscard]] QJsonValue jsonChange(const std::optional<SingleChange>& change);

/// "0042  near  from stock  N+200-62M-BK bin C4  R M +0.00 …  prism 0.12 in": one line, `parts` as given or
/// suggested.
[[nodiscard]] QString recommendationLine(const Recommendation& answer, std::span<const StockLine> stock);

/// What every temporary pair is told with: "Temporary pair. Not for driving."
[[nodiscard]] QString temporaryWords();

} // namespace quarterstep
