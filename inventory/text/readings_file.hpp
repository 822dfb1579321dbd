// SPDX-License-Identifier: GPL-3.0-or-later
// Repeated objective readings as a table (CSV): one row a reading, three or more for each eye.
// Columns: person, eye (right | left, also R, L, OD, OS) and either `reading` in any notation ("-1.25 -0.50 x
// 90") or sphere, cylinder, axis (signs needed; cylinder empty or 0.00 for none). Unknown columns are told
// and not used.
#pragma once

#include "core/finding.hpp"
#include "core/optics/power_vector.hpp"

#include <string>
#include <vector>

namespace quarterstep
{

/// Readings of one eye in the order of the file.
struct EyeReadings {
    std::string person;
    Eye eye = Eye::right;
    std::vector<SpheroCylinder> readings;
    std::vector<Position> places; ///< one for each reading
    [[nodiscard]] std::vector<PowerVector> vectors() const;
};

/// Eyes in the order in which they first appear. Errors are located, all in one run; an eye with fewer than
/// three readings is a caution (readings-too-few) at its last row. Findings beside those of the bytes and of
/// CSV: table-empty, column-missing, column-twice, column-unknown, columns-both, row-short, row-long,
/// person-empty, eye-word, reading-empty, axis-range and those of the notation.
[[nodiscard]] Reading<std::vector<EyeReadings>> readReadingsFile(const std::string& path);
[[nodiscard]] Reading<std::vector<EyeReadings>> readReadingsText(const std::string& bytes,
                                                                 const std::string& name);

} // namespace quarterstep
