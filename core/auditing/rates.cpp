// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/auditing/rates.hpp"

#include <boost/math/special_functions/beta.hpp>

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

double number(std::int64_t count)
{
    return static_cast<double>(count);
}

} // namespace

ShareLimits exactLimits(const Tally& tally, double confidence)
{
    ShareLimits limits;
    const double tail = (1.0 - confidence) / 2.0;
    const double good = number(tally.judged - tally.mismatches);
    const double bad = number(tally.mismatches);
    if (tally.mismatches > 0)
        limits.lower = boost::math::ibeta_inv(bad, good + 1.0, tail);
    if (tally.mismatches < tally.judged)
        limits.upper = boost::math::ibeta_inv(bad + 1.0, good, 1.0 - tail);
    return limits;
}

double binomialUpTo(std::int64_t most, std::int64_t trials, double share)
{
    if (most < 0)
        return 0.0;
    if (most >= trials || share <= 0.0)
        return 1.0;
    if (share >= 1.0)
        return 0.0;
    return boost::math::ibetac(number(most + 1), number(trials - most), share);
}

std::int64_t funnelUpper(std::int64_t trials, double share, double tail)
{
    std::int64_t low = -1; // P(X <= low) is too small
    std::int64_t high = trials;
    while (high - low > 1) {
        const auto middle = low + (high - low) / 2;
        (binomialUpTo(middle, trials, share) >= 1.0 - tail ? high : low) = middle;
    }
    return high;
}

Funnel funnelOf(const Tally& tally, double share)
{
    if (tally.mismatches > funnelUpper(tally.judged, share, alarmTail))
        return Funnel::alarm;
    return tally.mismatches > funnelUpper(tally.judged, share, alertTail) ? Funnel::alert : Funnel::inside;
}

std::optional<std::int64_t> pChartNeeds(double share)
{
    if (share <= 0.0)
        return std::nullopt;
    constexpr double slack = 1e-9; // 9 (1 - 0.02) / 0.02 is 441 and not a little less
    return static_cast<std::int64_t>(std::floor(9.0 * (1.0 - share) / share + slack)) + 1;
}

ShareLimits pChartLimits(double share, std::int64_t trials)
{
    const double wide = trials > 0 ? 3.0 * std::sqrt(share * (1.0 - share) / number(trials)) : 1.0;
    return {std::max(0.0, share - wide), std::min(1.0, share + wide)};
}

GChart gChart(double share, double tail)
{
    // P(at least k good ones in a row) = (1 - share)^k
    const double logGood = std::log1p(-share);
    const auto quantile = [&](double beyond) { // smallest k with P(more than k) <= beyond
        return static_cast<std::int64_t>(std::max(0.0, std::ceil(std::log(beyond) / logGood - 1.0 - 1e-12)));
    };
    return {number(quantile(0.5)), quantile(tail)};
}

} // namespace quarterstep
