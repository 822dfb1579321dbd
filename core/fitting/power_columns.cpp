// SPDX-License-Identifier: GPL-3.0-or-later
// The scan: for a block of powers the cost's argument 1 + b'^2 (b' with the forgiven minus taken off) and a
// mark for "within reach", both without branches, so that the compiler works on eight at a time.
#include "core/fitting/power_columns.hpp"

#include <algorithm>
#include <array>
#include <cmath>

// A clone for processors with 256-bit vectors; the thread sanitizer does not bear the resolver.
#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) && !defined(__SANITIZE_THREAD__)
#define QS_WIDE __attribute__((target_clones("arch=x86-64-v3", "default")))
#else
#define QS_WIDE
#endif

namespace quarterstep
{

namespace
{

constexpr std::size_t blockSize = 512;
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

struct Block {
    std::array<float, blockSize> cost;  ///< 1 + b'^2
    std::array<int, blockSize> outside; ///< 0 within reach
};

QS_WIDE void scan(const float* m, const float* j0, const float* j45, std::size_t count, const Around& a,
                  Block& block)
{
    for (std::size_t i = 0; i < count; ++i) {
        const float dm = (m[i] - a.m) * a.weight;
        const float d0 = (j0[i] - a.j0) * a.weight;
        const float d45 = (j45[i] - a.j45) * a.weight;
        const float oblique2 = d0 * d0 + d45 * d45;
        const float minus = 0.0F - dm;
        const float over = minus > 0.0F ? minus : 0.0F;
        const float left = dm + (over < a.forgiven ? over : a.forgiven);
        block.cost[i] = 1.0F + left * left + oblique2;
        block.outside[i] = static_cast<int>(dm < a.least) | static_cast<int>(dm > a.most) |
                           static_cast<int>(oblique2 > a.oblique2) |
                           static_cast<int>(dm * dm + oblique2 > a.blur2);
    }
}

QS_WIDE int keep(Block& block, const Block* fellow, std::size_t count, float most)
{
    int any = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const float cost = fellow != nullptr ? block.cost[i] * fellow->cost[i] : block.cost[i];
        const int outside = fellow != nullptr ? block.outside[i] | fellow->outside[i] : block.outside[i];
        const int kept = static_cast<int>(outside == 0) | static_cast<int>(cost <= most);
        block.outside[i] = kept;
        any |= kept;
    }
    return any;
}

/// The largest 1 + b'^2 (of both eyes, their product) that can cost this much; slack for the rounding.
float mostFor(double cost)
{
    return bounded(std::pow(10.0, std::min(cost, 15.0)) * (1.0 + 1e-4));
}

void collect(const Block& block, std::size_t from, std::size_t count, std::vector<std::uint32_t>& places)
{
    for (std::size_t i = 0; i < count; ++i)
        if (block.outside[i] != 0)
            places.push_back(static_cast<std::uint32_t>(from + i));
}

} // namespace

bool Wanted::takes(const PowerVector& power) const
{
    const auto error = power - need;
    return !judged || (-error.m <= reach.tooMinus && error.m <= reach.tooPlus &&
                       cylinderSize(error) / 2.0 <= reach.oblique && blurStrength(error) <= reach.blur);
}

void PowerColumns::add(const PowerVector& power)
{
    m_.push_back(static_cast<float>(power.m));
    j0_.push_back(static_cast<float>(power.j0));
    j45_.push_back(static_cast<float>(power.j45));
}

std::vector<std::uint32_t> PowerColumns::near(const Wanted& wanted, double cost) const
{
    std::vector<std::uint32_t> places;
    const auto a = around(wanted);
    const float most = mostFor(cost);
    Block block;
    for (std::size_t from = 0; from < size(); from += blockSize) {
        const std::size_t count = std::min(blockSize, size() - from);
        scan(m_.data() + from, j0_.data() + from, j45_.data() + from, count, a, block);
        if (keep(block, nullptr, count, most) != 0)
            collect(block, from, count, places);
    }
    return places;
}

std::vector<std::uint32_t> PowerColumns::nearPairs(const PowerColumns& left, const PerEye<Wanted>& wanted,
                                                   double cost) const
{
    std::vector<std::uint32_t> places;
    const auto aroundRight = around(wanted.right);
    const auto aroundLeft = around(wanted.left);
    const float most = mostFor(cost);
    Block block;
    Block fellow;
    for (std::size_t from = 0; from < size(); from += blockSize) {
        const std::size_t count = std::min(blockSize, size() - from);
        scan(m_.data() + from, j0_.data() + from, j45_.data() + from, count, aroundRight, block);
        scan(left.m_.data() + from, left.j0_.data() + from, left.j45_.data() + from, count, aroundLeft,
             fellow);
        if (keep(block, &fellow, count, most) != 0)
            collect(block, from, count, places);
    }
    return places;
}

} // namespace quarterstep
