// SPDX-License-Identifier: GPL-3.0-or-later
// The scan of columns of powers in single precision, without branches, so that the compiler works on eight at
// a time. For power_columns alone.
#pragma once

#include <array>
#include <cstddef>

namespace quarterstep
{

inline constexpr std::size_t stretch = 512; ///< powers, or blocks, looked at in one go

/// Wanted in single precision.
struct Around {
    float m, j0, j45;
    float least, most, oblique2, blur2;
    float forgiven;
    float weight; ///< 0: every power will do
};

struct Stretch {
    std::array<float, stretch> cost;  ///< 1 + b'^2
    std::array<int, stretch> outside; ///< 0 within reach
};

/// Columns of one eye by part: of single powers, or the ends of what blocks of them span.
struct Columns {
    const float* m;
    const float* j0;
    const float* j45;

    [[nodiscard]] Columns from(std::size_t place) const { return {m + place, j0 + place, j45 + place}; }
};

/// The least 1 + b'^2 of `count` single powers, with the forgiven minus taken off and without looking at it.
/// May be off by the rounding of a fused step.
[[nodiscard]] float leastTaken(const Columns& columns, std::size_t count, const Around& around);
[[nodiscard]] float leastPlain(const Columns& columns, std::size_t count, const Around& around);

/// Powers from `low` to `high` in each part: least cost and least distance of each. A single power is its own
/// low and high; every step is monotonous in single precision too, so that a block never costs more than a
/// power in it.
void scan(const Columns& low, const Columns& high, std::size_t count, const Around& around, Stretch& found);

/// Marks in `outside` what belongs: costs at most `most`, or, where `reachCounts` is 1, is within reach. 0
/// when nothing does.
[[nodiscard]] int keepOne(Stretch& found, std::size_t count, float most, int reachCounts);
/// The same for two eyes.
[[nodiscard]] int keepBoth(Stretch& found, const Stretch& fellow, std::size_t count, float most,
                           int reachCounts);

} // namespace quarterstep
