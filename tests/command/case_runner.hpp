// SPDX-License-Identifier: GPL-3.0-or-later
// Runs the program in a folder of its own with a scrubbed environment (C locale, UTC).
// Words of "## prepare": folder NAME, no-write NAME (the program then runs as nobody when the test is root),
// lock-ledger NAME (another program holds the ledger), lock-folder NAME.
#pragma once

#include "tests/command/case_file.hpp"

#include <filesystem>
#include <map>
#include <memory>

namespace quarterstep::check
{

struct Ran {
    int status = -1; ///< exit code; -1 when it did not end by itself
    std::string out;
    std::string err;
};

class CaseRunner
{
  public:
    explicit CaseRunner(const CaseFile& file);
    CaseRunner(const CaseRunner&) = delete;
    CaseRunner& operator=(const CaseRunner&) = delete;
    ~CaseRunner();

    /// Makes the files of the case and runs what comes before.
    void prepare();
    /// Takes locks and rights away, and gives them back. While a lock is held no file may be read here:
    /// closing a file drops the locks that this process has on it.
    void block();
    void unblock();
    /// "{entry-N}" among the words is the id of entry N of the camp.
    [[nodiscard]] Ran run(const std::vector<std::string>& words, const std::string& input = {}) const;
    /// Bytes of every file below the folder, by path.
    [[nodiscard]] std::map<std::string, std::string> snapshot() const;

  private:
    void makeFiles(const CaseSection& section);
    void makeReady(const std::string& line);
    /// "copy FROM TO", "edit FILE TEXT OTHER_TEXT", "say INPUT COMMAND…", "rewrite LEDGER TEXT OTHER_TEXT"
    /// (past every safeguard) or "fill FILE" (its {entry-N} become ids) among the commands that come before.
    bool makeChange(const std::vector<std::string>& words);
    void replaceOnce(const std::filesystem::path& path, const std::string& from, const std::string& to) const;

    struct Locks;
    const CaseFile& file_;
    std::string folder_;
    std::string results_;
    bool asNobody_ = false;
    std::unique_ptr<Locks> locks_;
};

} // namespace quarterstep::check
