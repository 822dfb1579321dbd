// SPDX-License-Identifier: GPL-3.0-or-later
// Prism beside the optical centre and base directions. Inside, x points to the observer's right, which is
// nasal for the right eye and temporal for the left.
#include "core/optics/prism.hpp"

#include "core/optics/angle.hpp"

#include <numbers>

namespace quarterstep
{
namespace
{

/// Turns x of the observer into "in" of the eye and back.
double noseward(double x, Eye eye)
{
    return (eye == Eye::right ? x : -x) + 0.0;
}

} // namespace

EyePrism prismAt(const PowerMatrix& power, Eye eye, double nasal, double above)
{
    const double x = noseward(nasal, eye) / 10.0; // centimetres
    const double y = above / 10.0;
    const double baseX = -(power.f11 * x + power.f12 * y);
    const double baseY = -(power.f12 * x + power.f22 * y);
    return {noseward(baseX, eye), baseY + 0.0};
}

PairPrism pairPrism(const EyePrism& right, const EyePrism& left)
{
    return {right.in + left.in, right.up - left.up};
}

EyePrism prismFromBase(double amount, double baseDegrees, Eye eye)
{
    return {noseward(amount * cosineOfDegrees(baseDegrees), eye), amount * sineOfDegrees(baseDegrees) + 0.0};
}

PrismBase baseOf(const EyePrism& prism, Eye eye)
{
    const double x = noseward(prism.in, eye);
    const double amount = std::sqrt(x * x + prism.up * prism.up);
    if (amount == 0.0)
        return {};
    const double degrees = std::atan2(prism.up, x) * 180.0 / std::numbers::pi;
    return {amount, (degrees < 0.0 ? degrees + 360.0 : degrees) + 0.0};
}

} // namespace quarterstep
