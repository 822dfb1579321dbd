// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/clear_range.hpp"

#include <algorithm>
#include <limits>

namespace quarterstep
{

namespace
{

constexpr double oneLineOfBlur = 0.50; // D

} // namespace

std::optional<Range> clearRange(const Need& need, const Fit& fit)
{
    if (!need.nearWork())
        return {};
    constexpr double endless = std::numeric_limits<double>::infinity();
    Range range{0.0, endless};
    for (const Eye eye : bothEyes) {
        const auto& judged = fit.eyes.of(eye);
        if (!judged)
            continue;
        const auto& wanted = need.eyes.of(eye);
        const double supplied = wanted.addition + judged->error.m;
        const double nearest = supplied + wanted.accommodation + oneLineOfBlur;
        const double farthest = supplied - oneLineOfBlur;
        range.least = std::max(range.least, nearest > 0.0 ? 1000.0 / nearest : endless);
        range.most = std::min(range.most, farthest > 0.0 ? 1000.0 / farthest : endless);
    }
    return range.least < range.most ? std::optional(range) : std::nullopt;
}

} // namespace quarterstep
