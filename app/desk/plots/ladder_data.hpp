// SPDX-License-Identifier: GPL-3.0-or-later
// The stock ladder as data: how many pieces of each power there are, minus powers on the left and plus powers
// on the right, beside what should be kept. Powers are mean spheres, one rung a quarter dioptre.
#pragma once

#include "core/fitting/stock_line.hpp"

#include <span>

namespace quarterstep
{

struct Rung {
    double power = 0.0; ///< dioptres, a multiple of 0.25
    int available = 0;
    int aside = 0; ///< held and quarantined
    int least = 0; ///< sum of keep.least
    bool operator==(const Rung&) const = default;
};

struct LadderData {
    std::vector<Rung> rungs; ///< by power; none without pieces and keep levels
    int tallest = 0;
};

/// Ladder of one kind of lines: ready-made pairs, or lenses. A pair with unequal eyes stands at the mean of
/// both.
[[nodiscard]] LadderData ladderOf(std::span<const StockLine> stock, LineKind kind);
/// Whole dioptres from one written power to the next, doubled until the words stand apart.
/// @param span    dioptres from one end of the axis to the other, above 0
/// @param across  pixels of the axis; 0 or less: not known yet
/// @param word    pixels of the widest power and the room beside it
[[nodiscard]] double rungStep(double span, int across, int word);

} // namespace quarterstep
