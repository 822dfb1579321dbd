// SPDX-License-Identifier: GPL-3.0-or-later
// Distinct powers as arrays of their components, in single precision: what a search runs over. It proposes
// with slack; whoever asks decides in double precision.
#pragma once

#include "core/fitting/reach.hpp"

#include <cstdint>

namespace quarterstep
{

/// What one eye looks for among the powers.
struct Wanted {
    bool judged = true; ///< false: every power will do
    PowerVector need;
    EyeReach reach;
    double forgiven = 0.0; ///< dioptres of minus forgiven in the cost

    /// Whether a power is within reach, in double precision.
    [[nodiscard]] bool takes(const PowerVector& power) const;
};

class PowerColumns
{
  public:
    void add(const PowerVector& power);
    [[nodiscard]] std::size_t size() const { return m_.size(); }

    /// Places within reach, and those whose least possible cost is at most `cost`, rising. Nothing that
    /// belongs is left out; some that do not may be named.
    [[nodiscard]] std::vector<std::uint32_t> near(const Wanted& wanted, double cost) const;
    /// The same for pairs: powers of the right eye here, of the left in `left` (of equal size); within reach
    /// means in both eyes, the cost is that of both.
    [[nodiscard]] std::vector<std::uint32_t> nearPairs(const PowerColumns& left, const PerEye<Wanted>& wanted,
                                                       double cost) const;

  private:
    std::vector<float> m_;
    std::vector<float> j0_;
    std::vector<float> j45_;
};

} // namespace quarterstep
