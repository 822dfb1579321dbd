// SPDX-License-Identifier: GPL-3.0-or-later
// Bars of a text: Code 128 (ISO/IEC 15417), or EAN-13 (ISO/IEC 15420) for thirteen digits. The check
// character of Code 128 is part of the symbol; the check digit of EAN-13 is the thirteenth digit.
#pragma once

#include <string>
#include <vector>

namespace quarterstep
{

struct BarCode {
    std::vector<bool> modules; ///< dark = true; without the quiet zones
    int quietModules = 10;     ///< light on each side, at least
};

/// Empty for a text that has no bars: empty, not ASCII, or thirteen digits that do not go together.
[[nodiscard]] BarCode barCodeOf(const std::string& text);

} // namespace quarterstep
