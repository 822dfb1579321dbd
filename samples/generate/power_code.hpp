// SPDX-License-Identifier: GPL-3.0-or-later
// How powers stand in the names of lines: +1.25 is "+125".
#pragma once

#include <cstdlib>
#include <string>

namespace quarterstep::samples
{

/// @param quarters  quarter dioptres
[[nodiscard]] inline std::string powerCode(int quarters)
{
    std::string digits = std::to_string(std::abs(quarters) * 25);
    digits.insert(0, digits.size() < 3 ? 3 - digits.size() : 0, '0');
    return (quarters < 0 ? "-" : "+") + digits;
}

} // namespace quarterstep::samples
