// SPDX-License-Identifier: GPL-3.0-or-later
// Power vectors: M = S + C/2, J0 = -(C/2) cos 2a, J45 = -(C/2) sin 2a; blur strength b = |(M, J0, J45)|.
// Source: Thibos LN, Wheeler W, Horner D, Optom Vis Sci 1997;74:367-375.
#pragma once

#include "core/optics/sphero_cylinder.hpp"

#include <vector>

namespace quarterstep
{

/// All three components in dioptres.
struct PowerVector {
    double m = 0.0;
    double j0 = 0.0;
    double j45 = 0.0;

    friend PowerVector operator+(PowerVector a, PowerVector b)
    {
        return {a.m + b.m, a.j0 + b.j0, a.j45 + b.j45};
    }
    friend PowerVector operator-(PowerVector a, PowerVector b)
    {
        return {a.m - b.m, a.j0 - b.j0, a.j45 - b.j45};
    }
    friend PowerVector operator*(double k, PowerVector a) { return {k * a.m, k * a.j0, k * a.j45}; }
    bool operator==(const PowerVector&) const = default;
};

/// Power vector of a written power. Either cylinder sign; with zero cylinder the axis is ignored.
/// For multiples of 0.125 D up to 30 D and whole-degree axes, transposed forms give identical vectors;
/// J45 == 0 exactly at axes 90 and 180, J0 == 0 exactly at 45 and 135; never -0. Never throws.
[[nodiscard]] PowerVector toPowerVector(const SpheroCylinder& power);

/// Minus-cylinder form of a power vector, unrounded; cylinder under 1e-9 D is written 0 at axis 180.
[[nodiscard]] SpheroCylinder toSpheroCylinder(const PowerVector& vector);

/// Blur strength b, dioptres, >= 0.
[[nodiscard]] double blurStrength(const PowerVector& vector);
/// Size of the cylinder, 2 sqrt(J0^2 + J45^2), dioptres, >= 0.
[[nodiscard]] double cylinderSize(const PowerVector& vector);
/// Power along a meridian, principal or any other: M + J0 cos 2a + J45 sin 2a, `a` in degrees.
[[nodiscard]] double powerInMeridian(const PowerVector& vector, double meridianDegrees);
/// Mean by components. Empty gives the zero vector.
[[nodiscard]] PowerVector meanVector(const std::vector<PowerVector>& vectors);

} // namespace quarterstep
