// SPDX-License-Identifier: GPL-3.0-or-later
// Who was told already which pair they will get: CSV with the columns person, lines and, where somebody waits
// for two, purpose. `assign --output` writes such a list; other columns are not used.
#pragma once

#include "core/fitting/prescription.hpp"

#include <optional>
#include <string>
#include <vector>

namespace quarterstep
{

struct ToldRow {
    std::string person;
    std::optional<Purpose> purpose;
    std::vector<std::string> lines; ///< one, or frame, right lens, left lens; written with + between
    Position position;
};

/// Findings beside those of bytes and CSV: table-empty, column-missing, row-short, purpose-unknown,
/// told-lines (neither one line nor three).
[[nodiscard]] Reading<std::vector<ToldRow>> readToldList(const std::string& path);
[[nodiscard]] Reading<std::vector<ToldRow>> readToldText(const std::string& bytes, const std::string& name);

} // namespace quarterstep
