// SPDX-License-Identifier: GPL-3.0-or-later
// What a scanner types of a label: the name of a line, or its thirteen digits with their check digit.
// Check digit: GS1 General Specifications, weights 3 and 1 from the right of the data digits, up to the next
// ten. Twelve digits are thirteen with a leading 0.
#pragma once

#include "core/fitting/stock_line.hpp"

#include <span>
#include <string_view>

namespace quarterstep
{

/// Of the first twelve digits, '0' … '9'. Needs at least twelve characters, all digits.
[[nodiscard]] char checkDigitOf(std::string_view digits);

/// Thirteen digits as they are, twelve with a 0 before them; empty for any other text.
[[nodiscard]] std::string codeDigits(std::string_view text);

/// The code, or code-form (not 13 digits), code-check-digit.
[[nodiscard]] Parsed<std::string> parseLineCode(std::string_view text);

/// Index of the line with this name or code. Complaints: unknown-line; code-check-digit for digits that no
/// label can hold.
[[nodiscard]] Parsed<std::size_t> lineScanned(std::span<const StockLine> stock, const std::string& text);

} // namespace quarterstep
