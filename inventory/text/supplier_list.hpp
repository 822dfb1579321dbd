// SPDX-License-Identifier: GPL-3.0-or-later
// What a supplier sells (YAML): lines with price, weight and pack, and assorted packs of several lines. The
// format is described in app/help/planning.md.
#pragma once

#include "core/fitting/stock_line.hpp"

#include <string>
#include <utility>
#include <vector>

namespace quarterstep
{

/// One pack.
struct SuppliedPack {
    std::string name;
    std::vector<std::pair<std::string, int>> holds; ///< line, pieces
    long cost = 0;                                  ///< of the pack, thousandths of the currency unit
    long weight = 0;                                ///< of the pack, grams; 0 = not stated
    Position position;
};

struct SupplierList {
    std::string supplier;
    std::string currency;
    std::vector<StockLine> lines; ///< with 0 on hand
    std::vector<SuppliedPack> packs;
};

/// Findings beside those of bytes, YAML and stock lines: line-twice (a line or pack of the same name),
/// pack-line (an assorted pack with a line that is not listed).
[[nodiscard]] Reading<SupplierList> readSupplierList(const std::string& path);
[[nodiscard]] Reading<SupplierList> readSupplierText(std::string bytes, const std::string& name);

} // namespace quarterstep
