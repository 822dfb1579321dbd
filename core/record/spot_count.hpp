// SPDX-License-Identifier: GPL-3.0-or-later
// Which bins were reached into so often since they were counted that one of them should be counted now:
// counting by use, beside the counts of the whole box. A count of one bin takes a minute and finds slips
// while people still remember (common practice).
#pragma once

#include "core/fitting/stock_line.hpp"
#include "core/record/entry.hpp"

#include <span>

namespace quarterstep
{

/// Common practice: about a dozen hands in a bin, half a day of a camp.
inline constexpr int reachesBeforeCount = 12;

struct ReachedBin {
    std::string bin;
    std::vector<std::string> lines; ///< that lie in it, in the order of the stock
    int times = 0;                  ///< entries that moved pieces of it since each line was counted
};

/// Bins with at least so many entries since their lines were counted or made known, most first. An entry that
/// takes another one back counts as well: the piece was put back. Entries of other sites are left out.
/// @param entries  in the order of arrival
[[nodiscard]] std::vector<ReachedBin> binsToCount(std::span<const Entry> entries, const std::string& site,
                                                  std::span<const StockLine> stock,
                                                  int least = reachesBeforeCount);

} // namespace quarterstep
