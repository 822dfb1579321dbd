// SPDX-License-Identifier: GPL-3.0-or-later
// One person, one purpose and named lines, as typed: shared by handing over what was picked and by explaining
// a fit.
#pragma once

#include "app/command/inputs.hpp"

namespace quarterstep
{

/// "A,B,C" as words.
[[nodiscard]] std::vector<std::string> namesIn(const std::string& text);

/// Names of lines as --lines takes them: "A,B,C", or "-" for what a scanner types into standard input, one a
/// row. Throws Error option-value (2) when nothing is scanned, and what reading finds (3).
[[nodiscard]] std::vector<std::string> linesTyped(const std::string& text);

/// Acuity typed with the pair on the face (--acuity-right, --acuity-left, --near-acuity); empty when none
/// was. Throws Error (2) at what is not an acuity.
[[nodiscard]] std::optional<TrialAcuity> trialOf(const CommandLine& line);
/// The same with what "within one line of best" compares with.
[[nodiscard]] std::optional<TrialAcuity> trialOf(const CommandLine& line, const PersonRecord& person);

/// Throws Error person-unknown (3).
[[nodiscard]] const PersonRecord& personNamed(const std::string& code, const CommandLine& line,
                                              const std::vector<PersonRecord>& people);

/// The only answer, or that of --purpose. Throws Error purpose-unknown, purpose-missing (2).
[[nodiscard]] Recommendation chosenPurpose(const CommandLine& line, std::vector<Recommendation> answers);

/// A ready-made pair alone, or frame, right lens, left lens in this order whatever the order typed; one lens
/// line serves both sides. A name may be the code of a label. Throws Error unknown-line, code-check-digit
/// (3).
[[nodiscard]] std::vector<Part> partsNamed(const std::vector<std::string>& names,
                                           std::span<const StockLine> stock);

} // namespace quarterstep
