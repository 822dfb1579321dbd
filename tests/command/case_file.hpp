// SPDX-License-Identifier: GPL-3.0-or-later
// One test of the command line in one file:
//
//   What is tested, in a sentence.
//   ## camp                      the small camp of tests/command/camp is copied to camp/
//   ## replace camp/stock.yaml   first line: text that stands there once; second: what takes its place
//   ## file NAME                 a file with these lines
//   ## prepare                   one word and a name a line, see case_runner.hpp
//   ## run                       commands before the one tested, one a line; each must end with 0 or 1. Also
//                                "copy FROM TO", "edit FILE TEXT OTHER_TEXT", "rewrite LEDGER TEXT
//                                OTHER_TEXT", "fill FILE" (its {entry-N} become the ids of entries, as in
//                                every command)
//   ## command                   the command tested; quotes as in a shell
//   ## input                     standard input
//   ## status                    exit code
//   ## stdout, ## stderr         lines; "…" stands for any text within a line; a line of "..." for any lines
//   ## changed                   files that must have changed; every other file must not
#pragma once

#include <iosfwd>
#include <string>
#include <utility>
#include <vector>

namespace quarterstep::check
{

struct CaseSection {
    std::string word; ///< "file"
    std::string name; ///< "camp/stock.yaml" or empty
    std::vector<std::string> lines;
};

struct CaseFile {
    std::string name;
    std::string sentence;
    std::vector<CaseSection> sections;

    [[nodiscard]] std::vector<std::string> lines(const std::string& word) const;
    [[nodiscard]] bool has(const std::string& word) const;
};

std::ostream& operator<<(std::ostream& out, const CaseFile& file);

/// Every file of tests/command/cases, by name; those with QS_CASE in their name where that is set.
[[nodiscard]] std::vector<CaseFile> allCases();

/// Words of a command; single and double quotes keep blanks.
[[nodiscard]] std::vector<std::string> wordsOf(const std::string& command);

/// Whether text matches the expected lines with their "…" and "..." marks.
[[nodiscard]] bool matches(const std::vector<std::string>& expected, const std::string& text);

[[nodiscard]] std::vector<std::string> linesOf(const std::string& text);
[[nodiscard]] std::string contentOf(const std::string& path);

} // namespace quarterstep::check
