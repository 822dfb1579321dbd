// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/lens_choices.hpp"

#include <algorithm>
#include <iterator>

namespace quarterstep
{

LensChoices::LensChoices(const Query& query, Eye eye, std::size_t rack, double axisStep, double cost)
    : query_(query), eye_(eye), alone_(query.need)
{
    alone_.eyes.of(eye == Eye::right ? Eye::left : Eye::right).seeing = false;
    if (query.need.pairLevel())
        alone_.meanSphereLoss.reset(); // asks whether both lenses are spheres
    gather(query.index.racks()[rack].lenses.of(eye), query.wanted(eye), axisStep, cost);
    byCost_.reserve(choices_.size());
    for (std::size_t i = 0; i < choices_.size(); ++i)
        byCost_.emplace_back(choices_[i].cost, static_cast<std::uint32_t>(i));
    passes_.resize(choices_.size(), Passes::unknown);
}

void LensChoices::gather(const StockIndex::Lenses& lenses, const Wanted& wanted, double axisStep, double cost)
{
    const auto add = [&](const SpheroCylinder& power, const PowerVector& vector) -> LensChoice* {
        const double costs = wanted.judged ? costOfError(vector - wanted.need, wanted.forgiven) : 0.0;
        const bool inReach = wanted.takes(vector);
        if (!inReach && costs > cost)
            return nullptr;
        return &choices_.emplace_back(LensChoice{power, vector, costs, inReach, nullptr, nullptr});
    };
    std::map<PowerKey, std::size_t> turned;
    if (!lenses.turning.empty()) {
        const AxisDegrees mark = markFor(query_.need.eyes.of(eye_), axisStep);
        PowerColumns columns;
        std::vector<SpheroCylinder> mounted;
        mounted.reserve(lenses.turning.size());
        for (const auto& lens : lenses.turning) {
            mounted.push_back({lens.power.sphere, lens.power.cylinder, mark});
            columns.add(toPowerVector(mounted.back()));
        }
        for (const auto place : columns.near(wanted, cost))
            if (auto* choice = add(mounted[place], toPowerVector(mounted[place]))) {
                turned.emplace(keyOf(mounted[place]), choices_.size() - 1);
                choice->turning = &lenses.turning[place];
            }
    }
    const auto places = lenses.fixedColumns.near(wanted, cost);
    choices_.reserve(choices_.size() + places.size());
    for (const auto place : places) {
        const auto& lens = lenses.fixed[place];
        const auto twin = turned.empty() ? turned.end() : turned.find(keyOf(lens.power));
        if (auto* choice = twin != turned.end() ? &choices_[twin->second] : add(lens.power, lens.vector))
            choice->fixed = &lens;
    }
}

std::uint32_t LensChoices::placeOf(std::size_t rank) const
{
    constexpr std::size_t fewest = 32;
    if (rank >= sorted_) {
        const auto to = std::min(byCost_.size(), std::max(fewest, 2 * (rank + 1)));
        const auto at = [&](std::size_t place) {
            return byCost_.begin() + static_cast<std::ptrdiff_t>(place);
        };
        if (to < byCost_.size())
            std::nth_element(at(sorted_), at(to), byCost_.end());
        std::sort(at(sorted_), at(to));
        sorted_ = to;
    }
    return byCost_[rank].second;
}

const StockIndex::Lines& LensChoices::linesOf(const LensChoice& choice) const
{
    if (choice.fixed == nullptr || choice.turning == nullptr)
        return choice.fixed != nullptr ? choice.fixed->lines : choice.turning->lines;
    auto& lines = merged_[&choice];
    if (lines.empty())
        std::merge(choice.fixed->lines.begin(), choice.fixed->lines.end(), choice.turning->lines.begin(),
                   choice.turning->lines.end(), std::back_inserter(lines));
    return lines;
}

bool LensChoices::usable(const LensChoice& choice) const
{
    return (choice.fixed != nullptr && query_.anyUsable(choice.fixed->lines)) ||
           (choice.turning != nullptr && query_.anyUsable(choice.turning->lines));
}

bool LensChoices::passes(std::uint32_t place) const
{
    auto& passes = passes_[place];
    if (passes == Passes::unknown) {
        const auto& choice = choices_[place];
        bool good = choice.inReach && usable(choice);
        if (good) {
            Supply supply;
            supply.power = {choice.power, choice.power};
            supply.equalPair = false;
            const KnownSupply known{{choice.vector, choice.vector}, choice.cost};
            judgeBriefly(fit_, alone_, supply, query_.profile, &known);
            good = fit_.band != Band::fails;
        }
        passes = good ? Passes::yes : Passes::no;
    }
    return passes == Passes::yes;
}

LensRack::LensRack(const Query& query, Eye eye, std::size_t rack, double axisStep)
{
    const auto& lenses = query.index.racks()[rack].lenses.of(eye);
    std::map<PowerKey, Group> byPower;
    const auto add = [&](const SpheroCylinder& power, const StockIndex::LensPower& lens) {
        auto& group = byPower.try_emplace(keyOf(power), Group{power, {}}).first->second;
        for (const auto line : query.usableOf(lens.lines))
            group.lines.push_back(line);
    };
    const AxisDegrees mark = markFor(query.need.eyes.of(eye), axisStep);
    for (const auto& lens : lenses.turning)
        add({lens.power.sphere, lens.power.cylinder, mark}, lens);
    for (const auto& lens : lenses.fixed)
        add(lens.power, lens);
    for (auto& [key, group] : byPower) {
        std::sort(group.lines.begin(), group.lines.end());
        if (!group.lines.empty())
            groups_.push_back(std::move(group));
    }
    std::sort(groups_.begin(), groups_.end(),
              [](const Group& a, const Group& b) { return a.lines.front() < b.lines.front(); });
}

std::optional<SpheroCylinder> LensRack::powerOf(const StockIndex::Lines& lines) const
{
    const auto found =
        std::lower_bound(groups_.begin(), groups_.end(), lines.front(),
                         [](const Group& group, std::uint32_t line) { return group.lines.front() < line; });
    if (found == groups_.end() || found->lines != lines)
        return {};
    return found->power;
}

} // namespace quarterstep
