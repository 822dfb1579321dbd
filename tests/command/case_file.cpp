// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/command/case_file.hpp"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <ostream>
#include <sstream>
#include <stdexcept>

namespace quarterstep::check
{
namespace
{

CaseFile readCase(const std::filesystem::path& path)
{
    CaseFile file;
    file.name = path.filename().string();
    for (const auto& line : linesOf(contentOf(path.string()))) {
        if (line.rfind("## ", 0) == 0) {
            const auto blank = line.find(' ', 3);
            file.sections.push_back({line.substr(3, blank == std::string::npos ? blank : blank - 3),
                                     blank == std::string::npos ? "" : line.substr(blank + 1),
                                     {}});
        } else if (file.sections.empty()) {
            file.sentence += line;
        } else {
            file.sections.back().lines.push_back(line);
        }
    }
    return file;
}

/// One line against its pattern, in which "…" stands for any text.
bool lineMatches(const std::string& pattern, const std::string& line)
{
    const std::string any = "…";
    std::size_t at = 0;
    std::size_t from = 0;
    for (bool first = true;; first = false) {
        const auto mark = pattern.find(any, from);
        const auto piece = pattern.substr(from, mark == std::string::npos ? mark : mark - from);
        if (mark == std::string::npos && !first)
            return line.size() >= at + piece.size() &&
                   line.compare(line.size() - piece.size(), piece.size(), piece) == 0;
        if (mark == std::string::npos)
            return line == piece;
        const auto found = line.find(piece, at);
        if (found == std::string::npos || (first && found != 0))
            return false;
        at = found + piece.size();
        from = mark + any.size();
    }
}

bool allMatch(const std::vector<std::string>& expected, std::size_t e, const std::vector<std::string>& lines,
              std::size_t l)
{
    if (e == expected.size())
        return l == lines.size();
    if (expected[e] == "...") {
        for (std::size_t skip = l; skip <= lines.size(); ++skip)
            if (allMatch(expected, e + 1, lines, skip))
                return true;
        return false;
    }
    return l < lines.size() && lineMatches(expected[e], lines[l]) && allMatch(expected, e + 1, lines, l + 1);
}

} // namespace

std::vector<std::string> linesOf(const std::string& text)
{
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

std::vector<std::string> CaseFile::lines(const std::string& word) const
{
    for (const auto& section : sections)
        if (section.word == word)
            return section.lines;
    return {};
}

bool CaseFile::has(const std::string& word) const
{
    return std::any_of(sections.begin(), sections.end(),
                       [&](const auto& section) { return section.word == word; });
}

std::ostream& operator<<(std::ostream& out, const CaseFile& file)
{
    return out << file.name << ": " << file.sentence;
}

std::vector<CaseFile> allCases()
{
    std::vector<std::filesystem::path> paths;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(QS_SOURCE_DIR) + "/tests/command/cases"))
        paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    const char* wanted = std::getenv("QS_CASE");
    std::vector<CaseFile> cases;
    for (const auto& path : paths)
        if (wanted == nullptr || path.filename().string().find(wanted) != std::string::npos)
            cases.push_back(readCase(path));
    return cases;
}

std::vector<std::string> wordsOf(const std::string& command)
{
    std::vector<std::string> words;
    char quote = '\0';
    bool open = false;
    for (const char sign : command) {
        if (quote == '\0' && sign == ' ') {
            open = false;
            continue;
        }
        if (!open)
            words.emplace_back();
        open = true;
        if (quote == '\0' && (sign == '"' || sign == '\''))
            quote = sign;
        else if (sign == quote)
            quote = '\0';
        else
            words.back() += sign;
    }
    return words;
}

bool matches(const std::vector<std::string>& expected, const std::string& text)
{
    auto lines = linesOf(text);
    for (auto& line : lines) // some formats end lines with CR LF; a case cannot write that
        if (!line.empty() && line.back() == '\r')
            line.pop_back();
    return allMatch(expected, 0, lines, 0);
}

std::string contentOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    std::ostringstream content;
    content << file.rdbuf();
    return content.str();
}

} // namespace quarterstep::check
