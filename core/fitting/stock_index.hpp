// SPDX-License-Identifier: GPL-3.0-or-later
// The stock by optical identity: lines that are the same to the eye together, distinct powers as columns.
// Made once for a stock and used for every person; counts on hand are not part of it, so that they may
// change.
#pragma once

#include "core/fitting/power_columns.hpp"
#include "core/fitting/stock_line.hpp"

#include <map>
#include <span>
#include <string>

namespace quarterstep
{

/// A power to a thousandth, in minus-cylinder form: equal keys are equal powers.
struct PowerKey {
    long sphere = 0;
    long cylinder = 0;
    long axis = 0;
    auto operator<=>(const PowerKey&) const = default;
};
/// Sphere, cylinder and axis in thousandths; powers written otherwise have other keys.
[[nodiscard]] PowerKey keyOf(const SpheroCylinder& power);
/// Distance between centres that a line states or its frame gives.
[[nodiscard]] std::optional<double> centresOf(const StockLine& line);

class StockIndex
{
  public:
    using Lines = std::vector<std::uint32_t>; ///< indices into the stock, rising

    /// Ready-made pairs of two powers (and an addition): groups differ in centres, heights, size or label.
    struct PairPower {
        PerEye<SpheroCylinder> power;
        PerEye<PowerVector> vector;
        std::optional<Dioptres> addition;
        std::vector<std::uint32_t> groups; ///< into groups()
    };
    struct Pairs {
        std::vector<PairPower> powers;
        PowerColumns right;
        PowerColumns left;
    };

    /// Lenses of one power for one eye; `turns` = its cylinder is turned to a mark of the frame.
    struct LensPower {
        SpheroCylinder power; ///< minus-cylinder form when it turns
        PowerVector vector;   ///< of a fixed power
        Lines lines;
    };
    struct Lenses {
        std::vector<LensPower> fixed;
        PowerColumns fixedColumns;
        std::vector<LensPower> turning;
    };
    /// What fits into frames that take the same shapes.
    struct Rack {
        PerEye<Lenses> lenses;
    };
    struct FrameGroup {
        Lines frames;
        std::size_t rack = 0;
    };

    explicit StockIndex(std::span<const StockLine> stock);

    [[nodiscard]] const Pairs& pairs(bool bifocal) const { return bifocal ? bifocals_ : singleVision_; }
    [[nodiscard]] const Lines& group(std::uint32_t group) const { return groups_[group]; }
    [[nodiscard]] const std::vector<FrameGroup>& frames() const { return frames_; }
    [[nodiscard]] const std::vector<Rack>& racks() const { return racks_; }

  private:
    void addFrames(std::span<const StockLine> stock);
    void fillRacks(std::span<const StockLine> stock,
                   const std::map<std::string, std::vector<std::size_t>>& racksOfShape);

    Pairs singleVision_;
    Pairs bifocals_;
    std::vector<Lines> groups_;
    std::vector<FrameGroup> frames_;
    std::vector<Rack> racks_;
};

/// Whether an index of the one serves the other: the same lines in the same order, but for counts, bins,
/// costs and places in a file.
[[nodiscard]] bool sameToTheEye(std::span<const StockLine> one, std::span<const StockLine> other);

} // namespace quarterstep
