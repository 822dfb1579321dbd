// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/line_code.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

constexpr std::size_t dataDigits = 12;

bool allDigits(std::string_view text)
{
    return std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

Complaint checkDigitComplaint(const std::string& code)
{
    return {"code-check-digit",
            {QS_SAY("core", "the digits %1 do not go together: the last would be %2, not %3; scan again, or "
                            "type what stands below the bars"),
             {code, std::string(1, checkDigitOf(code)), std::string(1, code.back())}},
            static_cast<int>(dataDigits)};
}

} // namespace

char checkDigitOf(std::string_view digits)
{
    int sum = 0;
    for (std::size_t i = 0; i < dataDigits; ++i)
        sum += (digits[i] - '0') * (i % 2 == 0 ? 1 : 3); // the last data digit, number 12, weighs 3
    return static_cast<char>('0' + (10 - sum % 10) % 10);
}

std::string codeDigits(std::string_view text)
{
    if (!allDigits(text))
        return {};
    if (text.size() == dataDigits)
        return "0" + std::string(text);
    return text.size() == dataDigits + 1 ? std::string(text) : std::string();
}

Parsed<std::string> parseLineCode(std::string_view text)
{
    const auto code = codeDigits(text);
    if (code.empty())
        return Complaint{"code-form",
                         {QS_SAY("core", "\"%1\" is not a code; write its thirteen digits (twelve take a 0 "
                                         "before them), or leave the code out"),
                          {std::string(text)}},
                         0};
    if (checkDigitOf(code) != code.back())
        return checkDigitComplaint(code);
    return code;
}

Parsed<std::size_t> lineScanned(std::span<const StockLine> stock, const std::string& text)
{
    const auto at = [&](auto matches) {
        return static_cast<std::size_t>(std::find_if(stock.begin(), stock.end(), matches) - stock.begin());
    };
    if (const auto named = at([&](const StockLine& line) { return line.name == text; }); named < stock.size())
        return named;
    const auto code = codeDigits(text);
    if (!code.empty() && checkDigitOf(code) != code.back())
        return checkDigitComplaint(code);
    const auto coded = at([&](const StockLine& line) { return !code.empty() && line.code == code; });
    if (coded < stock.size())
        return coded;
    return Complaint{"unknown-line", {QS_SAY("core", "there is no line %1 in this camp"), {text}}, 0};
}

} // namespace quarterstep
