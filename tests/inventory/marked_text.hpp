// SPDX-License-Identifier: GPL-3.0-or-later
// Expected places of findings, marked in the text itself: "on hand: ^014" expects a finding at the zero.
#pragma once

#include "core/finding.hpp"

#include <string>
#include <vector>

namespace quarterstep::testing
{

/// The text without its marks and the places (line:column, from 1, in characters) where they stood.
struct MarkedText {
    std::string text;
    std::vector<std::string> places;
};
[[nodiscard]] MarkedText unmarked(const std::string& marked);

/// "line:column code", cautions and notes with the word before.
[[nodiscard]] std::vector<std::string> told(const std::vector<Finding>& findings);

/// Checks that exactly these codes were told, at the marks, in order; a code may begin with "caution " or
/// "note ".
void checkTold(const std::vector<Finding>& findings, const MarkedText& marked,
               const std::vector<std::string>& codes);

} // namespace quarterstep::testing
