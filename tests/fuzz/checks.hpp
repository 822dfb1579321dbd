// SPDX-License-Identifier: GPL-3.0-or-later
// What every fuzzer of a file format checks: findings have a code, a sentence and a place inside the file.
#pragma once

#include "core/finding.hpp"

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>

namespace quarterstep::fuzz
{

inline void require(bool good, const char* what)
{
    if (good)
        return;
    std::fprintf(stderr, "broken: %s\n", what);
    std::abort();
}

inline std::size_t charactersIn(const std::string& text)
{
    std::size_t count = 0;
    for (const char byte : text)
        count += (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U ? 1U : 0U;
    return count;
}

/// `lines` is the number of line ends in the file and one.
inline void checkFindings(const std::vector<Finding>& findings, int lines)
{
    constexpr std::size_t longestArgument = 2000; // names of profiles and columns are listed whole
    for (const auto& finding : findings) {
        require(!finding.code.empty() && !finding.sentence.empty(), "a finding has a code and says why");
        require(finding.position.line >= 0 && finding.position.line <= lines + 1,
                "a finding lies inside the file");
        require(finding.position.column >= 0, "a column is not negative");
        for (const auto& argument : finding.sentence.arguments)
            require(charactersIn(argument) <= longestArgument, "a finding quotes little");
    }
}

inline int lineCount(const std::string& text)
{
    int lines = 1;
    for (const char byte : text)
        lines += byte == '\n' || byte == '\r' ? 1 : 0;
    return lines;
}

} // namespace quarterstep::fuzz
