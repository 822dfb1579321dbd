// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/source_text.hpp"

#include "inventory/text/large_text.hpp"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <tuple>
#include <unistd.h>

namespace quarterstep
{

namespace
{

constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
constexpr std::size_t blockBytes = 1024;

bool continues(char c)
{
    return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
}

Finding errorAt(Position place, std::string code, Sentence sentence)
{
    return {Severity::error, std::move(place), std::move(code), std::move(sentence)};
}

Finding fileFinding(const std::string& name, std::string code, Sentence sentence)
{
    return errorAt({name, 0, 0}, std::move(code), std::move(sentence));
}

/// Length of the UTF-8 sequence at `at`, 0 when it is not one (overlong, surrogate, cut short, too large).
std::size_t sequenceAt(std::string_view text, std::size_t at)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(at);
    if (first < 0x80U)
        return 1;
    const std::size_t length = first >= 0xF0U ? 4 : first >= 0xE0U ? 3 : 2;
    if (first < 0xC2U || first > 0xF4U || at + length > text.size())
        return 0;
    for (std::size_t i = 1; i < length; ++i)
        if (!continues(text[at + i]))
            return 0;
    const unsigned char second = byte(at + 1);
    const bool overlong = (first == 0xE0U && second < 0xA0U) || (first == 0xF0U && second < 0x90U);
    const bool surrogate = first == 0xEDU && second >= 0xA0U;
    const bool tooLarge = first == 0xF4U && second >= 0x90U;
    return overlong || surrogate || tooLarge ? 0 : length;
}

bool isControl(char c)
{
    const auto byte = static_cast<unsigned char>(c);
    return (byte < 0x20U && c != '\t' && c != '\n' && c != '\r') || byte == 0x7FU;
}

/// One finding for the first byte that is not text; later ones follow from it.
void checkCharacters(const SourceText& source, std::vector<Finding>& findings)
{
    const std::string& text = source.text();
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = sequenceAt(text, at);
        if (length == 0) {
            findings.push_back(
                errorAt(source.at(at), "text-not-utf8",
                        {QS_SAY("core", "this is not UTF-8 text; save the file as UTF-8"), {}}));
            return;
        }
        if (isControl(text[at])) {
            char hex[8];
            std::snprintf(hex, sizeof hex, "%02X", static_cast<unsigned>(text[at]));
            findings.push_back(errorAt(
                source.at(at), "text-control-character",
                {QS_SAY("core", "a control character (hexadecimal %1) stands here; delete it"), {hex}}));
            return;
        }
        at += length;
    }
}

std::string takeAll(int descriptor, std::size_t most, bool& failed, bool& tooLarge)
{
    std::string bytes;
    std::vector<char> block(1U << 16U);
    for (;;) {
        const ssize_t got = ::read(descriptor, block.data(), block.size());
        if (got < 0 && errno == EINTR)
            continue;
        if (got <= 0) {
            failed = got < 0;
            return bytes;
        }
        bytes.append(block.data(), static_cast<std::size_t>(got));
        if (bytes.size() > most) {
            tooLarge = true;
            return bytes;
        }
    }
}

Finding tooLargeFinding(const std::string& name, std::size_t most)
{
    return fileFinding(
        name, "file-too-large",
        {QS_SAY("core", "the file is larger than %1 MiB; split it"), {std::to_string(most / 1024U / 1024U)}});
}

} // namespace

SourceText::SourceText(std::string name, std::string text, std::size_t markBytes)
    : name_(std::move(name)), text_(std::move(text)), markBytes_(markBytes), lineStarts_{0}
{
    std::size_t characters = 0;
    for (std::size_t i = 0; i < text_.size(); ++i) {
        if (i % blockBytes == 0)
            blockCharacters_.push_back(characters);
        characters += continues(text_[i]) ? 0U : 1U;
        if (text_[i] == '\n')
            lineStarts_.push_back(i + 1);
    }
}

std::size_t SourceText::lineBegin(std::size_t offset) const
{
    if (lineStarts_.empty())
        return 0;
    return *(std::upper_bound(lineStarts_.begin(), lineStarts_.end(), offset) - 1);
}

std::size_t SourceText::charactersBefore(std::size_t offset) const
{
    if (blockCharacters_.empty())
        return 0;
    const std::size_t block = std::min(offset / blockBytes, blockCharacters_.size() - 1);
    std::size_t characters = blockCharacters_[block];
    for (std::size_t i = block * blockBytes; i < offset; ++i)
        characters += continues(text_[i]) ? 0U : 1U;
    return characters;
}

Position SourceText::at(std::size_t offset) const
{
    offset = std::min(offset, text_.size());
    const auto line = std::upper_bound(lineStarts_.begin(), lineStarts_.end(), offset) - lineStarts_.begin();
    const std::size_t column = charactersBefore(offset) - charactersBefore(lineBegin(offset)) + 1;
    return {name_, static_cast<int>(std::max<std::ptrdiff_t>(line, 1)), static_cast<int>(column)};
}

