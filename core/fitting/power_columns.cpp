// SPDX-License-Identifier: GPL-3.0-or-later
// The scan: for a block of powers the cost's argument 1 + b'^2 (b' with the forgiven minus taken off) and a
// mark for "within reach", both without branches, so that the compiler works on eight at a time.
#include "core/fitting/power_columns.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <limits>
#include <numeric>

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

constexpr std::size_t blockSize = 64; ///< powers whose span is noted
constexpr std::size_t stretch = 512;  ///< powers, or blocks, looked at in one go
constexpr float unreachable = 1e15F;

/// Wanted in single precision.
struct Around {
    float m, j0, j45;
    float least, most, oblique2, blur2;
    float forgiven;
    float weight; ///< 0: every power will do
};

float bounded(double size)
{
    return static_cast<float>(std::min(size, static_cast<double>(unreachable)));
}

Around around(const Wanted& wanted)
{
    const float weight = wanted.judged ? 1.0F : 0.0F;
    const float oblique = bounded(wanted.reach.oblique);
    const float blur = bounded(wanted.reach.blur);
    return {static_cast<float>(wanted.need.m),
            static_cast<float>(wanted.need.j0),
            static_cast<float>(wanted.need.j45),
            -bounded(wanted.reach.tooMinus),
            bounded(wanted.reach.tooPlus),
            oblique * oblique,
            blur * blur,
            static_cast<float>(wanted.forgiven),
            weight};
}

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

// Sizes that are not negative order as their bits do, and the least of whole numbers is found eight at a time
// without leave to reorder floating-point sums.

/// Bits of the least 1 + b'^2 of a stretch, where no minus is forgiven and where some is.
QS_FUSED QS_WIDE int leastPlain(const Columns& columns, std::size_t count, const Around& a)
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
    return bitsOf(1.0F + std::bit_cast<float>(least));
}

QS_FUSED QS_WIDE int leastTaken(const Columns& columns, std::size_t count, const Around& a)
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
    return bitsOf(1.0F + std::bit_cast<float>(least));
}

/// Powers from `low` to `high` in each part: least cost and least distance of each. A single power is its own
/// low and high; every step is monotonous in single precision too, so that a block never costs more than a
/// power in it.
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

/// Marks what belongs. False when nothing does.
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

/// The same for two eyes.
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

/// The largest 1 + b'^2 (of both eyes, their product) that can cost this much; slack for the rounding.
float mostFor(double cost)
{
    return bounded(std::pow(10.0, std::min(cost, 15.0)) * (1.0 + 1e-4));
}

/// What is looked for, and up to which 1 + b'^2 it can be.
struct Looked {
    float most;
    int reachCounts;
};

/// Columns of one eye, and what is wanted of them.
struct Side {
    Columns low;
    Columns high;
    Around around;
};

/// Whether nothing of a stretch of single powers can belong, seen at reading speed.
bool nothingNear(const Columns& columns, std::size_t count, const Around& a, const Looked& looked)
{
    if (a.weight == 0.0F)
        return false;
    const float sides = a.least < 0.0F - a.most ? a.least : a.most;
    const float reach = 1.0F + std::min(a.blur2, sides * sides + a.oblique2);
    const float most = looked.reachCounts != 0 ? std::max(looked.most, reach * 1.0001F) : looked.most;
    const int least = a.forgiven > 0.0F ? leastTaken(columns, count, a) : leastPlain(columns, count, a);
    return least > bitsOf(most);
}

/// Calls `act` with every place from `from` on that belongs; `count` is at most a stretch.
template <class Act>
void eachKeptOf(std::size_t from, std::size_t count, const Side& right, const Side* left,
                const Looked& looked, Act act)
{
    Stretch found;
    int any = 0;
    scan(right.low.from(from), right.high.from(from), count, right.around, found);
    if (left != nullptr) {
        Stretch fellow;
        scan(left->low.from(from), left->high.from(from), count, left->around, fellow);
        any = keepBoth(found, fellow, count, looked.most, looked.reachCounts);
    } else {
        any = keepOne(found, count, looked.most, looked.reachCounts);
    }
    for (std::size_t i = 0; any != 0 && i < count; ++i)
        if (found.outside[i] != 0)
            act(from + i);
}

template <class Act>
void eachKept(std::size_t from, std::size_t to, const Side& right, const Side* left, const Looked& looked,
              Act act)
{
    const bool singlePowers = left == nullptr && right.low.m == right.high.m;
    for (std::size_t at = from; at < to; at += stretch) {
        const std::size_t end = std::min(at + stretch, to);
        if (!singlePowers) {
            eachKeptOf(at, end - at, right, left, looked, act);
            continue;
        }
        if (nothingNear(right.low.from(at), end - at, right.around, looked))
            continue;
        for (std::size_t block = at; block < end; block += blockSize) {
            const std::size_t count = std::min(blockSize, end - block);
            if (!nothingNear(right.low.from(block), count, right.around, looked))
                eachKeptOf(block, count, right, nullptr, looked, act);
        }
    }
}

/// A range of an order of places whose powers are to be brought together.
struct Crowd {
    std::size_t from;
    std::size_t to;
};

using Column = std::vector<float>;

