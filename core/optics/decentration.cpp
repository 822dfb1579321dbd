// SPDX-License-Identifier: GPL-3.0-or-later
// Solves P = c F along the principal directions of F, so that a singular lens is no special case: a direction
// without power drops out. Inside, x points to the observer's right, as in prism.cpp.
#include "core/optics/decentration.hpp"

#include <cmath>

namespace quarterstep
{
namespace
{

constexpr double noPower = 0.005; ///< dioptres
constexpr double noPrism = 1e-9;  ///< prism dioptres
constexpr double mmInCm = 10.0;

double noseward(double x, Eye eye)
{
    return (eye == Eye::right ? x : -x) + 0.0;
}

/// Eigenvalues of a symmetric 2 × 2 matrix, and the unit direction of the first; the second is at right
/// angles.
struct Principal {
    double first = 0.0;
    double second = 0.0;
    double x = 1.0;
    double y = 0.0;
};

Principal principalOf(const PowerMatrix& power)
{
    const double mean = (power.f11 + power.f22) / 2.0;
    const double half = (power.f11 - power.f22) / 2.0;
    const double size = std::hypot(half, power.f12);
    if (size == 0.0)
        return {mean, mean, 1.0, 0.0};
    const double angle = std::atan2(power.f12, half) / 2.0;
    return {mean + size, mean - size, std::cos(angle), std::sin(angle)};
}

EyePrism exactPrism(const PowerMatrix& power, Eye eye, const Decentration& moved)
{
    return prismAt(power, eye, 0.0 - moved.in, 0.0 - moved.up);
}

DecentrationAnswer answered(DecentrationAnswer::Kind kind, const PowerMatrix& power, Eye eye,
                            const EyePrism& wanted, const Decentration& moved)
{
    DecentrationAnswer answer;
    answer.kind = kind;
    answer.moved = moved;
    answer.given = exactPrism(power, eye, moved);
    if (kind == DecentrationAnswer::Kind::none || kind == DecentrationAnswer::Kind::noPower)
        answer.missing = {wanted.in - answer.given.in, wanted.up - answer.given.up};
    answer.distance = std::hypot(moved.in, moved.up);
    return answer;
}

/// F is regular: the inverse in closed form, which keeps right angles exact.
Decentration solved(const PowerMatrix& power, Eye eye, const EyePrism& wanted)
{
    const double x = noseward(wanted.in, eye);
    const double determinant = power.f11 * power.f22 - power.f12 * power.f12;
    const double cx = (power.f22 * x - power.f12 * wanted.up) / determinant;
    const double cy = (power.f11 * wanted.up - power.f12 * x) / determinant;
    return {noseward(cx * mmInCm, eye), cy * mmInCm + 0.0};
}

} // namespace

EyePrism compounded(const std::vector<EyePrism>& prisms)
{
    EyePrism sum;
    for (const auto& prism : prisms) {
        sum.in += prism.in;
        sum.up += prism.up;
    }
    return sum;
}

EyePrism prismFromDecentration(const PowerMatrix& power, Eye eye, const Decentration& moved)
{
    return exactPrism(power, eye, moved);
}

DecentrationAnswer decentrationFor(const PowerMatrix& power, Eye eye, const EyePrism& wanted)
{
    using Kind = DecentrationAnswer::Kind;
    const auto principal = principalOf(power);
    const bool first = std::fabs(principal.first) >= noPower;
    const bool second = std::fabs(principal.second) >= noPower;
    if (first && second)
        return answered(Kind::one, power, eye, wanted, solved(power, eye, wanted));
    const bool nothing = std::hypot(wanted.in, wanted.up) < noPrism;
    if (!first && !second)
        return answered(nothing ? Kind::line : Kind::noPower, power, eye, wanted, {});
    // one direction carries all the power: only prism along it can be had
    const double ux = first ? principal.x : -principal.y;
    const double uy = first ? principal.y : principal.x;
    const double x = noseward(wanted.in, eye);
    const double along = ux * x + uy * wanted.up;
    const double across = ux * wanted.up - uy * x;
    const double distance = along / (first ? principal.first : principal.second) * mmInCm;
    const Decentration moved{noseward(ux * distance, eye), uy * distance + 0.0};
    return answered(std::fabs(across) < noPrism ? Kind::line : Kind::none, power, eye, wanted, moved);
}

PairPrism prismAtReadingLevel(const PowerMatrix& right, const PowerMatrix& left, double below, double nasal)
{
    return pairPrism(prismAt(right, Eye::right, nasal, -below), prismAt(left, Eye::left, nasal, -below));
}

} // namespace quarterstep
