// SPDX-License-Identifier: GPL-3.0-or-later
// How often something goes wrong, with honest limits: exact binomial, never a league table.
// Clopper CJ, Pearson ES, Biometrika 1934;26:404-413 (exact limits); Spiegelhalter DJ, Stat Med
// 2005;24:1185-1202 (funnel); Benneyan JC, Health Care Manag Sci 2001;4:305-318 (g-chart).
#pragma once

#include <cstdint>
#include <optional>

namespace quarterstep
{

/// Hand-overs at odds among those judged.
struct Tally {
    std::int64_t judged = 0;
    std::int64_t mismatches = 0;
    [[nodiscard]] double share() const
    {
        return judged > 0 ? static_cast<double>(mismatches) / static_cast<double>(judged) : 0.0;
    }
};

struct ShareLimits {
    double lower = 0.0;
    double upper = 1.0;
};

/// Clopper-Pearson limits of a share, two-sided. @param confidence in (0, 1), 0.95 when left out. With no
/// trials 0 to 1.
[[nodiscard]] ShareLimits exactLimits(const Tally& tally, double confidence = 0.95);

/// Smallest count c with P(X <= c) >= 1 - tail for n trials at `share`: more than c is beyond the limit.
[[nodiscard]] std::int64_t funnelUpper(std::int64_t trials, double share, double tail);
/// Alert at 95 % and alarm at 99.9 %, two-sided: tails of 0.025 and 0.0005 on each side.
inline constexpr double alertTail = 0.025;
inline constexpr double alarmTail = 0.0005;
enum class Funnel { inside, alert, alarm };
[[nodiscard]] Funnel funnelOf(const Tally& tally, double share);

/// Hand-overs from which a p-chart has a lower limit above nought: n > 9 (1 - p) / p. Empty for a share of 0.
[[nodiscard]] std::optional<std::int64_t> pChartNeeds(double share);
/// p +- 3 sqrt(p (1 - p) / n), not below 0 nor above 1.
[[nodiscard]] ShareLimits pChartLimits(double share, std::int64_t trials);

/// g-chart of the number of good hand-overs between two mismatches, by probabilities of the geometric
/// distribution.
struct GChart {
    double centre = 0.0;    ///< median of the geometric distribution
    std::int64_t upper = 0; ///< more good ones in a row than this: better than the share says
};
/// @param share in (0, 1); `tail` as alarmTail or 0.00135 (three sigma)
[[nodiscard]] GChart gChart(double share, double tail = 0.00135);

/// P(X <= most) for n trials at `share`.
[[nodiscard]] double binomialUpTo(std::int64_t most, std::int64_t trials, double share);

} // namespace quarterstep
