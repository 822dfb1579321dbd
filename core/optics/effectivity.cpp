// SPDX-License-Identifier: GPL-3.0-or-later
// Effectivity, meridian by meridian.
#include "core/optics/effectivity.hpp"

namespace quarterstep
{
namespace
{

/// F' = F / (1 - d F), d in metres toward the eye; empty when the light focuses before the new plane.
std::optional<double> moved(double power, double metres)
{
    const double divisor = 1.0 - metres * power;
    if (divisor <= 0.0)
        return std::nullopt;
    return power / divisor + 0.0;
}

} // namespace

std::optional<SpheroCylinder> atVertexDistance(const SpheroCylinder& power, Millimetres from, Millimetres to)
{
    const double metres = (from.value() - to.value()) / 1000.0;
    if (metres == 0.0)
        return power;
    const auto alongAxis = moved(power.sphere.value(), metres);
    const auto acrossAxis = moved(power.sphere.value() + power.cylinder.value(), metres);
    if (!alongAxis || !acrossAxis)
        return std::nullopt;
    return SpheroCylinder{Dioptres{*alongAxis}, Dioptres{*acrossAxis - *alongAxis}, power.axis};
}

} // namespace quarterstep
