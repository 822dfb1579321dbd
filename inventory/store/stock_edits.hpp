// SPDX-License-Identifier: GPL-3.0-or-later
// Which counts of a stock file a person changed: the ledger says what they would be otherwise.
#pragma once

#include "inventory/store/write_back.hpp"

#include <map>

namespace quarterstep
{

using Counts = std::map<std::string, int>; ///< line -> on hand
/// Pieces on hand of each line.
[[nodiscard]] Counts countsOf(const std::vector<Balance>& balances);
/// Whether the counts of the file are those that were written with its hash: nobody edited one.
[[nodiscard]] bool countsAsWritten(const StockFile& file);
/// Whether nothing is to be written and nothing told: lines, counts and position are those of the ledger, and
/// the hash that of the counts.
/// @param counts  of the lines of the file in `now`
[[nodiscard]] bool follows(const StockFile& file, bool asWritten, const Snapshot& now,
                           const std::vector<LineCount>& counts);
/// The lines edited since the position the file reflects. @param now  of the ledger, for the site of the file
/// @param asWritten  countsAsWritten(file)
[[nodiscard]] std::vector<EditedCount> editsIn(const StockFile& file, const Ledger& ledger,
                                               const Snapshot& now, bool asWritten);

} // namespace quarterstep
