// SPDX-License-Identifier: GPL-3.0-or-later
// What the place Stock works out from a ledger: read on from where it was read to before, and figures over
// all of it.
#pragma once

#include "core/record/spot_count.hpp"
#include "core/record/stock_figures.hpp"
#include "inventory/store/ledger.hpp"

namespace quarterstep
{

/// Entries up to which a ledger is read while a frame waits for it; a longer one is read beside the window.
/// Reading takes some 15 µs an entry.
inline constexpr std::int64_t shortLedger = 100;

/// The entries of a ledger, as far as they were read.
struct StockRead {
    std::vector<Entry> entries;
    std::int64_t readTo = 0; ///< place of the last of them in the order of arrival
};

struct StockCounts {
    StockFigures figures;
    std::vector<ReachedBin> toCount;
};

/// From the entry that was the last one before: a count does not read a whole season again.
void readOn(const Ledger& ledger, StockRead& read);
[[nodiscard]] StockCounts countsOf(const StockRead& read, const std::string& site,
                                   const std::vector<StockLine>& stock);

} // namespace quarterstep
