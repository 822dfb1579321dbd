// SPDX-License-Identifier: GPL-3.0-or-later
// Quantiles of the distributions used for repeated readings, and Grubbs' test for one outlier.
// Sources: NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.17.1 (Grubbs); quantiles by Boost.Math,
// relative error below 1e-10 in the ranges stated.
#pragma once

#include <optional>
#include <vector>

namespace quarterstep
{

/// Value below which the share `p` of a chi-square with `freedom` degrees lies. 0 < p < 1, 1 <= freedom <=
/// 1e6.
[[nodiscard]] double chiSquareQuantile(double p, double freedom);
/// Likewise F with (`above`, `below`) degrees of freedom, each 1 to 1e6.
[[nodiscard]] double fQuantile(double p, double above, double below);
/// Likewise Student's t.
[[nodiscard]] double studentQuantile(double p, double freedom);

/// Hotelling's T² of `dimensions` components from `count` readings: the value below which the share `p` lies,
/// d (n-1)/(n-d) F(d, n-d). Empty unless count > dimensions.
[[nodiscard]] std::optional<double> hotellingQuantile(double p, int dimensions, int count);

enum class Sides { one, two };

/// Largest distance from the mean in standard deviations (n - 1). Empty for fewer than three values or no
/// scatter.
[[nodiscard]] std::optional<double> grubbsStatistic(const std::vector<double>& values);
/// Distance of one value from the mean in standard deviations.
[[nodiscard]] std::optional<double> grubbsScore(const std::vector<double>& values, double value);
/// Value the statistic exceeds with chance `alpha` when there is no outlier. Empty for count < 3.
[[nodiscard]] std::optional<double> grubbsCritical(int count, double alpha, Sides sides);

} // namespace quarterstep
