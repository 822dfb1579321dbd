// SPDX-License-Identifier: GPL-3.0-or-later
// The two written forms of one power.
#include "core/optics/sphero_cylinder.hpp"

#include "core/optics/angle.hpp"

namespace quarterstep
{

SpheroCylinder transposed(const SpheroCylinder& power)
{
    if (power.cylinder.value() == 0.0)
        return {power.sphere, Dioptres{}, AxisDegrees{180.0}};
    return {power.sphere + power.cylinder, -power.cylinder, foldAxis(power.axis.value() + 90.0)};
}

SpheroCylinder minusCylinderForm(const SpheroCylinder& power)
{
    return power.cylinder.value() > 0.0 ? transposed(power) : power;
}

SpheroCylinder plusCylinderForm(const SpheroCylinder& power)
{
    return power.cylinder.value() < 0.0 ? transposed(power) : power;
}

Dioptres meanSphere(const SpheroCylinder& power)
{
    return power.sphere + power.cylinder / 2.0;
}

SpheroCylinder withSphereAdded(const SpheroCylinder& power, Dioptres extra)
{
    return {power.sphere + extra, power.cylinder, power.axis};
}

} // namespace quarterstep
