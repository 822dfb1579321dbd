// SPDX-License-Identifier: GPL-3.0-or-later
// Power vectors M, J0, J45 (Thibos LN, Wheeler W, Horner D, Optom Vis Sci 1997;74:367-375).
#include "core/optics/power_vector.hpp"

#include "core/optics/angle.hpp"

#include <numbers>

namespace quarterstep
{
namespace
{

constexpr double noCylinder = 1e-9; ///< dioptres, below which an axis has no meaning

/// Turns -0 into 0 and leaves everything else alone.
double unsignedZero(double value)
{
    return value + 0.0;
}

} // namespace

PowerVector toPowerVector(const SpheroCylinder& power)
{
    const double half = power.cylinder.value() / 2.0;
    if (half == 0.0)
        return {unsignedZero(power.sphere.value()), 0.0, 0.0};
    const double doubled = 2.0 * power.axis.value();
    return {unsignedZero(power.sphere.value() + half), unsignedZero(-half * cosineOfDegrees(doubled)),
            unsignedZero(-half * sineOfDegrees(doubled))};
}

SpheroCylinder toSpheroCylinder(const PowerVector& vector)
{
    const double size = cylinderSize(vector);
    if (size < noCylinder)
        return {Dioptres{unsignedZero(vector.m)}, Dioptres{}, AxisDegrees{180.0}};
    const double axis = 0.5 * std::atan2(vector.j45, vector.j0) * 180.0 / std::numbers::pi;
    return {Dioptres{unsignedZero(vector.m + size / 2.0)}, Dioptres{-size}, foldAxis(axis)};
}

double blurStrength(const PowerVector& vector)
{
    return std::sqrt(vector.m * vector.m + vector.j0 * vector.j0 + vector.j45 * vector.j45);
}

double cylinderSize(const PowerVector& vector)
{
    return 2.0 * std::sqrt(vector.j0 * vector.j0 + vector.j45 * vector.j45);
}

double powerInMeridian(const PowerVector& vector, double meridianDegrees)
{
    const double doubled = 2.0 * meridianDegrees;
    return unsignedZero(vector.m + vector.j0 * cosineOfDegrees(doubled) +
                        vector.j45 * sineOfDegrees(doubled));
}

PowerVector meanVector(const std::vector<PowerVector>& vectors)
{
    if (vectors.empty())
        return {};
    PowerVector sum;
    for (const auto& vector : vectors)
        sum = sum + vector;
    return (1.0 / static_cast<double>(vectors.size())) * sum;
}

} // namespace quarterstep
