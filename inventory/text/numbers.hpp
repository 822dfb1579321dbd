// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers in files, read without the locale and without guessing: no 1e3, no nan, no hidden octal.
#pragma once

#include "core/finding.hpp"

#include <string>

namespace quarterstep
{

/// Plain digits between `least` and `most` (least >= 0). Refused with clear words: number-empty,
/// number-leading-zero (014), number-not-whole (1.5), number-negative (-1), number-not-a-number,
/// number-range.
[[nodiscard]] Parsed<long> parseWholeNumber(const std::string& text, long least, long most);

/// How the decimals may be marked: entry by hand accepts a comma, files want a dot.
enum class Decimals { dotOnly, dotOrComma };

/// Decimal number in thousandths, exact; more than three decimals are refused (number-too-fine).
[[nodiscard]] Parsed<long> parseThousandths(const std::string& text, double least, double most,
                                            Decimals decimals = Decimals::dotOnly);

/// Finite decimal number between `least` and `most`. Refused: number-empty, number-comma,
/// number-not-a-number, number-range.
[[nodiscard]] Parsed<double> parseNumber(const std::string& text, double least, double most,
                                         Decimals decimals = Decimals::dotOnly);

/// Shortest text of a number, with a dot: "62", "0.5".
[[nodiscard]] std::string writeNumber(double value);

} // namespace quarterstep
