// SPDX-License-Identifier: GPL-3.0-or-later
// Angles in degrees, exact where it matters: sine and cosine of multiples of 15 degrees come from a table, so
// that right angles give exact zeros and every processor gives the same bits for whole degrees.
#pragma once

#include "core/optics/units.hpp"

namespace quarterstep
{

/// Cosine of an angle in degrees. Any finite angle. Exact (0, ±0.5, ±1) where the true value is; never -0.
[[nodiscard]] double cosineOfDegrees(double degrees);
/// Sine of an angle in degrees; as cosineOfDegrees.
[[nodiscard]] double sineOfDegrees(double degrees);

/// The same meridian written in (0, 180] (ISO 8429; 0 is written 180). Any finite angle.
[[nodiscard]] AxisDegrees foldAxis(double degrees);

/// Smallest turn between two meridians, 0 to 90 degrees.
[[nodiscard]] double turnBetween(AxisDegrees a, AxisDegrees b);

} // namespace quarterstep
