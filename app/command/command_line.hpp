// SPDX-License-Identifier: GPL-3.0-or-later
// What was typed, and the table of what can be typed: verbs, their options and words. Help and parsing both
// come from the table.
#pragma once

#include "core/finding.hpp"

#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

namespace quarterstep
{

class Output;

/// Exit codes, a promise to scripts.
struct Exit {
    static constexpr int done = 0;
    static constexpr int unserved = 1; ///< somebody without acceptable stock or incomplete
    static constexpr int usage = 2;
    static constexpr int badData = 3;
    static constexpr int unavailable = 4; ///< locked, read-only or not reachable
};

/// One command as typed.
struct CommandLine {
    std::string verb;
    std::set<std::string> flags;
    std::map<std::string, std::vector<std::string>> values;
    std::vector<std::string> arguments; ///< what stands without an option, as typed

    [[nodiscard]] bool has(const std::string& option) const
    {
        return flags.count(option) > 0 || values.count(option) > 0;
    }
    /// Value of an option that takes one; empty when not given.
    [[nodiscard]] std::string value(const std::string& option) const
    {
        const auto found = values.find(option);
        return found == values.end() || found->second.empty() ? "" : found->second.front();
    }
};

/// An option of a verb. `values` 0: a flag. Words are marked for translation, context "command".
struct OptionRow {
    const char* name; ///< "--camp"
    int values;
    const char* valueWords; ///< "FOLDER"
    const char* words;
};

struct VerbRow {
    const char* name;
    const char* words;
    const char* arguments; ///< as shown in help: "TABLE"
    std::size_t least;     ///< how many arguments
    std::size_t most;
    std::vector<const char*> options; ///< names, rows of optionTable()
    std::vector<const char*> needed;  ///< options without which the verb cannot run
    std::vector<const char*> examples;
    int (*run)(const CommandLine& line, Output& out);
};

[[nodiscard]] const std::vector<VerbRow>& verbTable();
[[nodiscard]] const VerbRow* verbNamed(const std::string& name);
[[nodiscard]] const std::vector<OptionRow>& optionTable();
[[nodiscard]] const OptionRow& optionNamed(const std::string& name);

// The verbs, one file each. They return an exit code and may throw Error.
int runAssign(const CommandLine& line, Output& out);
int runAudit(const CommandLine& line, Output& out);
int runCount(const CommandLine& line, Output& out);
int runConvert(const CommandLine& line, Output& out);
int runCoverage(const CommandLine& line, Output& out);
int runDispense(const CommandLine& line, Output& out);
int runExport(const CommandLine& line, Output& out);
int runForget(const CommandLine& line, Output& out);
int runHelp(const CommandLine& line, Output& out);
int runImport(const CommandLine& line, Output& out);
int runMatch(const CommandLine& line, Output& out);
int runOrder(const CommandLine& line, Output& out);
int runPack(const CommandLine& line, Output& out);
int runPrint(const CommandLine& line, Output& out);
int runReceive(const CommandLine& line, Output& out);
int runRecord(const CommandLine& line, Output& out);
int runSimulate(const CommandLine& line, Output& out);
int runStock(const CommandLine& line, Output& out);
int runTransfer(const CommandLine& line, Output& out);
int runVerify(const CommandLine& line, Output& out);

/// Ends a verb because of how it was called.
[[nodiscard]] inline Error usageError(std::string code, Sentence sentence)
{
    return errorSaying(std::move(code), std::move(sentence), Exit::usage);
}

/// Ends a verb because what stands behind an option is not understood; at its place there.
[[nodiscard]] inline Error optionError(const char* option, const Complaint& complaint)
{
    Finding finding;
    finding.position = {option, 1, complaint.offset + 1};
    finding.code = complaint.code;
    finding.sentence = complaint.sentence;
    return Error(std::move(finding), Exit::usage);
}

/// Help of one verb, or of all when `verb` is null.
void showHelp(const VerbRow* verb, Output& out);

} // namespace quarterstep
