// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/explanation.hpp"

#include "core/fitting/clear_range.hpp"
#include "core/fitting/fit_chance.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

double mountedAxisOf(const StockLine& line, const SpheroCylinder& power)
{
    return line.kind == LineKind::lens && line.anyAxis && power.cylinder != Dioptres{} ? power.axis.value()
                                                                                       : 0.0;
}

} // namespace

OpticalCross crossOf(const PowerVector& vector)
{
    const auto power = toSpheroCylinder(vector);
    return {power, principalPowers(power)};
}

std::optional<Explanation> explainPair(const Need& need, std::span<const Part> parts,
                                       std::span<const StockLine> stock, const Profile& profile,
                                       const Settings& settings, const TrialAcuity* trial)
{
    const auto supply = supplyOf(parts, stock, need, settings);
    if (!supply)
        return {};
    Explanation answer;
    auto& candidate = answer.candidate;
    candidate.parts.assign(parts.begin(), parts.end());
    candidate.supply = *supply;
    for (const auto& part : parts)
        if (part.side == PartSide::right || part.side == PartSide::left) {
            const Eye eye = part.side == PartSide::right ? Eye::right : Eye::left;
            candidate.mountedAxis.of(eye) = mountedAxisOf(stock[part.line], supply->power.of(eye));
        }
    candidate.fit = judge(need, *supply, profile, trial);
    nameSources(candidate.fit, profile);
    candidate.chance = chancesOf(need, candidate, profile);
    for (const Eye eye : bothEyes)
        if (const auto& fit = candidate.fit.eyes.of(eye))
            answer.crosses.of(eye) =
                EyeCrosses{crossOf(fit->needed), crossOf(fit->supplied), crossOf(fit->error)};
    answer.clear = clearRange(need, candidate.fit);
    if (candidate.fit.band == Band::fails)
        answer.change = singleChangeFor(need, candidate, profile);
    answer.readingLevelExcess =
        std::max(0.0, std::abs(candidate.fit.readingLevelPair) - std::abs(candidate.fit.readingLevelFull));
    return answer;
}

} // namespace quarterstep
