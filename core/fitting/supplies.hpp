// SPDX-License-Identifier: GPL-3.0-or-later
// From stock lines to what they supply on the face, and what a search passes along.
#pragma once

#include "core/fitting/candidates.hpp"
#include "core/fitting/stock_index.hpp"

namespace quarterstep
{

/// Everything one search is about.
struct Query {
    const Need& need;
    std::span<const StockLine> stock;
    const StockIndex& index;
    const Profile& profile;
    const Settings& settings;
    const CandidateOptions& options;

    [[nodiscard]] Wanted wanted(Eye eye) const;
    [[nodiscard]] bool usable(std::size_t line) const;
    [[nodiscard]] StockIndex::Lines usableOf(const StockIndex::Lines& lines) const;
    [[nodiscard]] bool anyUsable(const StockIndex::Lines& lines) const;
};
/// What a ready-made pair supplies: one power, its centres, heights and size.
[[nodiscard]] Supply readyMadeSupply(const StockLine& line, const Settings& settings);
/// Centres, heights and size of a frame; no powers.
[[nodiscard]] Supply frameSupply(const StockLine& frame, const Settings& settings);

/// The frame's mark nearest to the axis needed.
[[nodiscard]] AxisDegrees markFor(const EyeNeed& need, double axisStep);
/// A lens as it will sit: a cylinder that turns is set to that mark.
[[nodiscard]] SpheroCylinder turnedToMark(const SpheroCylinder& lens, const EyeNeed& need, double axisStep);

} // namespace quarterstep
