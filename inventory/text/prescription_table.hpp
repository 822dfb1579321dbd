// SPDX-License-Identifier: GPL-3.0-or-later
// The prescription table (CSV, UTF-8, header row), and survey files with the columns of the public refraction
// survey (right_sphere, right_cylinder, right_axis …), told apart by their header.
#pragma once

#include "core/fitting/prescription.hpp"

#include <optional>
#include <string>
#include <vector>

namespace quarterstep
{

/// One row in its place: a record, or the findings that say why not (notes and cautions may stand beside a
/// record).
struct TableRow {
    int line = 0;
    std::string person;
    std::optional<PersonRecord> record;
    std::vector<Finding> findings;
};

struct PrescriptionTable {
    std::vector<TableRow> rows;
    std::vector<std::string> unknownColumns;
    bool survey = false;

    [[nodiscard]] bool anyBadRow() const
    {
        for (const auto& row : rows)
            if (!row.record)
                return true;
        return false;
    }
};

/// "-" reads standard input. Findings of the Reading are those of the file as a whole (header, encoding);
/// those of a row stand in the row. `today` (ISO date) gives monthsSinceWritten; empty leaves it out.
[[nodiscard]] Reading<PrescriptionTable> readPrescriptionTable(const std::string& path,
                                                               const std::string& today);
[[nodiscard]] Reading<PrescriptionTable>
readPrescriptionText(const std::string& bytes, const std::string& name, const std::string& today);

/// Reads one cell the way the table does (for the desk): for example cell "pd_mm" = "62". Empty text clears.
/// Returns the complaint, if any.
[[nodiscard]] std::optional<Complaint> setField(PersonRecord& record, const std::string& column,
                                                const std::string& text);

} // namespace quarterstep
