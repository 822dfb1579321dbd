// SPDX-License-Identifier: GPL-3.0-or-later
// The chance that a power vector known only up to normal scatter is no longer than a given length: how likely
// the true blur of an eye lies within its limit. Thibos LN, Wheeler W, Horner D, Optom Vis Sci
// 1997;74:367-375 (normal scatter of power vectors); the squared length is a sum of non-central chi-squares.
//
// Method: the covariance is turned to its principal axes, where the three components are independent. The
// ball of the given radius is integrated along the two axes of largest scatter by Gauss-Legendre quadrature
// (both put as radius times sine, which leaves no kink at the rim), along the third in closed form by the
// error function.
#pragma once

#include "core/optics/covariance.hpp"

namespace quarterstep
{

/// Scatter smaller than this (D) along a principal axis is taken as this: no chart and no lens tells it
/// apart, and readings in quarter steps scatter more by their rounding alone.
inline constexpr double leastScatter = 0.02;

/// Chance that a vector with this mean (D) and covariance (D²) has a length of at most `radius` (D).
/// Between 0 and 1; radius <= 0 gives 0. Error at most 1e-3, checked for radius 0.1 to 2 D and standard
/// deviations from leastScatter to 2 D. Never throws.
[[nodiscard]] double chanceWithin(const PowerVector& mean, const Covariance& scatter, double radius);

} // namespace quarterstep
