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

/// Power of one surface carried through the lens to the other, and the other added.
std::optional<double> vertexPower(double carried, double other, const ThickLens& lens)
{
    const double thickness = lens.thickness.value();
    if (lens.index <= 1.0 || thickness < 0.0)
        return std::nullopt;
    const auto through = moved(carried, thickness / 1000.0 / lens.index);
    if (!through)
        return std::nullopt;
    return other + *through + 0.0;
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

std::optional<AsWorn> asWorn(const SpheroCylinder& found, Millimetres refracted, Millimetres worn)
{
    const auto compensated = atVertexDistance(found, refracted, worn);
    const auto effective = atVertexDistance(found, worn, refracted);
    if (!compensated || !effective)
        return std::nullopt;
    return AsWorn{*compensated, *effective, toPowerVector(*effective) - toPowerVector(found)};
}

std::optional<double> backVertexPower(const ThickLens& lens)
{
    return vertexPower(lens.front, lens.back, lens);
}

std::optional<double> frontVertexPower(const ThickLens& lens)
{
    return vertexPower(lens.back, lens.front, lens);
}

double nominalPower(const ThickLens& lens)
{
    return lens.front + lens.back + 0.0;
}

} // namespace quarterstep
