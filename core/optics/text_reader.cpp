// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/optics/text_reader.hpp"

#include <array>
#include <cmath>
#include <cstdlib>

namespace quarterstep
{
namespace
{

constexpr std::size_t longestNumber = 12; ///< digits; more is not a power, an axis or an acuity
constexpr std::size_t mostQuoted = 40;    ///< characters of what was read, in a complaint

bool isDigit(char32_t sign)
{
    return sign >= U'0' && sign <= U'9';
}
bool isLetter(char32_t sign)
{
    return sign >= U'a' && sign <= U'z';
}

/// Characters of UTF-8 text; a byte that is not UTF-8 becomes U+FFFD.
std::u32string charactersOf(const std::string& text)
{
    std::u32string characters;
    for (std::size_t i = 0; i < text.size();) {
        const auto lead = static_cast<unsigned char>(text[i]);
        const std::size_t length = lead < 0x80    ? 1
                                   : lead >= 0xF0 ? 4
                                   : lead >= 0xE0 ? 3
                                   : lead >= 0xC2 ? 2
                                                  : 0;
        char32_t sign = lead < 0x80   ? lead
                        : length == 4 ? lead & 0x07U
                        : length == 3 ? lead & 0x0FU
                                      : lead & 0x1FU;
        bool good = length > 0 && lead < 0xF5 && i + length <= text.size();
        for (std::size_t k = 1; good && k < length; ++k) {
            const auto next = static_cast<unsigned char>(text[i + k]);
            good = (next & 0xC0U) == 0x80U;
            sign = (sign << 6U) | (next & 0x3FU);
        }
        characters.push_back(good ? sign : U'\uFFFD');
        i += good ? length : 1;
    }
    return characters;
}

std::string utf8Of(std::u32string_view characters)
{
    std::string text;
    const auto put = [&text](char32_t byte) { text.push_back(static_cast<char>(byte)); };
    for (const char32_t sign : characters) {
        if (sign < 0x80) {
            put(sign);
        } else if (sign < 0x800) {
            put(0xC0U | (sign >> 6U));
            put(0x80U | (sign & 0x3FU));
        } else {
            if (sign < 0x10000) {
                put(0xE0U | (sign >> 12U));
            } else {
                put(0xF0U | (sign >> 18U));
                put(0x80U | ((sign >> 12U) & 0x3FU));
            }
            put(0x80U | ((sign >> 6U) & 0x3FU));
            put(0x80U | (sign & 0x3FU));
        }
    }
    return text;
}

/// At most as many characters as a complaint quotes, the last an ellipsis where some are left out.
std::u32string shortened(std::u32string_view characters)
{
    if (characters.size() <= mostQuoted)
        return std::u32string(characters);
    return std::u32string(characters.substr(0, mostQuoted - 1)) + U'\u2026';
}

/// One sign for all that mean the same.
char32_t madeOne(char32_t sign)
{
    if (sign >= U'A' && sign <= U'Z')
        return sign - U'A' + U'a';
    switch (sign) {
    case U'\u2212': // minus sign
    case U'\u2010':
    case U'\u2011':
    case U'\u2012':
    case U'\u2013':
    case U'\uFE63':
    case U'\uFF0D':
        return U'-';
    case U'\u00D7':
    case U'\u2715':
        return U'x';
    case U'\u2206':
    case U'\u25B3':
    case U'\u0394': // three triangles that stand for the prism dioptre
    case U'^':
        return U'\u0394';
    case U'\t':
    case U'\r':
    case U'\n':
    case U'\u00A0':
    case U'\u2009':
    case U'\u202F':
    case U'\u200E': // direction marks come along when text is copied from a right-to-left page
    case U'\u200F':
    case U'\u2066':
    case U'\u2069':
        return U' ';
    default:
        return sign;
    }
}

} // namespace

TextReader::TextReader(const std::string& text) : original_(charactersOf(text))
{
    text_.reserve(original_.size());
    for (const char32_t sign : original_)
        text_.push_back(madeOne(sign));
}

bool TextReader::digitNext() const
{
    return isDigit(peek());
}

void TextReader::skipBlanks()
{
    while (peek() == U' ')
        ++at_;
}

bool TextReader::take(char32_t sign)
{
    const auto start = at_;
    skipBlanks();
    if (atEnd() || peek() != sign) {
        at_ = start;
        return false;
    }
    ++at_;
    return true;
}

bool TextReader::takeWord(std::string_view word)
{
    const auto start = at_;
    skipBlanks();
    for (const char letter : word) {
        if (letter == ' ') {
            while (peek() == U' ' || peek() == U'-')
                ++at_;
        } else if (peek() == static_cast<char32_t>(static_cast<unsigned char>(letter))) {
            ++at_;
        } else {
            at_ = start;
            return false;
        }
    }
    const bool timesNext = peek() == U'x' && at_ + 1 < text_.size() && !isLetter(text_[at_ + 1]);
    if (isLetter(peek()) && !timesNext) { // "DCx90" is DC and x 90
        at_ = start;
        return false;
    }
    return true;
}

std::optional<WrittenNumber> TextReader::takeNumber()
{
    const auto start = at_;
    skipBlanks();
    WrittenNumber number;
    number.offset = offset();
    while (isDigit(peek()))
        number.digits.push_back(static_cast<char>(text_[at_++]));
    const bool pointNext = peek() == U'.' || peek() == U',';
    if (pointNext && at_ + 1 < text_.size() && isDigit(text_[at_ + 1])) {
        number.point = true;
        number.digits.push_back('.');
        ++at_;
        for (; isDigit(peek()); ++number.decimals)
            number.digits.push_back(static_cast<char>(text_[at_++]));
    }
    const bool secondPoint =
        peek() == U'.' || (peek() == U',' && at_ + 1 < text_.size() && isDigit(text_[at_ + 1]));
    if (number.digits.empty() || number.digits.size() > longestNumber || secondPoint) {
        at_ = start;
        return std::nullopt;
    }
    double all = 0.0; // whole and decimal digits as one integer: exact, and no locale
    double scale = 1.0;
    bool afterPoint = false;
    for (const char sign : number.digits) {
        if (sign == '.') {
            afterPoint = true;
            continue;
        }
        all = all * 10.0 + (sign - '0');
        scale = afterPoint ? scale * 10.0 : scale;
    }
    number.value = std::round(all / scale * 1000.0) / 1000.0;
    return number;
}

std::string TextReader::rest() const
{
    return utf8Of(shortened(std::u32string_view(original_).substr(at_)));
}

std::string TextReader::between(int from, int to) const
{
    const auto begin = static_cast<std::size_t>(from);
    return utf8Of(std::u32string_view(original_).substr(begin, static_cast<std::size_t>(to) - begin));
}

bool TextReader::holds(char32_t sign, int from, int to) const
{
    const auto begin = static_cast<std::size_t>(from);
    return std::u32string_view(text_).substr(begin, static_cast<std::size_t>(to) - begin).find(sign) !=
           std::u32string_view::npos;
}

std::string quoted(const std::string& text)
{
    // four bytes a character at most: no need to decode the whole of a long text
    const auto characters = charactersOf(text.substr(0, 4 * (mostQuoted + 1)));
    return characters.size() <= mostQuoted && text.size() <= 4 * (mostQuoted + 1)
               ? text
               : utf8Of(shortened(characters));
}

std::string writeShort(double value, int decimals)
{
    constexpr double largest = 1e12;
    if (!(std::fabs(value) < largest))
        return "?"; // not a number, or far from any quantity of the trade
    long scale = 1;
    for (int i = 0; i < decimals; ++i)
        scale *= 10;
    const long scaled = std::lround(value * static_cast<double>(scale));
    std::string fraction = std::to_string(scale + std::labs(scaled) % scale).substr(1);
    while (!fraction.empty() && fraction.back() == '0')
        fraction.pop_back();
    std::string text = scaled < 0 ? "-" : "";
    text += std::to_string(std::labs(scaled) / scale);
    if (!fraction.empty())
        text += '.';
    return text += fraction;
}

} // namespace quarterstep
