// SPDX-License-Identifier: GPL-3.0-or-later
// People served against money: the curve of a plan for the boxes, its knee, and where the plan itself stands.
#pragma once

#include "app/desk/plots/chart_data.hpp"
#include "app/session/pack.hpp"

namespace quarterstep
{

/// @param budget  thousandths of the currency unit, drawn as an upright line
[[nodiscard]] ChartData packingCurve(const PackAnswer& answer, long budget, const QString& currency);

} // namespace quarterstep
