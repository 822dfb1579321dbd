// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/json_strings.hpp"

#include "inventory/exchange/json_text.hpp"

namespace quarterstep
{

namespace
{

void appendUtf8(std::string& text, unsigned code)
{
    const auto put = [&](unsigned byte) { text += static_cast<char>(byte); };
    if (code < 0x80) {
        put(code);
    } else if (code < 0x800) {
        put(0xC0 | (code >> 6));
        put(0x80 | (code & 0x3F));
    } else if (code < 0x10000) {
        put(0xE0 | (code >> 12));
        put(0x80 | ((code >> 6) & 0x3F));
        put(0x80 | (code & 0x3F));
    } else {
        put(0xF0 | (code >> 18));
        put(0x80 | ((code >> 12) & 0x3F));
        put(0x80 | ((code >> 6) & 0x3F));
        put(0x80 | (code & 0x3F));
    }
}

} // namespace

std::optional<unsigned> jsonFourDigits(std::string_view text)
{
    if (text.size() < 4)
        return std::nullopt;
    unsigned value = 0;
    for (const char c : text.substr(0, 4)) {
        const bool letter = (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F');
        if (!letter && (c < '0' || c > '9'))
            return std::nullopt;
        value = value * 16 + static_cast<unsigned>(letter ? (c | 0x20) - 'a' + 10 : c - '0');
    }
    return value;
}

char jsonEscaped(char letter)
{
    constexpr std::string_view letters = "\"\\/bfnrt";
    constexpr std::string_view values = "\"\\/\b\f\n\r\t";
    const auto at = letters.find(letter);
    return at == std::string_view::npos ? '\0' : values[at];
}

std::string jsonUnquoted(std::string_view quoted)
{
    const auto inside = quoted.substr(1, quoted.size() - 2);
    if (inside.find('\\') == std::string_view::npos)
        return std::string(inside);
    std::string text;
    for (std::size_t at = 0; at < inside.size(); ++at) {
        if (inside[at] != '\\') {
            text += inside[at];
            continue;
        }
        const char letter = inside[++at];
        if (letter != 'u') {
            text += jsonEscaped(letter);
            continue;
        }
        unsigned code = jsonFourDigits(inside.substr(at + 1)).value_or(0);
        at += 4;
        if (code >= firstSurrogate && code < firstLowSurrogate) {
            const unsigned low = jsonFourDigits(inside.substr(at + 3)).value_or(0);
            code = 0x10000 + ((code - firstSurrogate) << 10) + (low - firstLowSurrogate);
            at += 6;
        }
        appendUtf8(text, code);
    }
    return text;
}

std::string jsonQuoted(std::string_view text)
{
    constexpr const char* digits = "0123456789abcdef";
    std::string quoted = "\"";
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\')
            quoted.append(1, '\\').append(1, c);
        else if (byte < 0x20)
            quoted.append("\\u00").append(1, digits[byte >> 4U]).append(1, digits[byte & 0xFU]);
        else
            quoted += c;
    }
    return quoted + "\"";
}

void addJsonMember(std::string& object, std::string_view name, std::string_view value)
{
    if (object.back() != '{')
        object += ',';
    object.append(jsonQuoted(name)).append(1, ':').append(value);
}

} // namespace quarterstep
