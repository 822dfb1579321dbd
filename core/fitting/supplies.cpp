// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/supplies.hpp"

#include "core/optics/angle.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

void setCentres(const StockLine& line, const Settings& settings, Supply& supply)
{
    const auto centres = centresOf(line);
    supply.centres = centres ? Range{*centres, *centres} : settings.unknownCentres;
    supply.centresAssumed = !centres || line.centresFrom == CentresFrom::assumed;
    supply.heightsDiffer = line.heightsDiffer;
    supply.frameSize = line.frame.sizeClass;
}

/// Axis of the frame's mark nearest to the axis needed, (0, 180].
double nearestMark(double axis, double step)
{
    return foldAxis(step > 0.0 ? std::round(axis / step) * step : axis).value();
}

bool fits(const StockLine& frame, const StockLine& lens, Eye eye)
{
    const bool side = lens.side == LensSide::either || (lens.side == LensSide::right) == (eye == Eye::right);
    return side && std::find(frame.takes.begin(), frame.takes.end(), lens.shape) != frame.takes.end();
}

} // namespace

Wanted Query::wanted(Eye eye) const
{
    const auto& wanted = need.eyes.of(eye);
    return {wanted.seeing, toPowerVector(wanted.power), eyeReach(need, eye, profile), forgivenMinus(need)};
}

bool Query::usable(std::size_t line) const
{
    if (stock[line].origin == Origin::used && !settings.useUsedPairs)
        return false;
    return !options.onlyAvailable || stock[line].available() > 0;
}

StockIndex::Lines Query::usableOf(const StockIndex::Lines& lines) const
{
    StockIndex::Lines kept;
    for (const auto line : lines)
        if (usable(line))
            kept.push_back(line);
    return kept;
}

bool Query::anyUsable(const StockIndex::Lines& lines) const
{
    return std::any_of(lines.begin(), lines.end(), [this](std::uint32_t line) { return usable(line); });
}

Supply readyMadeSupply(const StockLine& line, const Settings& settings)
{
    Supply supply;
    supply.power = line.power;
    supply.bifocalAddition = line.bifocalAddition;
    supply.equalPair = line.equalPowers();
    setCentres(line, settings, supply);
    return supply;
}

Supply frameSupply(const StockLine& frame, const Settings& settings)
{
    Supply supply;
    supply.equalPair = false;
    setCentres(frame, settings, supply);
    return supply;
}

AxisDegrees markFor(const EyeNeed& need, double axisStep)
{
    const auto wanted = toSpheroCylinder(toPowerVector(need.power));
    return AxisDegrees{wanted.cylinder == Dioptres{} ? 180.0 : nearestMark(wanted.axis.value(), axisStep)};
}

SpheroCylinder turnedToMark(const SpheroCylinder& lens, const EyeNeed& need, double axisStep)
{
    const auto given = minusCylinderForm(lens);
    return {given.sphere, given.cylinder, markFor(need, axisStep)};
}

std::optional<Supply> supplyOf(std::span<const Part> parts, std::span<const StockLine> stock,
                               const Need& need, const Settings& settings)
{
    if (parts.size() == 1 && parts[0].side == PartSide::pair && parts[0].line < stock.size() &&
        stock[parts[0].line].kind == LineKind::readyMade)
        return readyMadeSupply(stock[parts[0].line], settings);
    const StockLine* frame = nullptr;
    PerEye<const StockLine*> lens{nullptr, nullptr};
    for (const auto& part : parts) {
        if (part.line >= stock.size())
            return {};
        const auto& line = stock[part.line];
        if (part.side == PartSide::frame && line.kind == LineKind::frame)
            frame = &line;
        if ((part.side == PartSide::right || part.side == PartSide::left) && line.kind == LineKind::lens)
            lens.of(part.side == PartSide::right ? Eye::right : Eye::left) = &line;
    }
    if (parts.size() != 3 || frame == nullptr || lens.right == nullptr || lens.left == nullptr)
        return {};
    Supply supply = frameSupply(*frame, settings);
    for (const Eye eye : bothEyes) {
        const auto& chosen = *lens.of(eye);
        if (!fits(*frame, chosen, eye))
            return {};
        const bool turns = chosen.anyAxis && chosen.power.right.cylinder != Dioptres{};
        supply.power.of(eye) =
            turns ? turnedToMark(chosen.power.right, need.eyes.of(eye), frame->axisStep) : chosen.power.right;
    }
    return supply;
}

} // namespace quarterstep
