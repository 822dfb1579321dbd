// SPDX-License-Identifier: GPL-3.0-or-later
// match --explain PERSON LINE: one pair for one person in full.
#pragma once

#include "app/command/inputs.hpp"
#include "core/fitting/explanation.hpp"

#include <QJsonObject>

namespace quarterstep
{

class Output;

/// What is told: the pair, the answer it belongs to, and the other pair when --above was given.
struct Explained {
    Recommendation answer;
    std::string profileVersion;
    Explanation pair;
    std::optional<Comparison> above;
    std::optional<Sentence> otherFails; ///< why the lower of the two is outside, when that decides
};

/// Runs the option; `people` are the good rows of the table. Ends as match does: 0 acceptable, 1 not. Throws
/// Error person-unknown, unknown-line, nothing-to-judge, not-a-pair (3), purpose-missing (2).
int runExplain(const CommandLine& line, const Box& box, const MatchOptions& options,
               const std::vector<PersonRecord>& people, Output& out);

[[nodiscard]] QJsonObject jsonExplained(const Explained& told, std::span<const StockLine> stock);

} // namespace quarterstep
