// SPDX-License-Identifier: GPL-3.0-or-later
// Criteria that a chart decides: mean-sphere acuity, and acuity with the very pair on the face.
#include "core/fitting/criteria/measure.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double snellen6over9 = 0.17609125905568124; // log10(9/6)
constexpr double snellen6over12 = 0.3010299956639812; // log10(12/6)
constexpr double nearPointsAsked = 8.0;               // N8

bool suppliesSpheresOnly(const Case& c)
{
    for (const Eye eye : bothEyes)
        if (const auto& fit = c.fit.eyes.of(eye); fit && cylinderSize(fit->supplied) > limitTolerance)
            return false;
    return true;
}

bool onTrialSoFar(const Case& c)
{
    return std::any_of(c.results.begin(), c.results.end(),
                       [](const Measured& result) { return result.band == Band::onTrial; });
}

/// logMAR beyond what is asked of this eye (<= 0 is good enough); empty when not typed.
std::optional<double> shortOf(const Case& c, Eye eye)
{
    const auto& typed = c.trial->distance.of(eye);
    if (!typed || !typed->logMar)
        return {};
    const double asked = c.need.childRules ? snellen6over9 : snellen6over12;
    double beyond = *typed->logMar - (asked + 0.005);
    if (const auto& best = c.trial->best.of(eye); best && best->logMar)
        beyond = std::max(beyond, *typed->logMar - *best->logMar - oneLine);
    return beyond;
}

std::optional<double> nearShort(const Case& c)
{
    if (!c.trial->near)
        return {};
    return std::log10(c.trial->near->points / nearPointsAsked);
}

} // namespace

void measureMeanSphereAcuity(const Case& c)
{
    if (c.need.meanSphereLoss && suppliesSpheresOnly(c))
        tell(c, Criterion::meanSphereAcuity, {}, std::max(0.0, *c.need.meanSphereLoss));
}

void measureTrialAcuity(const Case& c)
{
    if (c.trial == nullptr || !onTrialSoFar(c))
        return;
    double worst = -1.0;
    bool complete = true;
    if (c.need.nearWork()) {
        const auto beyond = nearShort(c);
        complete = beyond.has_value();
        worst = beyond.value_or(worst);
    } else {
        for (const Eye eye : bothEyes)
            if (c.fit.eyes.of(eye)) {
                const auto beyond = shortOf(c, eye);
                complete = complete && beyond.has_value();
                worst = std::max(worst, beyond.value_or(worst));
            }
    }
    if (!complete)
        return;
    auto& result = tell(c, Criterion::trialAcuity, {}, std::max(0.0, worst));
    result.limit = 0.0; // on trial means exactly this: no profile can leave the question out
    result.band = worst <= limitTolerance ? Band::fits : Band::fails;
}

} // namespace quarterstep
