// SPDX-License-Identifier: GPL-3.0-or-later
// Distinct powers as arrays of their components, in single precision: what a search runs over. It proposes
// with slack; whoever asks decides in double precision.
#pragma once

#include "core/fitting/reach.hpp"

#include <array>
#include <cstdint>
#include <vector>

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

/// Whether what is within reach is named although it costs more.
enum class Beyond { inReach, nothing };

class PowerColumns
{
  public:
    void add(const PowerVector& power);
    /// Notes what blocks of powers span, so that whole blocks can be left out. Nothing may be added after it.
    void finish();
    [[nodiscard]] std::size_t size() const { return m_.size(); }

    /// Places whose least possible cost is at most `cost`, and those within reach, rising. Nothing that
    /// belongs is left out; some that do not may be named.
    [[nodiscard]] std::vector<std::uint32_t> near(const Wanted& wanted, double cost,
                                                  Beyond beyond = Beyond::inReach) const;
    /// The same for pairs: powers of the right eye here, of the left in `left` (of equal size); within reach
    /// means in both eyes, the cost is that of both.
    [[nodiscard]] std::vector<std::uint32_t> nearPairs(const PowerColumns& left, const PerEye<Wanted>& wanted,
                                                       double cost, Beyond beyond = Beyond::inReach) const;

    /// An order of places that brings powers of two eyes which are near each other together. Deterministic.
    [[nodiscard]] static std::vector<std::uint32_t> neighbours(const PowerColumns& right,
                                                               const PowerColumns& left);

  private:
    using Column = std::vector<float>;
    [[nodiscard]] std::vector<std::uint32_t> found(const PowerColumns* left, const PerEye<Wanted>& wanted,
                                                   double cost, Beyond beyond) const;

    Column m_;
    Column j0_;
    Column j45_;
    std::array<Column, 3> low_; ///< of each block, by M, J0 and J45
    std::array<Column, 3> high_;
};

} // namespace quarterstep
