// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/auditing/effective_coverage.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

constexpr double slack = 1e-6;      // logMAR
constexpr double seesNothing = 9.0; // logMAR beyond any chart

bool good(double logMar)
{
    return logMar <= goodSight + slack;
}

std::optional<double> smaller(const std::optional<double>& one, const std::optional<double>& other)
{
    if (!one || !other)
        return one ? one : other;
    return std::min(*one, *other);
}

} // namespace

SightNeed needOf(const SightOfPerson& person)
{
    if (!person.unaided)
        return SightNeed::unknown;
    if (good(*person.unaided))
        return person.refractiveSurgery ? SightNeed::met : SightNeed::none;
    if (person.hasCorrection && !person.corrected)
        return SightNeed::unknown;
    if (person.hasCorrection && good(*person.corrected))
        return SightNeed::met;
    if (!person.best)
        return SightNeed::unknown;
    if (!good(*person.best))
        return SightNeed::otherCause;
    return person.hasCorrection ? SightNeed::underMet : SightNeed::unmet;
}

std::optional<double> EffectiveCoverage::share() const
{
    if (inNeed() == 0)
        return std::nullopt;
    return static_cast<double>(of(SightNeed::met)) / static_cast<double>(inNeed());
}

std::optional<double> betterEyeIfKnown(const PersonRecord& person, std::optional<Acuity> EyeAcuities::*which)
{
    std::optional<double> better;
    bool bothKnown = true;
    for (const Eye eye : bothEyes) {
        const auto& record = person.eyes.of(eye);
        const auto& acuity = record.acuity.*which;
        const bool sightless =
            record.final.state == EyeState::artificial || record.final.state == EyeState::blind;
        if (acuity)
            better = smaller(better, acuity->logMar.value_or(seesNothing));
        else if (sightless)
            better = smaller(better, seesNothing);
        else
            bothKnown = false;
    }
    if (bothKnown || (better && good(*better)))
        return better;
    return std::nullopt;
}

SightOfPerson sightBefore(const PersonRecord& person)
{
    SightOfPerson sight;
    sight.unaided = betterEyeIfKnown(person, &EyeAcuities::unaided);
    sight.corrected = betterEyeIfKnown(person, &EyeAcuities::habitual);
    for (const Eye eye : bothEyes)
        sight.hasCorrection =
            sight.hasCorrection || person.eyes.of(eye).acuity.habitual || person.eyes.of(eye).worn;
    sight.best = smaller(betterEyeIfKnown(person, &EyeAcuities::best),
                         betterEyeIfKnown(person, &EyeAcuities::pinhole));
    return sight;
}

} // namespace quarterstep
