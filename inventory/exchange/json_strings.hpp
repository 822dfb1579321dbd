// SPDX-License-Identifier: GPL-3.0-or-later
// Texts of JSON between their quotes: escapes and halves of characters (RFC 8259, 7).
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace quarterstep
{

/// Halves of one character in UTF-16: high from firstSurrogate, low from firstLowSurrogate.
inline constexpr unsigned firstSurrogate = 0xD800;
inline constexpr unsigned firstLowSurrogate = 0xDC00;
inline constexpr unsigned behindSurrogates = 0xE000;

/// Value of four hexadecimal digits at the beginning; empty when they are none.
[[nodiscard]] std::optional<unsigned> jsonFourDigits(std::string_view text);
/// What an escape of a single letter stands for; '\0' when it is none.
[[nodiscard]] char jsonEscaped(char letter);
/// Content of a text with its quotes, whose escapes were checked.
[[nodiscard]] std::string jsonUnquoted(std::string_view quoted);

} // namespace quarterstep
