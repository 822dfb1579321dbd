// SPDX-License-Identifier: GPL-3.0-or-later
// Findings and errors about a file or folder as a whole.
#pragma once

#include "core/finding.hpp"

#include <cstring>

namespace quarterstep
{

/// Set member by member: g++ 12 takes nested braces here for uninitialised memory.
[[nodiscard]] inline Finding findingAt(Severity severity, const std::string& path, const char* code,
                                       Sentence sentence)
{
    Finding finding;
    finding.severity = severity;
    finding.position.file = path;
    finding.code = code;
    finding.sentence = std::move(sentence);
    return finding;
}

/// @param exitCode see Error
[[nodiscard]] inline Error errorAt(const std::string& path, const char* code, Sentence sentence, int exitCode)
{
    return {findingAt(Severity::error, path, code, std::move(sentence)), exitCode};
}

/// file-unwritable, with the system's words. @param reason an errno
[[nodiscard]] inline Error fileUnwritable(const std::string& path, int reason)
{
    return errorAt(path, "file-unwritable",
                   {QS_SAY("core", "the file cannot be written: %1; check rights and free space"),
                    {std::strerror(reason)}},
                   4);
}

} // namespace quarterstep
