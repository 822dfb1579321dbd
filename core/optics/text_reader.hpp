// SPDX-License-Identifier: GPL-3.0-or-later
// A reading head over one short piece of text, for notation and acuity. Offsets count characters, not bytes.
// The many signs that people and programs write for minus, times and blank are made one on the way in, and
// letters small. Internal to core/optics.
#pragma once

#include "core/finding.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace quarterstep
{

/// An unsigned number as written. Value and digits; nothing is decided about it here.
struct WrittenNumber {
    std::string digits; ///< with a dot, as "0.75", "75", ".5"
    double value = 0.0; ///< exact to a thousandth
    bool point = false; ///< a decimal point or comma was written
    int decimals = 0;
    int offset = 0;
};

class TextReader
{
  public:
    explicit TextReader(const std::string& text);

    [[nodiscard]] bool atEnd() const { return at_ >= text_.size(); }
    [[nodiscard]] int offset() const { return static_cast<int>(at_); }
    [[nodiscard]] char32_t peek() const { return atEnd() ? U'\0' : text_[at_]; }
    [[nodiscard]] bool digitNext() const;
    void skipBlanks();
    /// Takes this sign when it comes next (blanks before it skipped).
    bool take(char32_t sign);
    /// Takes this word (small letters) when it comes next and no letter follows it; blanks before it skipped,
    /// a blank in `word` stands for any blanks or a hyphen, also none.
    bool takeWord(std::string_view word);
    /// Reads digits with an optional decimal point or comma; a comma before a blank separates. Empty when
    /// none comes next or the form is not a number ("1.", "1.2.3").
    std::optional<WrittenNumber> takeNumber();
    /// What is left, as written, for a complaint: at most 40 characters.
    [[nodiscard]] std::string rest() const;
    /// The characters from `from` up to the head, as written.
    [[nodiscard]] std::string between(int from, int to) const;

    /// Whether a sign, made one, stands between two offsets.
    [[nodiscard]] bool holds(char32_t sign, int from, int to) const;

    [[nodiscard]] std::size_t mark() const { return at_; }
    void goBack(std::size_t mark) { at_ = mark; }

  private:
    std::u32string text_;     ///< made one
    std::u32string original_; ///< as written, same length
    std::size_t at_ = 0;
};

/// A text for a complaint: at most 40 characters, the last an ellipsis where some are left out.
[[nodiscard]] std::string quoted(const std::string& text);

/// Value with at most `decimals` decimals, trailing zeros cut: 77.5, 90. "?" for what is not finite or beyond
/// 1e12.
[[nodiscard]] std::string writeShort(double value, int decimals);

} // namespace quarterstep
