// SPDX-License-Identifier: GPL-3.0-or-later
// A box described in a few typed lines, one a tray, and the stock.yaml it makes:
//   near +1.00 to +3.50 by 0.50: 10 centres 62 bin A
// Every power of a tray becomes a line of the stock with a name and a bin of its own. The form is described
// in app/help/desk.md.
#pragma once

#include "core/finding.hpp"
#include "core/fitting/stock_line.hpp"

namespace quarterstep
{

/// Most lines of stock a description makes.
inline constexpr std::size_t mostTrayLines = 5000;

struct TrayStock {
    std::string bytes;            ///< of the stock.yaml; empty when nothing can be made
    std::vector<StockLine> lines; ///< as our own reader reads them from these bytes
};

/// The stock file of a description. Findings stand at the typed line and column (file: "tray"): tray-form,
/// tray-power, tray-range, tray-count, tray-empty, tray-too-many, tray-twice, and whatever the reader of
/// stock files says of the result.
[[nodiscard]] Reading<TrayStock> stockOfTray(const std::string& site, const std::string& description);

/// Writes the bytes as stock.yaml of that folder, which is made when it is missing. Throws Error
/// stock-there (3) when the folder has a stock.yaml already, file-unwritable (4).
void writeNewStock(const std::string& folder, const std::string& bytes);

} // namespace quarterstep
