// SPDX-License-Identifier: GPL-3.0-or-later
// Lines and quantities: a delivery, a filled-in count sheet, a packing note. Three forms, told apart by their
// first line: CSV with columns line and quantity (reason, cause, bin, box as well), YAML (format: quarterstep
// list 1), or what a scanner types: one line name a row, each row one piece.
#pragma once

#include "core/finding.hpp"

#include <optional>
#include <string>
#include <vector>

namespace quarterstep
{

/// Most pieces in one row.
inline constexpr long mostPieces = 1'000'000;

struct QuantityRow {
    std::string line;
    int quantity = 0;
    std::string reason;   ///< in somebody's own words, may be empty
    std::string cause;    ///< a word of causesOfLoss(), may be empty
    Position place;       ///< of the line name
    std::string bin = {}; ///< as written, may be empty
    std::string box = {}; ///< of a packing list, may be empty
};

struct QuantityList {
    std::vector<QuantityRow> rows; ///< each line once, in the order of the file
    bool scanned = false;
    /// Where each row begins that was read or refused, in the order of the file; none when the list as a
    /// whole is bad.
    std::vector<Position> places;
};

/// Everything found in one run. Findings beside those of bytes, CSV and YAML: table-empty, column-missing,
/// column-twice, column-unknown, row-short, row-long, line-empty, line-twice (scanned rows add up instead),
/// cause-word and those of whole numbers.
[[nodiscard]] Reading<QuantityList> readQuantityList(const std::string& path);
/// The rows in which nothing was wrong, when the list as a whole can be read; otherwise empty. `left` gets
/// the places of the rows left out.
[[nodiscard]] std::optional<std::vector<QuantityRow>> goodRows(const Reading<QuantityList>& reading,
                                                               std::vector<Position>& left);
[[nodiscard]] Reading<QuantityList> readQuantityText(const std::string& bytes, const std::string& name);

} // namespace quarterstep
