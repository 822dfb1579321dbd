// SPDX-License-Identifier: GPL-3.0-or-later
// Names of persons under their camp codes: CSV with the columns person and name.
#pragma once

#include "core/finding.hpp"

#include <string>
#include <vector>

namespace quarterstep
{

struct NameRow {
    std::string person;
    std::string name;
    Position place; ///< of the code
};

/// Everything found in one run. Findings beside those of bytes and CSV: table-empty, column-missing,
/// column-twice, column-unknown, row-short, row-long, person-empty, person-twice, name-empty.
[[nodiscard]] Reading<std::vector<NameRow>> readNamesList(const std::string& path);
[[nodiscard]] Reading<std::vector<NameRow>> readNamesText(const std::string& bytes, const std::string& name);

} // namespace quarterstep
