// SPDX-License-Identifier: GPL-3.0-or-later
// The dioptric power matrix, x to the observer's right, y up (ISO 8429 angles).
// f11 = S + C sin^2 a, f12 = -C sin a cos a, f22 = S + C cos^2 a.
// Source: Long WF, Am J Optom Physiol Opt 1976;53:27-33 (sign of f12 as in Harris).
#pragma once

#include "core/optics/power_vector.hpp"

namespace quarterstep
{

/// Symmetric 2 × 2, dioptres.
struct PowerMatrix {
    double f11 = 0.0;
    double f12 = 0.0;
    double f22 = 0.0;
};

/// Exact at right angles; M = (f11 + f22)/2, J0 = (f11 - f22)/2 with sign as the power vector, J45 = f12.
[[nodiscard]] PowerMatrix toPowerMatrix(const PowerVector& vector);
[[nodiscard]] PowerMatrix toPowerMatrix(const SpheroCylinder& power);
[[nodiscard]] PowerVector toPowerVector(const PowerMatrix& matrix);

} // namespace quarterstep
