// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of the prescription table, one setter each: the table and the desk read a cell the same way.
#pragma once

#include "core/fitting/prescription.hpp"

#include <span>

namespace quarterstep
{

/// Reads one cell into the record; the text is trimmed and not empty. Returns the complaint, if any, and then leaves
/// the record alone.
using ColumnSetter = std::optional<Complaint> (*)(PersonRecord& record, const std::string& text);
using ColumnClearer = void (*)(PersonRecord& record);

struct TableColumn {
    const char* name;
    ColumnSetter set;
    ColumnClearer clear;
};

/// In the order in which a row is read: eyes before additions, `add` before add_right and add_left.
[[nodiscard]] std::span<const TableColumn> tableColumns();
[[nodiscard]] const TableColumn* columnNamed(const std::string& name);

} // namespace quarterstep
