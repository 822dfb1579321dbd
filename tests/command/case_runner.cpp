// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/command/case_runner.hpp"

#include "inventory/store/connection.hpp"
#include "tests/command/case_ledger.hpp"

#include <filesystem>
#include <fstream>
#include <stdexcept>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/wait.h>
#include <unistd.h>

namespace fs = std::filesystem;

namespace quarterstep::check
{
namespace
{

constexpr uid_t nobody = 65534;
constexpr auto readOnly = fs::perms::owner_read | fs::perms::others_read;

std::string newFolder(const char* name)
{
    std::string pattern = (fs::temp_directory_path() / (std::string(name) + ".XXXXXX")).string();
    if (::mkdtemp(pattern.data()) == nullptr)
        throw std::runtime_error("no folder for a test");
    fs::permissions(pattern, fs::perms::all);
    return pattern;
}

void writeLines(const fs::path& path, const std::vector<std::string>& lines)
{
    fs::create_directories(path.parent_path());
    std::ofstream file(path, std::ios::binary);
    for (const auto& line : lines)
        file << line << '\n';
}

void redirect(const std::string& path, int flags, int descriptor)
{
    const int opened = ::open(path.c_str(), flags, 0644);
    if (opened < 0 || ::dup2(opened, descriptor) < 0)
        ::_exit(126);
}

} // namespace

struct CaseRunner::Locks {
    int folder = -1;
    std::unique_ptr<Connection> ledger;
};

CaseRunner::CaseRunner(const CaseFile& file)
    : file_(file), folder_(newFolder("quarterstep-case")), results_(newFolder("quarterstep-results")),
      locks_(std::make_unique<Locks>())
{
}

CaseRunner::~CaseRunner()
{
    unblock();
    std::error_code ignored;
    for (const auto& entry : fs::recursive_directory_iterator(folder_, ignored))
        if (entry.is_directory())
            fs::permissions(entry.path(), fs::perms::owner_all, ignored);
    fs::remove_all(folder_, ignored);
    fs::remove_all(results_, ignored);
}

void CaseRunner::makeFiles(const CaseSection& section)
{
    const auto path = fs::path(folder_) / section.name;
    if (section.word == "camp")
        fs::copy(std::string(QS_SOURCE_DIR) + "/tests/command/camp", fs::path(folder_) / "camp");
    if (section.word == "file")
        writeLines(path, section.lines);
    if (section.word == "replace")
        replaceOnce(path, section.lines.at(0), section.lines.at(1));
}

bool CaseRunner::makeChange(const std::vector<std::string>& words)
{
    const auto path = fs::path(folder_) / words.at(1);
    if (words[0] == "copy") {
        fs::copy(path, fs::path(folder_) / words.at(2), fs::copy_options::recursive);
        return true;
    }
    if (words[0] == "say") {
        const auto ran = run({words.begin() + 2, words.end()}, words.at(1) + "\n");
        if (ran.status != 0)
            throw std::runtime_error(file_.name + ": ended with " + std::to_string(ran.status) + ": " +
                                     ran.err);
        return true;
    }
    if (words[0] == "rewrite") {
        rewriteEntry(path.string(), words.at(2), words.at(3));
        return true;
    }
    if (words[0] == "fill") {
        const auto filled = withEntries(contentOf(path.string()), folder_ + "/camp/ledger.sqlite");
        std::ofstream(path, std::ios::binary) << filled;
        return true;
    }
    if (words[0] == "edit") {
        replaceOnce(path, words.at(2), words.at(3));
        return true;
    }
    return false;
}

void CaseRunner::replaceOnce(const fs::path& path, const std::string& from, const std::string& to) const
{
    auto text = contentOf(path.string());
    const auto at = text.find(from);
    if (at == std::string::npos || text.find(from, at + 1) != std::string::npos)
        throw std::runtime_error(file_.name + ": the text to replace does not stand there once");
    text.replace(at, from.size(), to);
    std::ofstream(path, std::ios::binary) << text;
}

void CaseRunner::makeReady(const std::string& line)
{
    const auto words = wordsOf(line);
    const auto path = fs::path(folder_) / words.at(1);
    if (words[0] == "folder") {
        fs::create_directories(path);
    } else if (words[0] == "no-write") {
        asNobody_ = ::geteuid() == 0;
        for (const auto& entry : fs::recursive_directory_iterator(path))
            fs::permissions(entry.path(), readOnly);
        fs::permissions(path, readOnly | fs::perms::owner_exec | fs::perms::others_exec);
    } else if (words[0] == "lock-folder") {
        locks_->folder = ::open(path.c_str(), O_RDONLY | O_DIRECTORY);
        if (::flock(locks_->folder, LOCK_EX) != 0)
            throw std::runtime_error("the folder could not be locked");
    } else if (words[0] == "lock-ledger") {
        locks_->ledger = std::make_unique<Connection>(path.string(), Connection::Access::readWrite, 200);
        locks_->ledger->execute("BEGIN EXCLUSIVE");
    } else {
        throw std::runtime_error("unknown word in prepare: " + words[0]);
    }
}

void CaseRunner::prepare()
{
    for (const auto& section : file_.sections)
        makeFiles(section);
    for (const auto& command : file_.lines("run")) {
        if (makeChange(wordsOf(command)))
            continue;
        const auto ran = run(wordsOf(command));
        if (ran.status != 0 && ran.status != 1)
            throw std::runtime_error(file_.name + ": " + command + " ended with " +
                                     std::to_string(ran.status) + ": " + ran.err);
    }
}

void CaseRunner::block()
{
    for (const auto& line : file_.lines("prepare"))
        makeReady(line);
}

void CaseRunner::unblock()
{
    if (locks_->folder >= 0)
        ::close(locks_->folder);
    locks_->folder = -1;
    locks_->ledger.reset();
}

Ran CaseRunner::run(const std::vector<std::string>& words, const std::string& input) const
{
    const std::string in = results_ + "/in";
    std::ofstream(in, std::ios::binary) << input;
    std::vector<std::string> texts = words;
    for (auto& text : texts)
        text = withEntries(text, folder_ + "/camp/ledger.sqlite");
    texts.at(0) = std::string(QS_BINARY_DIR) + "/bin/quarterstep";
    const pid_t child = ::fork();
    if (child == 0) {
        redirect(in, O_RDONLY, 0);
        redirect(results_ + "/out", O_WRONLY | O_CREAT | O_TRUNC, 1);
        redirect(results_ + "/err", O_WRONLY | O_CREAT | O_TRUNC, 2);
        // Opened while the test may still: nobody need not reach a checkout in somebody's private folder.
        const int program = ::open(texts.front().c_str(), O_PATH | O_CLOEXEC);
        if (::chdir(folder_.c_str()) != 0 || (asNobody_ && (::setgid(nobody) != 0 || ::setuid(nobody) != 0)))
            ::_exit(126);
        std::vector<char*> arguments;
        for (auto& text : texts)
            arguments.push_back(text.data());
        arguments.push_back(nullptr);
        char locale[] = "LC_ALL=C";
        char zone[] = "TZ=UTC";
        char path[] = "PATH=/usr/bin:/bin";
        char* environment[] = {locale, zone, path, nullptr};
        ::fexecve(program, arguments.data(), environment);
        ::_exit(127);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, contentOf(results_ + "/out"),
            contentOf(results_ + "/err")};
}

std::map<std::string, std::string> CaseRunner::snapshot() const
{
    std::map<std::string, std::string> files;
    for (const auto& entry : fs::recursive_directory_iterator(folder_))
        if (entry.is_regular_file())
            files[fs::relative(entry.path(), folder_).string()] = contentOf(entry.path().string());
    return files;
}

} // namespace quarterstep::check