namespace
{

Reading<std::string> bytesUpTo(const std::string& path, std::size_t most)
{
    Reading<std::string> reading;
    const bool standardInput = path == "-";
    const int descriptor = standardInput ? STDIN_FILENO : ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) {
        const bool missing = errno == ENOENT || errno == ENOTDIR;
        reading.findings.push_back(
            missing
                ? fileFinding(path, "file-missing",
                              {QS_SAY("core", "there is no such file; check the name and the folder"), {}})
                : fileFinding(path, "file-unreadable",
                              {QS_SAY("core", "the file cannot be read: %1"), {std::strerror(errno)}}));
        return reading;
    }
    struct stat facts {
    };
    bool failed = false;
    bool tooLarge = false;
    if (::fstat(descriptor, &facts) == 0 && S_ISDIR(facts.st_mode))
        reading.findings.push_back(fileFinding(
            path, "file-is-folder", {QS_SAY("core", "this is a folder; name the file inside it"), {}}));
    else
        reading.value = takeAll(descriptor, most, failed, tooLarge);
    if (failed)
        reading.findings.push_back(
            fileFinding(path, "file-unreadable",
                        {QS_SAY("core", "the file cannot be read: %1"), {std::strerror(errno)}}));
    if (tooLarge)
        reading.findings.push_back(tooLargeFinding(path, most));
    if (!standardInput)
        ::close(descriptor);
    return reading;
}

Reading<SourceText> checkedUpTo(std::string bytes, const std::string& name, std::size_t most)
{
    Reading<SourceText> reading;
    if (bytes.size() > most) {
        reading.findings.push_back(tooLargeFinding(name, most));
        return reading;
    }
    const std::string_view view = bytes;
    if (view.substr(0, 2) == "\xFF\xFE" || view.substr(0, 2) == "\xFE\xFF") {
        reading.findings.push_back(
            errorAt({name, 1, 1}, "text-utf16",
                    {QS_SAY("core", "the file is UTF-16 text; save it as UTF-8 and try again"), {}}));
        return reading;
    }
    const bool marked = view.substr(0, byteOrderMark.size()) == byteOrderMark;
    if (marked)
        bytes.erase(0, byteOrderMark.size());
    reading.value = SourceText(name, std::move(bytes), marked ? byteOrderMark.size() : 0);
    if (std::string_view(reading.value.text()).substr(0, byteOrderMark.size()) == byteOrderMark)
        reading.findings.push_back(
            errorAt({name, 1, 1}, "text-mark-twice",
                    {QS_SAY("core", "the file begins with two byte order marks; delete one"), {}}));
    checkCharacters(reading.value, reading.findings);
    return reading;
}

} // namespace

bool holdsBytes(const std::string& path, std::string_view bytes)
{
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0)
        return false;
    std::array<char, 65536> part{};
    ssize_t got = 0;
    do {
        got = ::read(descriptor, part.data(), part.size());
        if (got < 0 && errno == EINTR)
            continue;
        const auto length = static_cast<std::size_t>(std::max<ssize_t>(got, 0));
        if (got < 0 || bytes.substr(0, length) != std::string_view(part.data(), length))
            break;
        bytes.remove_prefix(length);
    } while (got != 0);
    ::close(descriptor);
    return got == 0 && bytes.empty();
}

Reading<std::string> readBytes(const std::string& path)
{
    return bytesUpTo(path, largestTextFile);
}

Reading<std::string> readLargeBytes(const std::string& path)
{
    return bytesUpTo(path, largestMachineFile);
}

Reading<SourceText> checkText(std::string bytes, const std::string& name)
{
    return checkedUpTo(std::move(bytes), name, largestTextFile);
}

Reading<SourceText> checkLargeText(std::string bytes, const std::string& name)
{
    return checkedUpTo(std::move(bytes), name, largestMachineFile);
}

std::string shown(std::string_view text)
{
    constexpr int mostCharacters = 60;
    std::string result;
    int characters = 0;
    for (std::size_t at = 0; at < text.size();) {
        if (++characters > mostCharacters)
            return result + "…";
        const std::size_t length = sequenceAt(text, at);
        const bool plain = length > 0 && static_cast<unsigned char>(text[at]) >= 0x20U && text[at] != 0x7F;
        result += plain ? std::string(text.substr(at, length)) : std::string("?");
        at += std::max<std::size_t>(length, 1);
    }
    return result;
}

std::string lowered(std::string text)
{
    for (char& c : text)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return text;
}

std::size_t charactersIn(std::string_view text)
{
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](char c) { return !continues(c); }));
}

void sortByPlace(std::vector<Finding>& findings)
{
    std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
        return std::tie(a.position.file, a.position.line, a.position.column) <
               std::tie(b.position.file, b.position.line, b.position.column);
    });
}

} // namespace quarterstep
