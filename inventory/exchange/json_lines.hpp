// SPDX-License-Identifier: GPL-3.0-or-later
// One person a line as a JSON object whose names are the columns of the prescription table; "rules" says by
// which rules they left.
#pragma once

#include "inventory/exchange/exchange.hpp"

#include <span>

namespace quarterstep
{

/// Texts and numbers fill the column of their name, null is nothing; any other name or value is kept as a
/// column of its own (note json-kept). Errors of a row: json-*, and those of the prescription table. Of the
/// file: table-empty.
[[nodiscard]] ImportedRows readJsonLines(const std::string& bytes, const std::string& name,
                                         const ImportOptions& options);
[[nodiscard]] Reading<std::string> writeJsonLines(std::span<const ExchangePerson> persons);

} // namespace quarterstep
