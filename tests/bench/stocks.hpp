// SPDX-License-Identifier: GPL-3.0-or-later
// Stocks and people for the benches of the search, the same on every machine.
#pragma once

#include "core/fitting/need.hpp"
#include "core/fitting/stock_line.hpp"

#include <vector>

namespace quarterstep::bench
{

/// A frame and `count` lenses of random powers in quarter dioptres, axes in steps of five degrees.
[[nodiscard]] std::vector<StockLine> lensStock(std::size_t count);
/// A frame that is too wide and `count` lenses, each good for -3.00 alone: any two of them leave too much
/// prism.
[[nodiscard]] std::vector<StockLine> lensesThatNeverPair(std::size_t count);
/// Ready-made pairs of random unequal powers, off the grid.
[[nodiscard]] std::vector<StockLine> oneOffStock(std::size_t count);
/// About `count` lines as a programme keeps them: equal pairs in centres, sizes and colours, lenses, frames.
[[nodiscard]] std::vector<StockLine> regularStock(std::size_t count);
/// The 8,053 worn pairs of the survey as lines, and its 1,963 people who need glasses (at most `most`). PD
/// and centres are not in the survey: 62 mm throughout.
[[nodiscard]] std::vector<StockLine> wornStock(std::size_t most);
[[nodiscard]] std::vector<PersonRecord> surveyPeople(std::size_t most);
[[nodiscard]] PersonRecord adultNeeding(const SpheroCylinder& right, const SpheroCylinder& left);

} // namespace quarterstep::bench
