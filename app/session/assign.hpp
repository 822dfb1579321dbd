// SPDX-License-Identifier: GPL-3.0-or-later
// The waiting line: who should get which pair of what is in the box. Nothing is handed over.
#pragma once

#include "app/session/line_answer.hpp"

namespace quarterstep
{

/// Somebody who was told already what they will get; it is not taken back.
struct Told {
    std::string person;
    std::optional<Purpose> purpose; ///< empty: the only one of the person
    std::vector<std::string> lines; ///< ready-made pair; or frame, right lens, left lens
    Position position;
    std::string reason = {}; ///< typed, when it was picked by hand
};

struct LineQuestion {
    MatchOptions match;
    PlanOptions plan;
    std::vector<Told> told;
};

/// Priorities that the camp's settings ask for, before those named by hand.
[[nodiscard]] std::vector<Priority> prioritiesOf(const Settings& settings, std::vector<Priority> named);

/// Who stands in the line with everything acceptable, on two threads.
[[nodiscard]] LineEntries lineOf(const std::vector<PersonRecord>& people, std::span<const StockLine> stock,
                                 const Resources& resources, const FittingRules& rules,
                                 const MatchOptions& options, const Job& job);

/// Throws Error told-unknown (3: nobody of that code and purpose in the table, or told twice), unknown-line
/// (3), told-short (3: more told than there is).
[[nodiscard]] LineAnswer assignLine(const std::vector<PersonRecord>& people, std::span<const StockLine> stock,
                                    const FittingRules& rules, const LineQuestion& question,
                                    const Job& job = {});

/// For the matcher: how scarce each line of the stock is for these people (CandidateOptions::scarcity).
[[nodiscard]] std::vector<double> scarcityOfLines(const LineEntries& entries, const Resources& resources,
                                                  std::size_t lines);

/// The same for the people of a table: what they could take, and how much of it there is. Judges each of them
/// once more.
[[nodiscard]] std::vector<double> scarcityFor(const std::vector<PersonRecord>& people,
                                              std::span<const StockLine> stock, const FittingRules& rules,
                                              const MatchOptions& options);

} // namespace quarterstep
