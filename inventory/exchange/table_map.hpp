// SPDX-License-Identifier: GPL-3.0-or-later
// Which column of somebody else's table holds what. A map is recognised from the headings, or given as a
// small file:
//     separator = ;
//     unsigned spheres = plus
//     unsigned cylinders = minus
//     decimal = comma
//     OD Sph = right sphere
//     Remarks = -
#pragma once

#include "core/finding.hpp"

#include <string>
#include <vector>

namespace quarterstep
{

/// What a number without a sign means in this table; `refused` when nobody has said.
enum class Unsigned { refused, plus, minus };

/// The mark between whole dioptres and their parts; `either`: both are taken, cell by cell.
enum class DecimalMark { either, point, comma };

/// A heading and what its column holds: a column of the prescription table, "right sphere" (cylinder, axis,
/// prism, base; left), or "-" for what is kept without being used.
struct MappedColumn {
    std::string heading;
    std::string target;
};

struct TableMap {
    char separator = '\0'; ///< 0: to be found out
    Unsigned spheres = Unsigned::refused;
    Unsigned cylinders = Unsigned::refused;
    DecimalMark decimal = DecimalMark::either;
    std::vector<MappedColumn> columns; ///< those that a file gave, or all that were used

    /// The line for a heading; where it stands over several columns, the one for that of them (from 0).
    [[nodiscard]] const MappedColumn* of(const std::string& heading, std::size_t which = 0) const;
};

/// All that a column can hold, in the order in which people choose.
[[nodiscard]] std::vector<std::string> mapTargets();

/// Errors: map-line, map-target, map-value.
[[nodiscard]] Reading<TableMap> readTableMap(const std::string& bytes, const std::string& name);
/// The map as a file of that form.
[[nodiscard]] std::string writeTableMap(const TableMap& map);

/// What a heading says, or "" when it is not understood as a whole: "OD Sph", "RE cyl", "right_axis", "L
/// Add", "PD OD", "Near PD", "Rx date", and every column of the prescription table.
[[nodiscard]] std::string targetOfHeading(const std::string& heading);

} // namespace quarterstep
