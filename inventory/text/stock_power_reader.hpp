// SPDX-License-Identifier: GPL-3.0-or-later
// `power` and `axis` of a stock line: one power, {right, left}, or {bifocal, distance}.
#pragma once

#include "core/fitting/stock_line.hpp"
#include "inventory/text/yaml_map.hpp"

namespace quarterstep
{

/// Sets power, bifocalAddition and anyAxis of the line; everything wrong is told to the map's document.
void readStockPower(YamlMap& map, StockLine& line);

} // namespace quarterstep
