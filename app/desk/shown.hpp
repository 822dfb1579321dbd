// SPDX-License-Identifier: GPL-3.0-or-later
// How the open camp writes powers and acuities, for every part of the window that shows one.
#pragma once

#include "core/optics/acuity.hpp"
#include "core/optics/sphero_cylinder.hpp"
#include "inventory/text/camp_settings.hpp"

#include <QString>

namespace quarterstep
{

/// The settings of the camp that is open; the usual ones when none is.
[[nodiscard]] const CampSettings& shownNow();
void setShownNow(const CampSettings& settings);

/// A power in the camp's cylinder form, two decimals, sign always.
[[nodiscard]] QString shownPower(const SpheroCylinder& power);
/// An acuity in the camp's notation; as recorded where it has no number (light perception, letters missed).
[[nodiscard]] QString shownAcuity(const Acuity& acuity);

} // namespace quarterstep
