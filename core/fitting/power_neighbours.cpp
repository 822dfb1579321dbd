// SPDX-License-Identifier: GPL-3.0-or-later
// An order of powers in which neighbours are alike: the crowd is halved where it lies farthest apart, until
// a block is left.
#include "core/fitting/power_columns.hpp"

#include <algorithm>
#include <numeric>

namespace quarterstep
{

namespace
{

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
