// SPDX-License-Identifier: GPL-3.0-or-later
// Prism induced by looking beside the optical centre: P = -c F (Prentice as a matrix, c in cm).
// Per eye, `in` is positive toward the nose, `up` positive up. ISO 8429 base angles: right eye 0 = in, left
// eye 0 = out, 90 = up for both.
#pragma once

#include "core/optics/power_matrix.hpp"

namespace quarterstep
{

/// Prism of one eye in prism dioptres: base in positive, base up positive.
struct EyePrism {
    double in = 0.0;
    double up = 0.0;
    bool operator==(const EyePrism&) const = default;
};

/// Pair level: horizontal = in(right) + in(left), + in, - out; vertical = up(right) - up(left).
struct PairPrism {
    double horizontal = 0.0;
    double vertical = 0.0;
};

/// Prism met by an eye that looks `nasal` mm nasalward and `above` mm above the optical centre of `power`.
[[nodiscard]] EyePrism prismAt(const PowerMatrix& power, Eye eye, double nasal, double above);
/// What two eyes get, as a pair: bases in add up, bases up are set against each other.
[[nodiscard]] PairPrism pairPrism(const EyePrism& right, const EyePrism& left);

/// One prism as amount (prism dioptres, >= 0) and base angle of ISO 8429 in [0, 360); no prism is 0 at 0.
struct PrismBase {
    double amount = 0.0;
    double degrees = 0.0;
};

/// Components of a prism with its base at an angle; exact at right angles. Any finite angle.
[[nodiscard]] EyePrism prismFromBase(double amount, double baseDegrees, Eye eye);
/// The single prism with these components.
[[nodiscard]] PrismBase baseOf(const EyePrism& prism, Eye eye);

} // namespace quarterstep
