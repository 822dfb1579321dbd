// SPDX-License-Identifier: GPL-3.0-or-later
// Quantiles of the distributions used for repeated readings, by Boost.Math: relative error below 1e-10 in the
// ranges stated. Hotelling's T² from F: Rubin A, Evans T, Hasrod N, BMJ Open Ophthalmol 2022;7:e000929.
#pragma once

#include <optional>

namespace quarterstep
{

/// Value below which the share `p` of a chi-square with `freedom` degrees lies. 0 < p < 1, 1 <= freedom <=
/// 1e6.
[[nodiscard]] double chiSquareQuantile(double p, double freedom);
/// Likewise F with (`above`, `below`) degrees of freedom, each 1 to 1e6.
[[nodiscard]] double fQuantile(double p, double above, double below);

/// Hotelling's T² of `dimensions` components from `count` readings: the value below which the share `p` lies,
/// d (n-1)/(n-d) F(d, n-d). Empty unless count > dimensions.
[[nodiscard]] std::optional<double> hotellingQuantile(double p, int dimensions, int count);

} // namespace quarterstep
