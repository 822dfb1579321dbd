// SPDX-License-Identifier: GPL-3.0-or-later
// Words in a row, for names of lines and lists in messages.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace quarterstep
{

/// "a + b + c" with `between` " + "; empty for no words.
[[nodiscard]] inline std::string joined(const std::vector<std::string>& words, std::string_view between)
{
    std::string text;
    for (const auto& word : words) {
        if (&word != words.data())
            text += between;
        text += word;
    }
    return text;
}

} // namespace quarterstep
