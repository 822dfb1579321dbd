// SPDX-License-Identifier: GPL-3.0-or-later
// Calendar dates of the table: ISO 8601, year-month-day, Gregorian.
#pragma once

#include <optional>
#include <string>

namespace quarterstep
{

struct IsoDate {
    int year = 0;
    int month = 0;
    int day = 0;
    auto operator<=>(const IsoDate&) const = default;
};

/// "2026-03-01"; empty for anything else, or for a day that does not exist. Years 1900 to 2199.
[[nodiscard]] std::optional<IsoDate> parseIsoDate(const std::string& text);

/// Whole months from one date to a later one; negative when it lies before.
[[nodiscard]] int monthsBetween(const IsoDate& from, const IsoDate& to);

} // namespace quarterstep
