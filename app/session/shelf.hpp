// SPDX-License-Identifier: GPL-3.0-or-later
// Pieces that are left of every line, and of every group of lines that are the same to the eye.
#pragma once

#include "core/planning/choices.hpp"

namespace quarterstep
{

class Shelf
{
  public:
    Shelf(std::span<const StockLine> stock, const Resources& resources);

    [[nodiscard]] const std::vector<int>& ofResources() const { return ofResource_; }
    /// Takes a piece of the first line of the group that has one left. The group must have one.
    std::size_t takeOne(std::uint32_t resource);
    /// Takes a piece of this line; false when none is left.
    bool take(std::size_t line);

  private:
    const Resources& resources_;
    std::vector<int> ofLine_;
    std::vector<int> ofResource_;
};

/// The word of a place among the parts of a pair: pair; or frame, right, left.
[[nodiscard]] PartSide sideOf(std::size_t place, std::size_t parts);

} // namespace quarterstep
