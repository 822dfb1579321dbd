// SPDX-License-Identifier: GPL-3.0-or-later
// Sums and differences through the power vector, and the principal powers read off the minus-cylinder form.
#include "core/optics/combined_power.hpp"

#include "core/optics/angle.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

SpheroCylinder combined(const std::vector<SpheroCylinder>& lenses)
{
    PowerVector sum;
    for (const auto& lens : lenses)
        sum = sum + toPowerVector(lens);
    return toSpheroCylinder(sum);
}

SpheroCylinder overRefracted(const SpheroCylinder& worn, const SpheroCylinder& found)
{
    return combined({worn, found});
}

SpheroCylinder residualRefraction(const SpheroCylinder& needed, const SpheroCylinder& worn)
{
    return toSpheroCylinder(toPowerVector(needed) - toPowerVector(worn));
}

double PrincipalPowers::largestSize() const
{
    return std::max(std::fabs(higher), std::fabs(lower));
}

PrincipalPowers principalPowers(const SpheroCylinder& power)
{
    const auto minus = minusCylinderForm(power);
    const double sphere = minus.sphere.value();
    if (minus.cylinder.value() == 0.0)
        return {sphere, sphere, 180.0, 90.0};
    const double axis = foldAxis(minus.axis.value()).value();
    return {sphere, sphere + minus.cylinder.value(), axis, foldAxis(axis + 90.0).value()};
}

} // namespace quarterstep
