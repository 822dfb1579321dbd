// SPDX-License-Identifier: GPL-3.0-or-later
// Prism of a lens and of a pair against a tolerance set.
#include "core/optics/lens_tolerance_parts.hpp"

#include "core/optics/combined_power.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{
namespace
{

constexpr double inclusive = 1e-6;
constexpr double mmInCm = 10.0;
/// Below this power along a direction an optical centre cannot be found, so that nothing is judged in mm.
constexpr double leastCentredPower = 0.50;

/// Size of the power along the horizontal or vertical direction.
double powerAlong(const SpheroCylinder& power, bool horizontal)
{
    const auto matrix = toPowerMatrix(power);
    return std::fabs(horizontal ? matrix.f11 : matrix.f22);
}

/// What a prism rule is asked.
struct Question {
    double error = 0.0;                 ///< prism dioptres
    double ordered = 0.0;               ///< size of the ordered prism
    double power = 0.0;                 ///< size along the direction, D
    double strongest = 0.0;             ///< size of the strongest meridian, D
    std::optional<double> displacement; ///< measured, mm
};

/// The limit in force, prism dioptres: with "or mm" whichever of the two is more lenient.
std::optional<double> prismLimit(const std::vector<PrismRow>& rows, const Question& asked)
{
    const auto row = std::find_if(rows.begin(), rows.end(), [&](const PrismRow& candidate) {
        return asked.ordered <= candidate.orderedUpTo + inclusive &&
               asked.power <= candidate.powerUpTo + inclusive;
    });
    if (row == rows.end())
        return std::nullopt;
    const double limit = row->prism + row->plusMm / mmInCm * asked.strongest;
    if (row->orMm <= 0.0 || asked.power < leastCentredPower - inclusive)
        return limit;
    if (asked.displacement) // measured: within the displacement, any prism of it is allowed
        return std::fabs(*asked.displacement) <= row->orMm + inclusive
                   ? std::max(limit, std::fabs(asked.error))
                   : limit;
    return std::max(limit, row->orMm / mmInCm * asked.power);
}

ToleranceResult judged(ToleranceRule rule, std::optional<Eye> eye, const PrismRule& prism,
                       const Question& asked)
{
    return toleranceResult(rule, eye, asked.error, prismLimit(prism.rows, asked));
}

double meanPower(const PerEye<LensValues>& pair, bool horizontal)
{
    return (powerAlong(pair.right.power, horizontal) + powerAlong(pair.left.power, horizontal)) / 2.0;
}

double strongestOf(const PerEye<LensValues>& pair)
{
    return std::max(principalPowers(pair.right.power).largestSize(),
                    principalPowers(pair.left.power).largestSize());
}

} // namespace

std::vector<ToleranceResult> judgeLensPrism(const ToleranceSet& set, Eye eye, const LensValues& ordered,
                                            const LensValues& read)
{
    std::vector<ToleranceResult> results;
    const double size = std::hypot(ordered.prism.in, ordered.prism.up);
    const double strongest = principalPowers(ordered.power).largestSize();
    if (set.horizontal.of == PrismOf::eachLens && !set.horizontal.rows.empty())
        results.push_back(judged(ToleranceRule::horizontalPrism, eye, set.horizontal,
                                 {read.prism.in - ordered.prism.in, size, powerAlong(ordered.power, true),
                                  strongest, std::nullopt}));
    if (set.vertical.of == PrismOf::eachLens && !set.vertical.rows.empty())
        results.push_back(judged(ToleranceRule::verticalPrism, eye, set.vertical,
                                 {read.prism.up - ordered.prism.up, size, powerAlong(ordered.power, false),
                                  strongest, std::nullopt}));
    return results;
}

std::vector<ToleranceResult> judgePairPrism(const ToleranceSet& set, const PerEye<LensValues>& ordered,
                                            const PerEye<LensValues>& read, std::optional<double> centresOff)
{
    std::vector<ToleranceResult> results;
    const auto wanted = pairPrism(ordered.right.prism, ordered.left.prism);
    const auto found = pairPrism(read.right.prism, read.left.prism);
    if (set.horizontal.of == PrismOf::pair && !set.horizontal.rows.empty())
        results.push_back(judged(ToleranceRule::horizontalPrism, std::nullopt, set.horizontal,
                                 {found.horizontal - wanted.horizontal, std::fabs(wanted.horizontal),
                                  meanPower(ordered, true), strongestOf(ordered), centresOff}));
    if (set.vertical.of == PrismOf::pair && !set.vertical.rows.empty())
        results.push_back(judged(ToleranceRule::verticalPrism, std::nullopt, set.vertical,
                                 {found.vertical - wanted.vertical, std::fabs(wanted.vertical),
                                  meanPower(ordered, false), strongestOf(ordered), std::nullopt}));
    return results;
}

} // namespace quarterstep
