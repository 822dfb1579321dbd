// SPDX-License-Identifier: GPL-3.0-or-later
// Scatter of power vectors: covariance of (M, J0, J45), its principal directions, and ellipsoids.
// Source: Thibos LN, Wheeler W, Horner D, Optom Vis Sci 1997;74:367-375; Rubin A, Evans T, Hasrod N, BMJ Open
// Ophthalmol 2022;7:e000929 (ellipsoids of the distribution and of the mean).
#pragma once

#include "core/optics/power_vector.hpp"

#include <array>
#include <optional>
#include <vector>

namespace quarterstep
{

/// Symmetric 3 × 3, square dioptres; the order of components is M, J0, J45.
struct Covariance {
    double mm = 0.0;
    double m0 = 0.0;
    double m45 = 0.0;
    double j00 = 0.0;
    double j045 = 0.0;
    double j4545 = 0.0;

    /// Sum of the three variances: the mean square distance from the mean.
    [[nodiscard]] double total() const { return mm + j00 + j4545; }
};

/// Divisor n - 1. Empty for fewer than two vectors.
[[nodiscard]] std::optional<Covariance> covarianceOf(const std::vector<PowerVector>& vectors);

/// A principal direction (unit vector) and the variance along it.
struct PrincipalScatter {
    double variance = 0.0;
    PowerVector direction;
};

/// Largest variance first; by plane rotations until nothing off the diagonal is left beyond 1e-15 of the
/// total. Directions are at right angles within 1e-12.
[[nodiscard]] std::array<PrincipalScatter, 3> principalScatter(const Covariance& covariance);

/// Squared Mahalanobis distance d' S^-1 d. Empty where S is singular (smallest variance below 1e-12 of the
/// largest).
[[nodiscard]] std::optional<double> mahalanobisSquared(const Covariance& covariance, const PowerVector& away);

/// An ellipsoid about a centre.
struct Ellipsoid {
    PowerVector centre;
    double radiusSquared = 0.0;              ///< in units of the scatter: chi-square or T²/n
    std::array<double, 3> halfAxes{};        ///< dioptres, largest first
    std::array<PowerVector, 3> directions{}; ///< unit vectors
    [[nodiscard]] double volume() const;     ///< cubic dioptres
};

/// Within which the share `p` of single readings lies: radius² = chi-square(3). The covariance is taken as
/// known, which for few readings draws it too small. 0 < p < 1.
[[nodiscard]] Ellipsoid ellipsoidOfDistribution(const PowerVector& mean, const Covariance& covariance,
                                                double p);
/// Within which the true mean lies with confidence `p`: radius² = T²(3, n)/n. Empty for fewer than four
/// readings.
[[nodiscard]] std::optional<Ellipsoid> ellipsoidOfMean(const PowerVector& mean, const Covariance& covariance,
                                                       int count, double p);

} // namespace quarterstep
