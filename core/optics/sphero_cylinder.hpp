// SPDX-License-Identifier: GPL-3.0-or-later
// A power as it is written: sphere, cylinder and axis (ISO 13666, ISO 8429).
#pragma once

#include "core/optics/units.hpp"

namespace quarterstep
{

/// sphere and cylinder in dioptres (either cylinder sign), axis in (0, 180]; with zero cylinder the axis is
/// meaningless and kept at 180.
struct SpheroCylinder {
    Dioptres sphere;
    Dioptres cylinder;
    AxisDegrees axis{180.0};

    /// Equal as written (to a milli-dioptre); axis counts only with a cylinder.
    friend bool operator==(const SpheroCylinder& a, const SpheroCylinder& b)
    {
        return a.sphere == b.sphere && a.cylinder == b.cylinder &&
               (a.cylinder == Dioptres{} || a.axis == b.axis);
    }
};

/// A sphere without cylinder.
[[nodiscard]] constexpr SpheroCylinder sphereOf(double dioptres)
{
    return {Dioptres{dioptres}, Dioptres{}, AxisDegrees{180.0}};
}

/// The same power with the other cylinder sign: S + C, -C, axis ± 90 in (0, 180]. A sphere is unchanged.
[[nodiscard]] SpheroCylinder transposed(const SpheroCylinder& power);
/// The minus-cylinder form (cylinder <= 0) and the plus-cylinder form (cylinder >= 0).
[[nodiscard]] SpheroCylinder minusCylinderForm(const SpheroCylinder& power);
[[nodiscard]] SpheroCylinder plusCylinderForm(const SpheroCylinder& power);
/// Mean sphere S + C/2.
[[nodiscard]] Dioptres meanSphere(const SpheroCylinder& power);
/// The power with `extra` dioptres of sphere added, for example an addition.
[[nodiscard]] SpheroCylinder withSphereAdded(const SpheroCylinder& power, Dioptres extra);

} // namespace quarterstep
