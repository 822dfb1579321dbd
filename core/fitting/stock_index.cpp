// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/stock_index.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>
#include <unordered_map>

namespace quarterstep
{

namespace
{

long micrometres(const std::optional<double>& millimetres)
{
    return millimetres ? std::lround(*millimetres * 1000.0) : -1;
}

/// Numbers and words that make lines the same, with a hash over both.
struct Identity {
    std::array<long, 10> numbers{};
    std::string_view use;
    std::string_view size;
    bool operator==(const Identity&) const = default;
};

struct HashOf {
    std::size_t operator()(const Identity& identity) const
    {
        std::size_t hash =
            std::hash<std::string_view>{}(identity.use) * 31 + std::hash<std::string_view>{}(identity.size);
        for (const long number : identity.numbers)
            hash = (hash ^ static_cast<std::size_t>(number)) * 0x9E3779B97F4A7C15U + (hash >> 29U);
        return hash;
    }
};

/// Powers and addition.
Identity powersOf(const StockLine& line)
{
    const auto right = keyOf(line.power.right);
    const auto left = keyOf(line.power.left);
    Identity identity;
    identity.numbers = {right.sphere,
                        right.cylinder,
                        right.axis,
                        left.sphere,
                        left.cylinder,
                        left.axis,
                        line.bifocalAddition ? line.bifocalAddition->thousandths() : -1};
    return identity;
}

Identity opticsOf(const StockLine& line)
{
    auto identity = powersOf(line);
    identity.numbers[7] = micrometres(line.centres);
    identity.numbers[8] = micrometres(line.heightsDiffer);
    identity.numbers[9] = line.centresFrom == CentresFrom::assumed ? 1 : 0;
    identity.use = line.use;
    identity.size = line.frame.sizeClass;
    return identity;
}

bool turns(const StockLine& lens)
{
    return lens.anyAxis && lens.power.right.cylinder != Dioptres{};
}

bool sideAllows(const StockLine& lens, Eye eye)
{
    return lens.side == LensSide::either || (lens.side == LensSide::right) == (eye == Eye::right);
}

/// Places of distinct lens powers, by power and whether they turn.
using LensPlaces = std::map<std::pair<bool, PowerKey>, std::size_t>;

void addLens(const StockLine& lens, std::uint32_t place, StockIndex::Lenses& lenses, LensPlaces& places)
{
    const bool turning = turns(lens);
    auto power = turning ? minusCylinderForm(lens.power.right) : lens.power.right;
    if (turning)
        power.axis = AxisDegrees{180.0};
    auto& powers = turning ? lenses.turning : lenses.fixed;
    const auto [found, fresh] = places.emplace(std::pair{turning, keyOf(power)}, powers.size());
    if (fresh) {
        powers.push_back({power, toPowerVector(power), {}});
        if (!turning)
            lenses.fixedColumns.add(powers.back().vector);
    }
    powers[found->second].lines.push_back(place);
}

/// `all` in the order of `places`.
template <class T>
void reorder(std::vector<T>& all, const std::vector<std::uint32_t>& places)
{
    std::vector<T> ordered;
    ordered.reserve(all.size());
    for (const auto place : places)
        ordered.push_back(std::move(all[place]));
    all = std::move(ordered);
}

/// Like powers side by side, so that a search may leave out whole blocks.
void bringTogether(StockIndex::Pairs& pairs)
{
    reorder(pairs.powers, PowerColumns::neighbours(pairs.right, pairs.left));
    pairs.right = pairs.left = {};
    for (const auto& power : pairs.powers) {
        pairs.right.add(power.vector.right);
        pairs.left.add(power.vector.left);
    }
    pairs.right.finish();
    pairs.left.finish();
}

void bringTogether(StockIndex::Lenses& lenses)
{
    reorder(lenses.fixed, PowerColumns::neighbours(lenses.fixedColumns, lenses.fixedColumns));
    lenses.fixedColumns = {};
    for (const auto& power : lenses.fixed)
        lenses.fixedColumns.add(power.vector);
    lenses.fixedColumns.finish();
}

} // namespace

PowerKey keyOf(const SpheroCylinder& power)
{
    const auto form = minusCylinderForm(power);
    return {form.sphere.thousandths(), form.cylinder.thousandths(),
            form.cylinder == Dioptres{} ? 0 : form.axis.thousandths()};
}

std::optional<double> centresOf(const StockLine& line)
{
    if (line.centres)
        return line.centres;
    if (line.kind == LineKind::frame && line.frame.lens > 0.0)
        return line.frame.lens + line.frame.bridge;
    return {};
}

StockIndex::StockIndex(std::span<const StockLine> stock)
{
    std::unordered_map<Identity, std::size_t, HashOf> powers;
    std::unordered_map<Identity, std::uint32_t, HashOf> groups;
    for (std::size_t i = 0; i < stock.size(); ++i) {
        const auto& line = stock[i];
        if (line.kind != LineKind::readyMade)
            continue;
        auto& pairs = line.bifocalAddition ? bifocals_ : singleVision_;
        const auto [power, freshPower] = powers.emplace(powersOf(line), pairs.powers.size());
        if (freshPower) {
            const PerEye vector{toPowerVector(line.power.right), toPowerVector(line.power.left)};
            pairs.powers.push_back({line.power, vector, line.bifocalAddition, {}});
            pairs.right.add(vector.right);
            pairs.left.add(vector.left);
        }
        const auto [group, freshGroup] =
            groups.emplace(opticsOf(line), static_cast<std::uint32_t>(groups_.size()));
        if (freshGroup) {
            pairs.powers[power->second].groups.push_back(group->second);
            groups_.emplace_back();
        }
        groups_[group->second].push_back(static_cast<std::uint32_t>(i));
    }
    for (auto* pairs : {&singleVision_, &bifocals_})
        bringTogether(*pairs);
    addFrames(stock);
}

void StockIndex::addFrames(std::span<const StockLine> stock)
{
    using Shapes = std::set<std::string>;
    using Key = std::tuple<long, std::string, std::size_t, long, long, bool>;
    std::map<Shapes, std::size_t> racks;
    std::map<Key, std::size_t> groups;
    for (std::size_t i = 0; i < stock.size(); ++i) {
        const auto& line = stock[i];
        if (line.kind != LineKind::frame)
            continue;
        const auto [rack, freshRack] =
            racks.emplace(Shapes(line.takes.begin(), line.takes.end()), racks_.size());
        if (freshRack)
            racks_.emplace_back();
        const Key key{micrometres(centresOf(line)),
                      line.frame.sizeClass,
                      rack->second,
                      std::lround(line.axisStep * 1000.0),
                      micrometres(line.heightsDiffer),
                      line.centresFrom == CentresFrom::assumed};
        const auto [group, freshGroup] = groups.emplace(key, frames_.size());
        if (freshGroup)
            frames_.push_back({{}, rack->second});
        frames_[group->second].frames.push_back(static_cast<std::uint32_t>(i));
    }
    std::map<std::string, std::vector<std::size_t>> racksOfShape;
    for (const auto& [shapes, rack] : racks)
        for (const auto& shape : shapes)
            racksOfShape[shape].push_back(rack);
    fillRacks(stock, racksOfShape);
}

void StockIndex::fillRacks(std::span<const StockLine> stock,
                           const std::map<std::string, std::vector<std::size_t>>& racksOfShape)
{
    std::vector<PerEye<LensPlaces>> places(racks_.size());
    for (std::size_t i = 0; i < stock.size(); ++i) {
        const auto& line = stock[i];
        const auto racks = line.kind == LineKind::lens ? racksOfShape.find(line.shape) : racksOfShape.end();
        if (racks == racksOfShape.end())
            continue;
        for (const std::size_t rack : racks->second)
            for (const Eye eye : bothEyes)
                if (sideAllows(line, eye))
                    addLens(line, static_cast<std::uint32_t>(i), racks_[rack].lenses.of(eye),
                            places[rack].of(eye));
    }
    for (auto& rack : racks_)
        for (const Eye eye : bothEyes)
            bringTogether(rack.lenses.of(eye));
}

} // namespace quarterstep
