// SPDX-License-Identifier: GPL-3.0-or-later
// Which counts of a stock file a person changed: the ledger says what they would be otherwise.
#pragma once

#include "inventory/store/write_back.hpp"

#include <map>

namespace quarterstep
{

using Counts = std::map<std::string, int>; ///< line -> on hand

[[nodiscard]] Counts countsOf(const std::vector<Balance>& balances);
/// The lines edited since the position the file reflects. @param now  of the ledger, for the site of the file
[[nodiscard]] std::vector<EditedCount> editsIn(const StockFile& file, const Ledger& ledger,
                                               const Snapshot& now);

} // namespace quarterstep
