// SPDX-License-Identifier: GPL-3.0-or-later
// Sine of whole degrees from a table of correctly rounded values (computed to 50 digits); other angles from
// the standard library after an exact reduction to the first quadrant.
#include "core/optics/angle.hpp"

#include <array>
#include <numbers>

namespace quarterstep
{
namespace
{

constexpr double fullTurn = 360.0;
constexpr double halfTurn = 180.0;
constexpr double rightAngle = 90.0;

constexpr std::array<double, 91> wholeDegreeSines{0.0,
                                                  0.01745240643728351,
                                                  0.03489949670250097,
                                                  0.052335956242943835,
                                                  0.0697564737441253,
                                                  0.08715574274765818,
                                                  0.10452846326765347,
                                                  0.12186934340514748,
                                                  0.13917310096006544,
                                                  0.15643446504023087,
                                                  0.17364817766693036,
                                                  0.1908089953765448,
                                                  0.20791169081775934,
                                                  0.224951054343865,
                                                  0.24192189559966773,
                                                  0.25881904510252074,
                                                  0.27563735581699916,
                                                  0.2923717047227367,
                                                  0.30901699437494745,
                                                  0.32556815445715664,
                                                  0.3420201433256687,
                                                  0.35836794954530027,
                                                  0.374606593415912,
                                                  0.39073112848927377,
                                                  0.4067366430758002,
                                                  0.42261826174069944,
                                                  0.4383711467890774,
                                                  0.4539904997395468,
                                                  0.46947156278589075,
                                                  0.484809620246337,
                                                  0.5,
                                                  0.5150380749100542,
                                                  0.5299192642332049,
                                                  0.5446390350150271,
                                                  0.5591929034707468,
                                                  0.573576436351046,
                                                  0.5877852522924731,
                                                  0.6018150231520483,
                                                  0.6156614753256583,
                                                  0.6293203910498375,
                                                  0.6427876096865394,
                                                  0.6560590289905073,
                                                  0.6691306063588582,
                                                  0.6819983600624985,
                                                  0.6946583704589973,
                                                  0.7071067811865476,
                                                  0.7193398003386512,
                                                  0.7313537016191705,
                                                  0.7431448254773942,
                                                  0.754709580222772,
                                                  0.766044443118978,
                                                  0.7771459614569709,
                                                  0.7880107536067219,
                                                  0.7986355100472928,
                                                  0.8090169943749475,
                                                  0.8191520442889918,
                                                  0.8290375725550417,
                                                  0.838670567945424,
                                                  0.848048096156426,
                                                  0.8571673007021123,
                                                  0.8660254037844386,
                                                  0.8746197071393959,
                                                  0.882947592858927,
                                                  0.8910065241883679,
                                                  0.898794046299167,
                                                  0.9063077870366499,
                                                  0.9135454576426009,
                                                  0.9205048534524404,
                                                  0.9271838545667874,
                                                  0.9335804264972017,
                                                  0.9396926207859084,
                                                  0.9455185755993168,
                                                  0.9510565162951535,
                                                  0.9563047559630354,
                                                  0.9612616959383189,
                                                  0.9659258262890683,
                                                  0.9702957262759965,
                                                  0.9743700647852352,
                                                  0.9781476007338057,
                                                  0.981627183447664,
                                                  0.984807753012208,
                                                  0.9876883405951378,
                                                  0.9902680687415704,
                                                  0.992546151641322,
                                                  0.9945218953682733,
                                                  0.9961946980917455,
                                                  0.9975640502598242,
                                                  0.9986295347545738,
                                                  0.9993908270190958,
                                                  0.9998476951563913,
                                                  1.0};

/// Sine of an angle in [0, 90] degrees.
double firstQuadrantSine(double degrees)
{
    if (degrees == std::floor(degrees))
        return wholeDegreeSines[static_cast<std::size_t>(degrees)];
    // Near 90 the cosine of the rest is the better conditioned of the two.
    constexpr double radian = std::numbers::pi / halfTurn;
    return degrees <= 45.0 ? std::sin(degrees * radian) : std::cos((rightAngle - degrees) * radian);
}

/// The rest of dividing by whole turns, sign kept; exact. The division is slow and seldom needed.
double within(double turn, double degrees)
{
    return std::fabs(degrees) < turn ? degrees : std::fmod(degrees, turn);
}

} // namespace

double sineOfDegrees(double degrees)
{
    const double turned = within(fullTurn, degrees);
    const double size = std::fabs(turned);
    const bool lowerHalf = size > halfTurn;
    const double inHalf = lowerHalf ? size - halfTurn : size;
    const double sine = firstQuadrantSine(inHalf > rightAngle ? halfTurn - inHalf : inHalf);
    if (sine == 0.0)
        return 0.0;
    return (turned < 0.0) != lowerHalf ? -sine : sine;
}

double cosineOfDegrees(double degrees)
{
    double size = within(fullTurn, std::fabs(degrees));
    if (size > halfTurn)
        size = fullTurn - size;
    const double cosine = firstQuadrantSine(size > rightAngle ? size - rightAngle : rightAngle - size);
    if (cosine == 0.0)
        return 0.0;
    return size > rightAngle ? -cosine : cosine;
}

AxisDegrees foldAxis(double degrees)
{
    if (degrees > halfTurn && degrees <= fullTurn)
        return AxisDegrees{degrees - halfTurn}; // exact, as the division would be
    const double folded = within(halfTurn, degrees);
    return AxisDegrees{folded > 0.0 ? folded : folded + halfTurn};
}

double turnBetween(AxisDegrees a, AxisDegrees b)
{
    const double turn = within(halfTurn, std::fabs(a.value() - b.value()));
    return turn > rightAngle ? halfTurn - turn : turn;
}

} // namespace quarterstep
