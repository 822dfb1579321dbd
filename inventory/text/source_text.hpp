// SPDX-License-Identifier: GPL-3.0-or-later
// Bytes of a text file, checked before anything reads them: size, UTF-8, no control characters; places as
// line and column in characters.
#pragma once

#include "core/finding.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace quarterstep
{

/// Largest text file read, bytes.
inline constexpr std::size_t largestTextFile = std::size_t{16} * 1024 * 1024;

/// Text without its byte order mark. Offsets are bytes of `text`.
class SourceText
{
  public:
    SourceText() = default;
    SourceText(std::string name, std::string text, std::size_t markBytes);

    [[nodiscard]] const std::string& name() const { return name_; }
    [[nodiscard]] const std::string& text() const { return text_; }
    /// Bytes of the byte order mark that stood before the text: 0 or 3.
    [[nodiscard]] std::size_t markBytes() const { return markBytes_; }
    /// Line and column (in characters) from 1. An offset beyond the end is the end.
    [[nodiscard]] Position at(std::size_t offset) const;
    /// First byte of the line that holds `offset`.
    [[nodiscard]] std::size_t lineBegin(std::size_t offset) const;

  private:
    std::string name_;
    std::string text_;
    std::size_t markBytes_ = 0;
    [[nodiscard]] std::size_t charactersBefore(std::size_t offset) const;

    std::vector<std::size_t> lineStarts_;
    std::vector<std::size_t>
        blockCharacters_; ///< characters before each block of bytes: long lines stay cheap
};

/// The bytes of a regular file, or of standard input for "-". Findings: file-missing, file-is-folder,
/// file-unreadable, file-too-large.
[[nodiscard]] Reading<std::string> readBytes(const std::string& path);
/// Whether a file can be read and holds exactly these bytes; they are compared a piece at a time.
[[nodiscard]] bool holdsBytes(const std::string& path, std::string_view bytes);

/// What a file holds, read by `read(bytes, path)`; findings of readBytes where it cannot be read at all.
template <class Read>
[[nodiscard]] auto readWholeFile(const std::string& path, Read read) -> decltype(read(std::string(), path))
{
    auto bytes = readBytes(path);
    if (!bytes.usable())
        return {{}, std::move(bytes.findings)};
    return read(std::move(bytes.value), path);
}

/// Checks bytes: file-too-large, text-utf16, text-not-utf8, text-control-character, text-mark-twice; each
/// with its place.
[[nodiscard]] Reading<SourceText> checkText(std::string bytes, const std::string& name);

/// Text to show in a message: at most 60 characters, control characters as "?".
[[nodiscard]] std::string shown(std::string_view text);

/// The same with small Latin letters; what is not a Latin capital stays.
[[nodiscard]] std::string lowered(std::string text);

/// Characters of UTF-8 text.
[[nodiscard]] std::size_t charactersIn(std::string_view text);

/// Sorts by file, line and column; equal places keep their order.
void sortByPlace(std::vector<Finding>& findings);

} // namespace quarterstep
