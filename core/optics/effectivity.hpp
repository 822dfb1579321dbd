// SPDX-License-Identifier: GPL-3.0-or-later
// Change of power with vertex distance: F' = F / (1 - d F), d in metres, positive toward the eye.
// Source: effectivity formula of the handbooks (Bennett and Rabbetts).
#pragma once

#include "core/optics/sphero_cylinder.hpp"

#include <optional>

namespace quarterstep
{

/// The power that does at vertex distance `to` what `power` does at `from` (mm in front of the cornea), both
/// principal meridians converted. Empty where a meridian has no finite answer (1 - d F <= 0).
[[nodiscard]] std::optional<SpheroCylinder> atVertexDistance(const SpheroCylinder& power, Millimetres from,
                                                             Millimetres to);

} // namespace quarterstep
