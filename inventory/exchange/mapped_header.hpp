// SPDX-License-Identifier: GPL-3.0-or-later
// The header of somebody else's table: what each column holds, and the cells of a row by that.
#pragma once

#include "inventory/exchange/mapped_table.hpp"
#include "inventory/text/csv.hpp"

namespace quarterstep
{

/// What the columns hold, in their order: targets as in a map.
struct MappedHeader {
    std::vector<std::string> targets;
    std::vector<std::string> headings;

    [[nodiscard]] bool has(const std::string& target) const;
    /// The cell of that target; null where no column holds it. The row has as many cells as the header.
    [[nodiscard]] const CsvCell* cellOf(const CsvRow& row, const std::string& target) const;
};

/// Understands the header and tells what it does not; fills map and notUnderstood of the table.
[[nodiscard]] MappedHeader readMappedHeader(const CsvRow& header, const TableMap& given,
                                            Reading<MappedTable>& reading);

} // namespace quarterstep
