// SPDX-License-Identifier: GPL-3.0-or-later
// What a person needs for a purpose: power per eye at the stock's vertex distance, PD at that distance,
// prism.
#pragma once

#include "core/fitting/fit.hpp"

namespace quarterstep
{

/// The purposes to serve, each judged alone: `both` is distance and near; unstated is distance where there is
/// a distance need, near where an addition or near power is given; never empty, never unstated.
[[nodiscard]] std::vector<Purpose> purposesOf(const PersonRecord& person);

/// The need, or what is missing for it (an addition).
[[nodiscard]] Parsed<Need> needFor(const PersonRecord& person, Purpose purpose, const Settings& settings);

/// The whole addition of one eye, D, from an addition or from a near power found by trial; empty: neither.
[[nodiscard]] std::optional<double> additionOf(const EyeRecord& eye);

/// Mean distance PD of boys or of girls of this age in years, mm; two standard deviations are childPdSpread.
/// MacLachlan C, Howland HC, Ophthalmic Physiol Opt 2002;22:175-182; coefficients from memory.
[[nodiscard]] double meanChildPd(double age, bool boy);
/// The mean of both.
[[nodiscard]] double meanChildPd(double age);
inline constexpr double childPdSpread = 7.0; // mm: two standard deviations of 3.5 mm

} // namespace quarterstep
