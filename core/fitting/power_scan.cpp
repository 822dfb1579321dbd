// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/power_scan.hpp"

#include <bit>
#include <limits>

// A clone for processors with 256-bit vectors; the thread sanitizer does not bear the resolver.
#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) && !defined(__SANITIZE_THREAD__)
#define QS_WIDE __attribute__((target_clones("arch=x86-64-v3", "default")))
#else
#define QS_WIDE
#endif
// Fused steps are allowed where only a block is passed over or not: the slack of what is looked for covers
// them.
#if defined(__GNUC__) && !defined(__clang__)
#define QS_FUSED __attribute__((optimize("fp-contract=fast")))
#else
#define QS_FUSED
#endif
#if defined(__GNUC__)
#define QS_INLINE [[gnu::always_inline]] inline // into each clone
#else
#define QS_INLINE inline
#endif

namespace quarterstep
{

namespace
{

/// M less the minus that is forgiven of it; never falls where M rises.
QS_INLINE float taken(float m, float forgiven)
{
    const float minus = 0.0F - m;
    const float over = minus > 0.0F ? minus : 0.0F;
    return m + (over < forgiven ? over : forgiven);
}

/// Least size of a number from `low` to `high`: one of the two sides is always 0.
QS_INLINE float leastSize(float low, float high)
{
    const float below = 0.0F - high;
    return (low > 0.0F ? low : 0.0F) + (below > 0.0F ? below : 0.0F);
}

QS_INLINE int bitsOf(float value)
{
    return std::bit_cast<int>(value);
}

} // namespace

// The least of whole numbers is found eight at a time without leave to reorder floating-point sums.

QS_FUSED QS_WIDE float leastPlain(const Columns& columns, std::size_t count, const Around& a)
{
    const float* m = columns.m;
    const float* j0 = columns.j0;
    const float* j45 = columns.j45;
    const float am = a.m;
    const float a0 = a.j0;
    const float a45 = a.j45;
    int least = std::numeric_limits<int>::max();
#pragma GCC unroll 4
    for (std::size_t i = 0; i < count; ++i) {
        const float dm = m[i] - am;
        const float d0 = j0[i] - a0;
        const float d45 = j45[i] - a45;
        const int bits = bitsOf(dm * dm + d0 * d0 + d45 * d45);
        least = bits < least ? bits : least;
    }
    return 1.0F + std::bit_cast<float>(least);
}

QS_FUSED QS_WIDE float leastTaken(const Columns& columns, std::size_t count, const Around& a)
{
    const float* m = columns.m;
    const float* j0 = columns.j0;
    const float* j45 = columns.j45;
    const Around here = a;
    int least = std::numeric_limits<int>::max();
    for (std::size_t i = 0; i < count; ++i) {
        const float dm = taken(m[i] - here.m, here.forgiven);
        const float d0 = j0[i] - here.j0;
        const float d45 = j45[i] - here.j45;
        const int bits = bitsOf(dm * dm + d0 * d0 + d45 * d45);
        least = bits < least ? bits : least;
    }
    return 1.0F + std::bit_cast<float>(least);
}

QS_WIDE void scan(const Columns& low, const Columns& high, std::size_t count, const Around& around,
                  Stretch& found)
{
    const float* mLow = low.m;
    const float* mHigh = high.m;
    const float* j0Low = low.j0;
    const float* j0High = high.j0;
    const float* j45Low = low.j45;
    const float* j45High = high.j45;
    float* cost = found.cost.data();
    int* outside = found.outside.data();
    const Around a = around;
    for (std::size_t i = 0; i < count; ++i) {
        const float from = (mLow[i] - a.m) * a.weight;
        const float to = (mHigh[i] - a.m) * a.weight;
        const float d0 = leastSize((j0Low[i] - a.j0) * a.weight, (j0High[i] - a.j0) * a.weight);
        const float d45 = leastSize((j45Low[i] - a.j45) * a.weight, (j45High[i] - a.j45) * a.weight);
        const float oblique2 = d0 * d0 + d45 * d45;
        const float dm = leastSize(from, to);
        const float left = leastSize(taken(from, a.forgiven), taken(to, a.forgiven));
        cost[i] = 1.0F + (left * left + oblique2);
        outside[i] = static_cast<int>(to < a.least) | static_cast<int>(from > a.most) |
                     static_cast<int>(oblique2 > a.oblique2) | static_cast<int>(dm * dm + oblique2 > a.blur2);
    }
}

QS_WIDE int keepOne(Stretch& found, std::size_t count, float most, int reachCounts)
{
    const float* cost = found.cost.data();
    int* outside = found.outside.data();
    int any = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const int kept =
            (static_cast<int>(outside[i] == 0) & reachCounts) | static_cast<int>(cost[i] <= most);
        outside[i] = kept;
        any |= kept;
    }
    return any;
}

QS_WIDE int keepBoth(Stretch& found, const Stretch& fellow, std::size_t count, float most, int reachCounts)
{
    const float* cost = found.cost.data();
    const float* otherCost = fellow.cost.data();
    const int* otherOutside = fellow.outside.data();
    int* outside = found.outside.data();
    int any = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const int kept = (static_cast<int>((outside[i] | otherOutside[i]) == 0) & reachCounts) |
                         static_cast<int>(cost[i] * otherCost[i] <= most);
        outside[i] = kept;
        any |= kept;
    }
    return any;
}

} // namespace quarterstep
