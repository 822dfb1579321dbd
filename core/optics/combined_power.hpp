// SPDX-License-Identifier: GPL-3.0-or-later
// Powers put together and taken apart: obliquely crossed cylinders, over-refraction, residual, principal
// powers. Thin lenses in contact; everything by components of the power vector, so that no case is special.
// Source: Thibos LN, Wheeler W, Horner D, Optom Vis Sci 1997;74:367-375.
#pragma once

#include "core/optics/power_vector.hpp"

#include <vector>

namespace quarterstep
{

/// The single lens equal to thin lenses in contact, crossed at any angle; minus-cylinder form, unrounded,
/// within 1e-12 D for powers up to 40 D. An empty list is plano.
[[nodiscard]] SpheroCylinder combined(const std::vector<SpheroCylinder>& lenses);

/// What the eye needs when `found` was found by refracting over the worn `worn`: their sum.
[[nodiscard]] SpheroCylinder overRefracted(const SpheroCylinder& worn, const SpheroCylinder& found);

/// The over-refraction still to be found with `worn` in place of `needed`: needed - worn. Its negative is the
/// error supplied - needed of the model of fit.
[[nodiscard]] SpheroCylinder residualRefraction(const SpheroCylinder& needed, const SpheroCylinder& worn);

/// The two principal powers (dioptres) and the meridians along which they act (degrees, (0, 180]).
struct PrincipalPowers {
    double higher = 0.0; ///< the more plus of the two: the sphere of the minus-cylinder form
    double lower = 0.0;
    double higherMeridian = 180.0;
    double lowerMeridian = 90.0;

    /// The larger of the two sizes, dioptres, >= 0.
    [[nodiscard]] double largestSize() const;
};

/// Exact for a written power. A sphere has both alike, at 180 and 90.
[[nodiscard]] PrincipalPowers principalPowers(const SpheroCylinder& power);

} // namespace quarterstep
