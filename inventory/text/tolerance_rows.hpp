// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of a tolerance set, row by row. Used by tolerance_file.cpp.
#pragma once

#include "core/optics/lens_tolerance.hpp"
#include "inventory/text/yaml_map.hpp"

namespace quarterstep
{

/// The rows under a key; none when the key is absent. Wrong rows are told and left out.
[[nodiscard]] std::vector<ToleranceRow> readToleranceRows(YamlMap& set, const char* key);
[[nodiscard]] PrismRule readPrismRule(YamlMap& set, const char* key);

} // namespace quarterstep
