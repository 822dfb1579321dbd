// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/power_columns.hpp"

#include "core/fitting/power_scan.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr float unreachable = 1e15F;

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
    const float least = a.forgiven > 0.0F ? leastTaken(columns, count, a) : leastPlain(columns, count, a);
    return least > most;
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
        for (std::size_t block = at; block < end; block += PowerColumns::blockSize) {
            const std::size_t count = std::min(PowerColumns::blockSize, end - block);
            if (!nothingNear(right.low.from(block), count, right.around, looked))
                eachKeptOf(block, count, right, nullptr, looked, act);
        }
    }
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
        for (std::size_t from = 0; from < size(); from += PowerColumns::blockSize) {
            const auto first = column.begin() + static_cast<std::ptrdiff_t>(from);
            const auto last = column.begin() +
                              static_cast<std::ptrdiff_t>(std::min(from + PowerColumns::blockSize, size()));
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
        0, low_[0].size(), blocks, left != nullptr ? &fellowBlocks : nullptr, looked, [&](std::size_t block) {
            lookAt(block * PowerColumns::blockSize, std::min((block + 1) * PowerColumns::blockSize, size()));
        });
    return places;
}

} // namespace quarterstep
