// SPDX-License-Identifier: GPL-3.0-or-later
// The lenses of one rack for one eye, as they would sit in the frames of one axis step, with their costs.
#pragma once

#include "core/fitting/ranking.hpp"

#include <map>

namespace quarterstep
{

/// One mounted power for one eye.
struct LensChoice {
    SpheroCylinder power;
    PowerVector vector;
    double cost = 0.0;
    bool inReach = false;
    const StockIndex::LensPower* fixed = nullptr;   ///< where its lines stand
    const StockIndex::LensPower* turning = nullptr; ///< and those that are turned to it
};

/// Lenses of one rack for one eye in frames of one axis step, by rising cost: all within reach, and all up to
/// `cost`. Sorted as far as somebody asked: mostly the cheapest few are looked at.
class LensChoices
{
  public:
    LensChoices(const Query& query, Eye eye, std::size_t rack, double axisStep, double cost);

    [[nodiscard]] std::size_t size() const { return choices_.size(); }
    /// In no order; places of this list are what the others ask for.
    [[nodiscard]] const std::vector<LensChoice>& all() const { return choices_; }
    /// Place of the lens that comes `rank`th by cost.
    [[nodiscard]] std::uint32_t placeOf(std::size_t rank) const;
    [[nodiscard]] const LensChoice& byCost(std::size_t rank) const { return choices_[placeOf(rank)]; }
    /// All of its lines, usable or not.
    [[nodiscard]] const StockIndex::Lines& linesOf(const LensChoice& choice) const;
    [[nodiscard]] bool usable(const LensChoice& choice) const;
    /// Whether any line of it can be taken, and it does not fail in its own eye.
    [[nodiscard]] bool passes(std::uint32_t place) const;

  private:
    void gather(const StockIndex::Lenses& lenses, const Wanted& wanted, double axisStep, double cost);

    const Query& query_;
    Eye eye_;
    Need alone_; ///< with the fellow eye taken away
    std::vector<LensChoice> choices_;
    mutable Fit fit_;
    mutable std::vector<std::pair<double, std::uint32_t>> byCost_;
    mutable std::size_t sorted_ = 0;
    mutable std::map<const LensChoice*, StockIndex::Lines> merged_; ///< lines that turn and lines that do not
    enum class Passes : char { unknown, yes, no };
    mutable std::vector<Passes> passes_;
};

/// The lenses of a rack by mounted power, for a fellow eye that must get the same lines.
class LensRack
{
  public:
    LensRack(const Query& query, Eye eye, std::size_t rack, double axisStep);
    /// The mounted power whose usable lines are exactly these; empty when there is none.
    [[nodiscard]] std::optional<SpheroCylinder> powerOf(const StockIndex::Lines& lines) const;

  private:
    struct Group {
        SpheroCylinder power;
        StockIndex::Lines lines;
    };
    std::vector<Group> groups_; ///< by first line
};

} // namespace quarterstep
