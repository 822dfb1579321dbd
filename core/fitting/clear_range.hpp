// SPDX-License-Identifier: GPL-3.0-or-later
// Where a pair for near work is clear: an error that both eyes share moves this range before it blurs.
// Far end 1 / (addition supplied - 0.50 D), near end 1 / (addition supplied + accommodation + 0.50 D),
// metres; 0.50 D either way costs one line (Blendowske R, Optom Vis Sci 2015). Accommodation: half of
// Hofstetter's mean for the age, the other half kept in reserve; none with a lens implant or where the age is
// not known.
#pragma once

#include "core/fitting/fit.hpp"

namespace quarterstep
{

/// Distances from the spectacle plane, mm, at which both seeing eyes are clear to within a line. `most` is
/// infinity where nothing ends the range. Empty for other purposes than near and intermediate, and where the
/// two eyes share no distance.
[[nodiscard]] std::optional<Range> clearRange(const Need& need, const Fit& fit);

} // namespace quarterstep
