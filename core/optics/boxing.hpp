// SPDX-License-Identifier: GPL-3.0-or-later
// Centration distances and the boxing system (ISO 8624): a = lens width, DBL = distance between lenses, both
// mm. Sources: formulas common practice; near centration by similar triangles with the eye's centre of
// rotation.
#pragma once

namespace quarterstep
{

/// Distance from the spectacle plane to the eye's centre of rotation, mm, in the near centration formula.
inline constexpr double rotationCentreDistance = 27.0;

/// Centration distance for an object `working` mm from the spectacle plane: PD W / (W + 27), mm. working > 0.
[[nodiscard]] inline double centrationAt(double distancePd, double working)
{
    return distancePd * working / (working + rotationCentreDistance);
}

/// How far each near centre lies nasal of the distance centre, mm: half the difference of the two distances.
[[nodiscard]] inline double nearInset(double distancePd, double nearPd)
{
    return (distancePd - nearPd) / 2.0;
}

/// Decentration of each lens from its boxed centre, mm, + nasal: (a + DBL - PD) / 2.
[[nodiscard]] inline double decentrationFromBox(double lensWidth, double betweenLenses, double pd)
{
    return (lensWidth + betweenLenses - pd) / 2.0;
}

/// Smallest uncut lens, mm: effective diameter + twice the decentration *of each lens* (either direction),
/// plus an allowance for edging (often 2 mm; some tables take none). Sources mix decentration per lens and in
/// total: this is per lens.
[[nodiscard]] inline double leastBlank(double effectiveDiameter, double decentrationEach, double allowance)
{
    const double away = decentrationEach < 0.0 ? -decentrationEach : decentrationEach;
    return effectiveDiameter + 2.0 * away + allowance;
}

/// Height of a point above the horizontal centre line, mm, + above, from its height over the lowest point of
/// a lens `lensHeight` mm high.
[[nodiscard]] inline double aboveCentreLine(double lensHeight, double heightOverLowest)
{
    return heightOverLowest - lensHeight / 2.0;
}

} // namespace quarterstep
