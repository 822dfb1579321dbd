// SPDX-License-Identifier: GPL-3.0-or-later
// Centration distances.
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

} // namespace quarterstep
