// SPDX-License-Identifier: GPL-3.0-or-later
// How sure the fit of a pair is: the chance that the true blur of an eye lies within the limit the profile
// sets for blur without acuity tried. Shown, and below one half the readings are asked for again; never a
// limit, never in the cost.
//
// Model: error of the pair + normal scatter of the refraction in (M, J0, J45), see chance_within.hpp.
// Scatter: repeated readings of the eye where there are three or more (their covariance; divided by their
// number where the prescription is itself their mean), else the published repeatability of the method. A
// round lens turned to a mark adds the scatter of its axis: C per radian, at right angles to the cylinder's
// own direction.
#pragma once

#include "core/fitting/candidates.hpp"

namespace quarterstep
{

/// Standard deviation with which a round lens is turned to its mark, degrees (common practice).
inline constexpr double axisSetting = 3.0;
/// Below this chance the readings are asked for again.
inline constexpr double surelyEnough = 0.5;

/// Scatter of what is needed in one eye, D², and where it comes from.
struct NeedScatter {
    Covariance covariance;
    const char* source = "";
};
[[nodiscard]] NeedScatter scatterOf(const EyeRecord& eye, bool objectiveOnly);

/// Scatter added by turning a lens with this power to a mark.
[[nodiscard]] Covariance axisScatter(const PowerVector& supplied, double degrees = axisSetting);

/// Per judged eye; empty where the eye is not judged or the profile does not judge blur. Bifocals: the lesser
/// of the distance and the near portion. Between 0 and 1, error at most 1e-3.
[[nodiscard]] PerEye<std::optional<double>> chancesOf(const Need& need, const Candidate& candidate,
                                                      const Profile& profile);
/// The lesser of the two eyes; empty when neither is known.
[[nodiscard]] std::optional<double> leastChance(const PerEye<std::optional<double>>& chances);

} // namespace quarterstep
