// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/table_dates.hpp"

#include <charconv>
#include <chrono>

namespace quarterstep
{

std::optional<IsoDate> parseIsoDate(const std::string& text)
{
    constexpr std::size_t length = 10;
    if (text.size() != length || text[4] != '-' || text[7] != '-')
        return std::nullopt;
    const auto digits = [&](std::size_t begin, std::size_t count) {
        int value = -1;
        const char* first = text.data() + begin;
        const auto [end, trouble] = std::from_chars(first, first + count, value);
        return trouble == std::errc{} && end == first + count && *first != '-' ? value : -1;
    };
    const IsoDate date{digits(0, 4), digits(5, 2), digits(8, 2)};
    if (date.year < 1900 || date.year > 2199 || date.month < 1 || date.day < 1)
        return std::nullopt;
    const std::chrono::year_month_day day{std::chrono::year{date.year},
                                          std::chrono::month{static_cast<unsigned>(date.month)},
                                          std::chrono::day{static_cast<unsigned>(date.day)}};
    return day.ok() ? std::optional(date) : std::nullopt;
}

int monthsBetween(const IsoDate& from, const IsoDate& to)
{
    constexpr int monthsInYear = 12;
    const int months = (to.year - from.year) * monthsInYear + to.month - from.month;
    if (months > 0 && to.day < from.day)
        return months - 1;
    if (to < from)
        return months < 0 ? months : -1;
    return months;
}

} // namespace quarterstep
