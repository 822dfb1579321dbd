// SPDX-License-Identifier: GPL-3.0-or-later
// Right eyes of a public survey with the acuity people came with. Statistical use only, see
// tests/open_data/NOTICE.
#pragma once

#include "core/optics/power_vector.hpp"

#include <array>
#include <vector>

namespace quarterstep::testing
{

/// What was worn less what the eye needs; none worn is plano.
struct RightEye {
    double age = 0.0;
    PowerVector error;
    bool glasses = false;
    std::size_t code = 0; ///< index into the lines of the chart, best first
};

inline constexpr std::array<int, 9> lines{20, 25, 30, 40, 50, 60, 80, 200, 666}; // 666: worse than 20/200

[[nodiscard]] double logMarOf(std::size_t code);
[[nodiscard]] const std::vector<RightEye>& eyes();

/// k of the shipped order by age.
[[nodiscard]] double shippedK(double age);

} // namespace quarterstep::testing
