// SPDX-License-Identifier: GPL-3.0-or-later
// Parts of the judging of a lens. Internal to core/optics.
#pragma once

#include "core/optics/lens_tolerance.hpp"

namespace quarterstep
{

/// A result with its excess and sentence. No limit: shown, never failing.
[[nodiscard]] ToleranceResult toleranceResult(ToleranceRule rule, std::optional<Eye> eye, double error,
                                              std::optional<double> limit);

/// Prism rules of a set that hold for each lens.
[[nodiscard]] std::vector<ToleranceResult> judgeLensPrism(const ToleranceSet& set, Eye eye,
                                                          const LensValues& ordered, const LensValues& read);
/// Prism rules of a set that hold for the pair.
[[nodiscard]] std::vector<ToleranceResult> judgePairPrism(const ToleranceSet& set,
                                                          const PerEye<LensValues>& ordered,
                                                          const PerEye<LensValues>& read,
                                                          std::optional<double> centresOff);

} // namespace quarterstep
