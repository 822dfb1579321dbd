// SPDX-License-Identifier: GPL-3.0-or-later
// Counts of people that may leave the camp: small ones are hidden, since few people can be known again.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace quarterstep
{

/// Counts below this are hidden (common practice in published tables of persons).
inline constexpr int leastShown = 5;

struct CountCell {
    std::string name;
    int count = 0;
};
struct MaskedCell {
    std::string name;
    std::optional<int> count; ///< empty: hidden
};

/// Hides the counts 1 to 4 of one breakdown. Where that hides one cell alone, the smallest other one is
/// hidden too, or a total known from elsewhere would give it away. Nought is shown.
[[nodiscard]] std::vector<MaskedCell> masked(const std::vector<CountCell>& cells);

} // namespace quarterstep
