// SPDX-License-Identifier: GPL-3.0-or-later
// What was found in data, and sentences for people, kept as template and arguments until `wording` joins
// them.
#pragma once

#include <exception>
#include <string>
#include <utility>
#include <vector>

/// Marks a sentence for translation (context, text) and expands to the text.
#define QS_SAY(context, text) text

namespace quarterstep
{

/// A sentence for people: an English template with %1 %2 … and its arguments, never joined in core.
/// Templates written in core carry the context "core" in QS_SAY.
struct Sentence {
    std::string text;
    std::vector<std::string> arguments;

    [[nodiscard]] bool empty() const { return text.empty(); }
    bool operator==(const Sentence&) const = default;
};

enum class Severity { note, caution, error };

/// Where something stands. Lines and columns count from 1, columns in characters; 0 = not known.
struct Position {
    std::string file;
    int line = 0;
    int column = 0;
    bool operator==(const Position&) const = default;
};

/// Something wrong or notable in data. `code` is stable, kebab-case and listed in the help.
struct Finding {
    Severity severity = Severity::error;
    Position position;
    std::string code;
    Sentence sentence;
};

/// Ends an operation that cannot go on; carries the finding that people are told.
/// exitCode: 2 usage, 3 bad data, 4 locked or unavailable.
class Error : public std::exception
{
  public:
    Error(Finding finding, int exitCode) : finding_(std::move(finding)), exitCode_(exitCode) {}
    [[nodiscard]] const Finding& finding() const { return finding_; }
    [[nodiscard]] int exitCode() const { return exitCode_; }
    [[nodiscard]] const char* what() const noexcept override { return finding_.sentence.text.c_str(); }

  private:
    Finding finding_;
    int exitCode_;
};

/// An Error without a place in a file.
[[nodiscard]] inline Error errorSaying(std::string code, Sentence sentence, int exitCode)
{
    Finding finding;
    finding.code = std::move(code);
    finding.sentence = std::move(sentence);
    return Error(std::move(finding), exitCode);
}

/// A complaint about one piece of text, with the offset (characters from 0) of what was not understood.
struct Complaint {
    std::string code;
    Sentence sentence;
    int offset = 0;
};

/// A value read from text, or the complaint why not. Exactly one of the two is set.
template <class T>
class Parsed
{
  public:
    Parsed(T value) : value_(std::move(value)), good_(true) {}        // NOLINT: implicit on purpose
    Parsed(Complaint complaint) : complaint_(std::move(complaint)) {} // NOLINT: implicit on purpose

    [[nodiscard]] explicit operator bool() const { return good_; }
    [[nodiscard]] const T& value() const { return value_; }
    [[nodiscard]] const Complaint& complaint() const { return complaint_; }

  private:
    T value_{};
    Complaint complaint_;
    bool good_ = false;
};

/// A value read from a file together with everything found on the way. `usable` is false after any error.
template <class T>
struct Reading {
    T value{};
    std::vector<Finding> findings;

    [[nodiscard]] bool usable() const
    {
        for (const auto& finding : findings)
            if (finding.severity == Severity::error)
                return false;
        return true;
    }
};

} // namespace quarterstep
