// SPDX-License-Identifier: GPL-3.0-or-later
// Change of power with vertex distance: F' = F / (1 - d F), d in metres, positive toward the eye; and the
// vertex powers of a thick lens from its two surfaces. Source: effectivity formula of the handbooks (Bennett
// and Rabbetts).
#pragma once

#include "core/optics/power_vector.hpp"

#include <optional>

namespace quarterstep
{

/// The power that does at vertex distance `to` what `power` does at `from` (mm in front of the cornea), both
/// principal meridians converted. Empty where a meridian has no finite answer (1 - d F <= 0).
[[nodiscard]] std::optional<SpheroCylinder> atVertexDistance(const SpheroCylinder& power, Millimetres from,
                                                             Millimetres to);

/// What wearing a lens at another distance than it was found at does to it.
struct AsWorn {
    SpheroCylinder compensated; ///< the power to supply at the distance worn, so that it does what was found
    SpheroCylinder effective;   ///< what the power found does, uncompensated, at the distance it was found at
    PowerVector change;         ///< effective - found, dioptres: the error met when nothing is compensated
};

/// `found` was found at `refracted` mm, the pair is worn at `worn` mm (both in front of the cornea). Empty
/// where a meridian has no finite answer. Equal distances give no change, exactly.
[[nodiscard]] std::optional<AsWorn> asWorn(const SpheroCylinder& found, Millimetres refracted,
                                           Millimetres worn);

/// A lens of two surfaces: powers in dioptres, centre thickness, refractive index above 1.
struct ThickLens {
    double front = 0.0;
    double back = 0.0;
    Millimetres thickness;
    double index = 1.5;
};

/// Back vertex power F2 + F1 / (1 - (t/n) F1), what a focimeter reads and a prescription states. Empty for an
/// index not above 1, a negative thickness, or where 1 - (t/n) F1 <= 0.
[[nodiscard]] std::optional<double> backVertexPower(const ThickLens& lens);
/// Front vertex power F1 + F2 / (1 - (t/n) F2); empty likewise. (The two names are sometimes exchanged in
/// print.)
[[nodiscard]] std::optional<double> frontVertexPower(const ThickLens& lens);
/// Nominal power F1 + F2, as for a thin lens.
[[nodiscard]] double nominalPower(const ThickLens& lens);

} // namespace quarterstep
