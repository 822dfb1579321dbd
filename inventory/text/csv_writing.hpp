// SPDX-License-Identifier: GPL-3.0-or-later
// Cells for spreadsheets: quoted as in RFC 4180, and never taken for a formula.
#pragma once

#include <string>
#include <vector>

namespace quarterstep
{

/// A text that begins with = + - @, a tab or a carriage return would be run as a formula by a spreadsheet; an
/// apostrophe before it keeps it a text. Plain numbers stay as they are.
[[nodiscard]] std::string guarded(const std::string& text);
/// What stood before the guard.
[[nodiscard]] std::string unguarded(const std::string& text);
/// Guarded, in quotes where a comma, a quote or a line end asks for them.
[[nodiscard]] std::string csvCell(const std::string& text);
/// One row with its line end.
[[nodiscard]] std::string csvRow(const std::vector<std::string>& cells);

} // namespace quarterstep
