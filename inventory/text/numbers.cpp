// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/numbers.hpp"

#include "inventory/text/source_text.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

namespace quarterstep
{

namespace
{

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

bool allDigits(std::string_view text)
{
    return !text.empty() && std::all_of(text.begin(), text.end(), isDigit);
}

/// Sign, digits, one mark, digits: what a person would call a decimal number.
struct DecimalParts {
    bool negative = false;
    std::string whole;
    std::string decimals;
    bool comma = false;
};

std::optional<DecimalParts> splitDecimal(std::string_view text)
{
    DecimalParts parts;
    if (!text.empty() && (text.front() == '-' || text.front() == '+')) {
        parts.negative = text.front() == '-';
        text.remove_prefix(1);
    }
    const std::size_t mark = text.find_first_of(".,");
    parts.whole = std::string(text.substr(0, mark));
    if (mark != std::string_view::npos) {
        parts.comma = text[mark] == ',';
        parts.decimals = std::string(text.substr(mark + 1));
        if (!allDigits(parts.decimals))
            return std::nullopt;
    }
    constexpr std::size_t longest = 12;
    if (!allDigits(parts.whole) || parts.whole.size() > longest || parts.decimals.size() > longest)
        return std::nullopt;
    return parts;
}

Complaint notANumber(const std::string& text, double least, double most)
{
    return {"number-not-a-number",
            {QS_SAY("core", "\"%1\" is not a number; write one from %2 to %3"),
             {shown(text), writeNumber(least), writeNumber(most)}},
            0};
}

Complaint outOfRange(const std::string& text, double least, double most)
{
    return {"number-range",
            {QS_SAY("core", "%1 is outside %2 to %3"), {shown(text), writeNumber(least), writeNumber(most)}},
            0};
}

std::optional<Complaint> complaintAbout(const std::string& text, double least, double most, Decimals decimals)
{
    if (text.empty())
        return Complaint{"number-empty",
                         {QS_SAY("core", "a number is missing; write one from %1 to %2"),
                          {writeNumber(least), writeNumber(most)}},
                         0};
    const auto parts = splitDecimal(text);
    if (!parts)
        return notANumber(text, least, most);
    if (parts->comma && decimals == Decimals::dotOnly) {
        std::string dotted = text;
        std::replace(dotted.begin(), dotted.end(), ',', '.');
        return Complaint{"number-comma",
                         {QS_SAY("core", "\"%1\" has a decimal comma; in this file write %2"),
                          {shown(text), shown(dotted)}},
                         0};
    }
    return std::nullopt;
}

Complaint notWhole(const std::string& text)
{
    const auto parts = splitDecimal(text);
    if (parts && parts->negative)
        return {"number-negative", {QS_SAY("core", "%1 is below zero; write 0 or more"), {shown(text)}}, 0};
    if (parts && text.front() == '+')
        return {
            "number-not-a-number", {QS_SAY("core", "write %1 without a sign"), {shown(text.substr(1))}}, 0};
    if (parts)
        return {"number-not-whole",
                {QS_SAY("core", "%1 is not a whole number; write digits only"), {shown(text)}},
                0};
    return {
        "number-not-a-number",
        {QS_SAY("core", "\"%1\" is not a whole number; write digits only, for example 14"), {shown(text)}},
        0};
}

} // namespace

Parsed<long> parseWholeNumber(const std::string& text, long least, long most)
{
    if (text.empty())
        return Complaint{"number-empty",
                         {QS_SAY("core", "a whole number is missing; write one from %1 to %2"),
                          {std::to_string(least), std::to_string(most)}},
                         0};
    if (!allDigits(text))
        return notWhole(text);
    const std::size_t zeros = std::min(text.find_first_not_of('0'), text.size() - 1);
    if (zeros > 0)
        return Complaint{
            "number-leading-zero",
            {QS_SAY("core", "%1 begins with a zero, which some programs read as another number; write %2"),
             {shown(text), shown(text.substr(zeros))}},
            0};
    long value = 0;
    const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (trouble != std::errc{} || end != text.data() + text.size() || value < least || value > most)
        return outOfRange(text, static_cast<double>(least), static_cast<double>(most));
    return value;
}

Parsed<long> parseThousandths(const std::string& text, double least, double most, Decimals decimals)
{
    if (auto complaint = complaintAbout(text, least, most, decimals))
        return *complaint;
    auto parts = *splitDecimal(text);
    constexpr std::size_t places = 3;
    if (parts.decimals.find_first_not_of('0', places) != std::string::npos)
        return Complaint{"number-too-fine",
                         {QS_SAY("core", "%1 has more than three decimals; round it"), {shown(text)}},
                         0};
    parts.decimals.resize(places, '0');
    long value = 0;
    const std::string digits = parts.whole + parts.decimals;
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    value = parts.negative ? -value : value;
    const double thousand = 1000.0;
    if (static_cast<double>(value) < least * thousand || static_cast<double>(value) > most * thousand)
        return outOfRange(text, least, most);
    return value;
}

Parsed<double> parseNumber(const std::string& text, double least, double most, Decimals decimals)
{
    if (auto complaint = complaintAbout(text, least, most, decimals))
        return *complaint;
    const auto parts = *splitDecimal(text);
    const std::string plain = parts.whole + "." + (parts.decimals.empty() ? "0" : parts.decimals);
    double value = 0.0;
    std::from_chars(plain.data(), plain.data() + plain.size(), value);
    if (parts.negative && value != 0.0)
        value = -value;
    if (value < least || value > most)
        return outOfRange(text, least, most);
    return value;
}

std::string writeNumber(double value)
{
    char buffer[32];
    const auto result = std::to_chars(buffer, buffer + sizeof buffer, value, std::chars_format::fixed);
    return result.ec == std::errc{} ? std::string(buffer, result.ptr) : std::string("?");
}

} // namespace quarterstep
