// SPDX-License-Identifier: GPL-3.0-or-later
// One line of stock.yaml.
#pragma once

#include "core/fitting/stock_line.hpp"
#include "inventory/text/stock_file.hpp"
#include "inventory/text/yaml_map.hpp"

namespace quarterstep
{

struct StockLineRead {
    StockLine line;
    ByteSpan count; ///< digits of `on hand` in the text without byte order mark; empty when not usable
    std::size_t nameBegin = 0;
};

/// Reads a line; everything wrong is told to the document.
[[nodiscard]] StockLineRead readStockLine(YamlDocument& document, const YamlValue& value);

/// A line as a supplier lists it: no count, a price that is needed, pieces a pack and grams a piece.
struct OfferedLine {
    StockLine line;
    int pack = 1;
    long weight = 0; ///< grams a piece; 0 = not stated
    Position namePlace;
};
[[nodiscard]] OfferedLine readOfferedLine(YamlDocument& document, const YamlValue& value);

} // namespace quarterstep
