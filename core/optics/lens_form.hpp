// SPDX-License-Identifier: GPL-3.0-or-later
// The form of a lens: sag of a spherical surface, edge thickness, shape factor, true power from a lens clock.
// Sources: Jalie M, Lens Talk, The Indian Optician, May-June 2023 (sags and thickness); Loomis J, course EOP
// 601, 2011 (edge thickness and shape factor).
#pragma once

#include <optional>

namespace quarterstep
{

/// Index for which lens clocks are marked.
inline constexpr double lensClockIndex = 1.530;

/// Radius of a surface, mm: 1000 (n - 1) / F. Infinite for a flat surface (power 0).
[[nodiscard]] double surfaceRadius(double power, double index);

/// Sag of a spherical surface, mm, at `height` mm from its vertex; `curvature` in 1/mm, the sign of the sag.
/// z = c y² / (1 + sqrt(1 - c² y²)): exact also for flat surfaces. Empty where the surface does not reach so
/// far.
[[nodiscard]] std::optional<double> surfaceSag(double curvature, double height);

/// Edge thickness, mm, at `height` mm: centre thickness - sag of the front + sag of the back. Curvatures in
/// 1/mm, positive where the centre of curvature lies behind the surface. Empty as surfaceSag; may be negative
/// (no such lens).
[[nodiscard]] std::optional<double> edgeThickness(double frontCurvature, double backCurvature, double centre,
                                                  double height);

/// Shape factor (c1 + c2) / (c1 - c2). Empty where the curvatures are equal.
[[nodiscard]] std::optional<double> shapeFactor(double frontCurvature, double backCurvature);

/// Thickness of a plus lens by the rule y² F / (2000 (n - 1)) + edge, mm, y half the diameter; it neglects
/// the depth of the curve and falls short: by 0.1 mm at +4.00 D, 66 mm.
[[nodiscard]] double thicknessByRule(double power, double index, double diameter, double edge);

/// True power of a surface of index `index` on which a lens clock reads `reading` dioptres.
[[nodiscard]] double powerFromLensClock(double reading, double index);

} // namespace quarterstep
