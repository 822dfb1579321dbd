// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody else's table (CSV and its kin): separator, decimal comma, cylinder sign and headings are found
// out, shown, and can be said by a map.
#pragma once

#include "inventory/exchange/exchange.hpp"
#include "inventory/exchange/table_map.hpp"

#include <span>

namespace quarterstep
{

/// A table as it was understood, row by row: what a person looks at before they take it over.
struct MappedTable {
    TableMap map;                           ///< with every column that is used
    std::vector<std::string> notUnderstood; ///< headings; their cells are kept
    std::vector<std::string> examples;      ///< of each column the first cell that is filled
    bool commaDecimals = false;
    int minusCylinders = 0;
    int plusCylinders = 0;
    int unsignedCylinders = 0;
    int unsignedSpheres = 0;
    std::vector<TableRow> rows;
};

/// `given` overrules what would be found out. Errors of the file: table-empty, column-twice, column-missing,
/// map-heading; notes: column-unknown, caution table-unsigned. Errors of rows: those of the prescription
/// table.
[[nodiscard]] Reading<MappedTable> readMappedTable(const std::string& bytes, const std::string& name,
                                                   const TableMap& given, const ImportOptions& options);

/// A table that any program takes: sphere, cylinder, axis and prism of each eye in columns of their own, the
/// other columns of the prescription table, and the rules.
[[nodiscard]] Reading<std::string> writeFlatTable(std::span<const ExchangePerson> persons);

} // namespace quarterstep