/// The column in which the crowd lies farthest apart, judged by some of it.
const Column& widestOf(const std::array<const Column*, 6>& columns, const std::vector<std::uint32_t>& order,
                       const Crowd& crowd)
{
    constexpr std::size_t some = 256;
    const std::size_t step = std::max<std::size_t>(1, (crowd.to - crowd.from) / some);
    const Column* widest = columns[0];
    float width = -1.0F;
    for (const auto* column : columns) {
        float low = (*column)[order[crowd.from]];
        float high = low;
        for (std::size_t i = crowd.from; i < crowd.to; i += step) {
            low = std::min(low, (*column)[order[i]]);
            high = std::max(high, (*column)[order[i]]);
        }
        if (high - low > width) {
            width = high - low;
            widest = column;
        }
    }
    return *widest;
}

} // namespace

bool Wanted::takes(const PowerVector& power) const
{
    if (!judged)
        return true;
    const auto error = power - need;
    const double oblique2 = error.j0 * error.j0 + error.j45 * error.j45;
    return -error.m <= reach.tooMinus && error.m <= reach.tooPlus &&
           oblique2 <= reach.oblique * reach.oblique &&
           error.m * error.m + oblique2 <= reach.blur * reach.blur;
}

void PowerColumns::add(const PowerVector& power)
{
    m_.push_back(static_cast<float>(power.m));
    j0_.push_back(static_cast<float>(power.j0));
    j45_.push_back(static_cast<float>(power.j45));
}

void PowerColumns::finish()
{
    const std::array<const Column*, 3> columns{&m_, &j0_, &j45_};
    for (std::size_t part = 0; part < columns.size(); ++part) {
        low_[part].clear();
        high_[part].clear();
        const auto& column = *columns[part];
        for (std::size_t from = 0; from < size(); from += blockSize) {
            const auto first = column.begin() + static_cast<std::ptrdiff_t>(from);
            const auto last =
                column.begin() + static_cast<std::ptrdiff_t>(std::min(from + blockSize, size()));
            const auto [low, high] = std::minmax_element(first, last);
            low_[part].push_back(*low);
            high_[part].push_back(*high);
        }
    }
}

std::vector<std::uint32_t> PowerColumns::near(const Wanted& wanted, double cost, Beyond beyond) const
{
    return found(nullptr, {wanted, {}}, cost, beyond);
}

std::vector<std::uint32_t> PowerColumns::nearPairs(const PowerColumns& left, const PerEye<Wanted>& wanted,
                                                   double cost, Beyond beyond) const
{
    return found(&left, wanted, cost, beyond);
}

std::vector<std::uint32_t> PowerColumns::found(const PowerColumns* left, const PerEye<Wanted>& wanted,
                                               double cost, Beyond beyond) const
{
    const auto powersOf = [](const PowerColumns& columns, const Wanted& eye) {
        const Columns all{columns.m_.data(), columns.j0_.data(), columns.j45_.data()};
        return Side{all, all, around(eye)};
    };
    const auto blocksOf = [](const PowerColumns& columns, const Wanted& eye) {
        return Side{{columns.low_[0].data(), columns.low_[1].data(), columns.low_[2].data()},
                    {columns.high_[0].data(), columns.high_[1].data(), columns.high_[2].data()},
                    around(eye)};
    };
    const Looked looked{mostFor(cost), beyond == Beyond::inReach ? 1 : 0};
    const Side powers = powersOf(*this, wanted.right);
    const Side fellow = left != nullptr ? powersOf(*left, wanted.left) : powers;
    std::vector<std::uint32_t> places;
    const auto lookAt = [&](std::size_t from, std::size_t to) {
        eachKept(from, to, powers, left != nullptr ? &fellow : nullptr, looked,
                 [&](std::size_t place) { places.push_back(static_cast<std::uint32_t>(place)); });
    };
    if (low_[0].empty()) {
        lookAt(0, size());
        return places;
    }
    const Side blocks = blocksOf(*this, wanted.right);
    const Side fellowBlocks = left != nullptr ? blocksOf(*left, wanted.left) : blocks;
    eachKept(
        0, low_[0].size(), blocks, left != nullptr ? &fellowBlocks : nullptr, looked,
        [&](std::size_t block) { lookAt(block * blockSize, std::min((block + 1) * blockSize, size())); });
    return places;
}

std::vector<std::uint32_t> PowerColumns::neighbours(const PowerColumns& right, const PowerColumns& left)
{
    std::vector<std::uint32_t> order(right.size());
    std::iota(order.begin(), order.end(), 0U);
    const std::array<const Column*, 6> columns{&right.m_, &left.m_,    &right.j0_,
                                               &left.j0_, &right.j45_, &left.j45_};
    std::vector<Crowd> crowds{{0, order.size()}};
    while (!crowds.empty()) {
        const Crowd crowd = crowds.back();
        crowds.pop_back();
        if (crowd.to - crowd.from <= blockSize)
            continue;
        const auto first = order.begin() + static_cast<std::ptrdiff_t>(crowd.from);
        const auto last = order.begin() + static_cast<std::ptrdiff_t>(crowd.to);
        const Column& widest = widestOf(columns, order, crowd);
        // Whole blocks on either side, so that no block holds powers of two crowds.
        const std::size_t blocks = (crowd.to - crowd.from + blockSize - 1) / blockSize;
        const std::size_t middle = crowd.from + (blocks + 1) / 2 * blockSize;
        std::nth_element(first, order.begin() + static_cast<std::ptrdiff_t>(middle), last,
                         [&](auto a, auto b) { return std::pair(widest[a], a) < std::pair(widest[b], b); });
        crowds.push_back({crowd.from, middle});
        crowds.push_back({middle, crowd.to});
    }
    return order;
}

} // namespace quarterstep
