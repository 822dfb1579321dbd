// SPDX-License-Identifier: GPL-3.0-or-later
// The worksheet of a lot drawn for the bench, as CSV: written to be filled in, read back when it is. A row is
// known by its lot and its number; what else stands there is for people and is not read.
#pragma once

#include "core/optics/lens_tolerance.hpp"

#include <optional>
#include <string>
#include <vector>

namespace quarterstep
{

/// One pair to be read, as written on the sheet.
struct BenchSheetRow {
    int row = 0; ///< from 1, in the order of the draw
    bool spare = false;
    std::string handOver; ///< number of its entry
    std::string day;
    std::string person;
    std::string purpose;
    std::string lines;
    PerEye<std::string> label; ///< what the pair should read
    std::string centres;       ///< mm, may be empty
};
[[nodiscard]] std::string benchSheetText(const std::string& lot, const std::vector<BenchSheetRow>& rows);

/// One row read back.
struct BenchRow {
    std::string lot;
    int row = 0;
    bool found = false;            ///< false: the pair could not be found, or was not read yet
    bool notFoundSaid = false;     ///< not-found was written
    PerEye<LensValues> read;       ///< when found
    PerEye<std::string> asRead;    ///< as written
    std::optional<double> centres; ///< mm
    Position place;
};

/// Least and most distance between the centres of a pair, mm: no pair of spectacles has others.
inline constexpr double leastCentres = 40.0;
inline constexpr double mostCentres = 90.0;

/// Everything found in one run. Findings beside those of bytes, CSV, powers and numbers: table-empty,
/// column-missing, column-twice, row-short, row-long, lot-empty, reading-twice, reading-missing,
/// reading-no-power, reading-unfound, outcome-word.
[[nodiscard]] Reading<std::vector<BenchRow>> readBenchText(const std::string& bytes, const std::string& name);
[[nodiscard]] Reading<std::vector<BenchRow>> readBenchSheet(const std::string& path);

} // namespace quarterstep
