// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/reach.hpp"

#include "core/fitting/criteria/measure.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double slack = 1e-4; ///< above the rounding of single precision and the tolerance of limits

const std::optional<Limit>& lastOf(const Bands& bands)
{
    return bands.trial ? bands.trial : bands.caution ? bands.caution : bands.fits;
}

/// Size from which a criterion fails; no limit where it cannot.
double failsFrom(const Need& need, const CriterionRule& rule)
{
    if (!rule.judged || rule.neverFails)
        return noLimit;
    const auto& last = lastOf(bandsAt(rule, need.age));
    return last ? last->value : noLimit;
}

bool canFail(const Need& need, const Profile& profile, Criterion criterion)
{
    return failsFrom(need, profile.of(criterion)) < noLimit;
}

/// Criteria that the fellow eye has no part in, and those with bounds below.
bool bounded(const Need& need, const Profile& profile, Criterion criterion)
{
    switch (criterion) {
    case Criterion::residualCylinder:
    case Criterion::powerSize:
    case Criterion::blur:
    case Criterion::tooPlus:
    case Criterion::tooMinus:
    case Criterion::suppliedCylinder:
    case Criterion::axisTurn:
    case Criterion::nearBlur:
    case Criterion::nearTooPlus:
    case Criterion::nearTooMinus:
    case Criterion::sphereError:
    case Criterion::cylinderError:
    case Criterion::axisError:
    case Criterion::needDifference: // equal pairs only
    case Criterion::trialAcuity:    // nothing is typed during a search
    case Criterion::suppliedDifference:
    case Criterion::balance:
    case Criterion::horizontalPrism:
    case Criterion::verticalPrism:
        return true;
    case Criterion::readingLevel:
        return need.nearWork() || !canFail(need, profile, criterion);
    case Criterion::meanSphereAcuity:
        return !need.meanSphereLoss || !canFail(need, profile, criterion);
    default:
        return !canFail(need, profile, criterion);
    }
}

/// Whether the frame alone already fails: its centres are too far from the PD.
bool centresFail(const Need& need, const Supply& frame, const Profile& profile)
{
    if (!frame.centres)
        return false;
    const double worst = std::max(std::abs(frame.centres->least - need.pd.most),
                                  std::abs(frame.centres->most - need.pd.least));
    return worst > failsFrom(need, profile.of(Criterion::centres)) + slack;
}

void boundCentres(const Need& need, const Supply& frame, const Profile& profile, PairReach& reach)
{
    const auto& rule = profile.of(Criterion::centres);
    reach.hopeless = reach.hopeless || centresFail(need, frame, profile);
    if (!rule.judged || !frame.centres)
        return;
    const double worst = std::max(std::abs(frame.centres->least - need.pd.most),
                                  std::abs(frame.centres->most - need.pd.least));
    if (worst > failsFrom(need, rule) - slack)
        reach.unsure = true;
    if (rule.needsPrismUnder)
        reach.mustTurnIn = std::min(reach.mustTurnIn, *rule.needsPrismUnder - slack);
}

} // namespace

EyeReach eyeReach(const Need& need, Eye eye, const Profile& profile)
{
    const auto limit = [&](Criterion criterion) { return failsFrom(need, profile.of(criterion)) + slack; };
    EyeReach reach;
    reach.tooMinus = limit(Criterion::tooMinus);
    reach.tooPlus = limit(Criterion::tooPlus);
    reach.oblique = limit(Criterion::residualCylinder) / 2.0;
    reach.blur = limit(Criterion::blur);
    // Written sphere = M + |J| and cylinder = 2 |J| in minus-cylinder form, so both bound M and J.
    const double written = limit(Criterion::sphereError) + limit(Criterion::cylinderError) / 2.0;
    reach.tooMinus = std::min(reach.tooMinus, written);
    reach.tooPlus = std::min(reach.tooPlus, written);
    const double needed = cylinderSize(toPowerVector(need.eyes.of(eye).power));
    reach.oblique = std::min(reach.oblique, needed + limit(Criterion::cylinderError) / 2.0);
    // A lens with a cylinder must leave less of it than a sphere would, and a sphere leaves all of it.
    if (const auto& supplied = profile.of(Criterion::suppliedCylinder);
        supplied.judged && lastOf(bandsAt(supplied, need.age)))
        reach.oblique = std::min(reach.oblique, needed / 2.0 + slack);
    return reach;
}

PairReach pairReach(const Need& need, const Supply& frame, const Profile& profile)
{
    const auto limit = [&](Criterion criterion) { return failsFrom(need, profile.of(criterion)); };
    PairReach reach;
    reach.canBalance = limit(Criterion::balance) + slack;
    reach.mustBalance = limit(Criterion::balance) - slack;
    const auto& balance = profile.of(Criterion::balance);
    if (const auto& fits = bandsAt(balance, need.age).fits; balance.hyperopicChildUnder && fits)
        reach.mustBalance = std::min(reach.mustBalance, fits->value - slack);
    reach.canDiffer = limit(Criterion::suppliedDifference) + slack;
    reach.mustDiffer = limit(Criterion::suppliedDifference) - slack;
    reach.canTurnIn = limit(Criterion::horizontalPrism) + slack;
    reach.mustTurnIn = limit(Criterion::horizontalPrism) - slack;
    reach.canTurnUp = limit(Criterion::verticalPrism) + slack;
    reach.mustTurnUp = limit(Criterion::verticalPrism) - slack;
    boundCentres(need, frame, profile, reach);
    const auto& prism = profile.of(Criterion::horizontalPrism);
    if (prescribedPrism(need) && !profile.prismByDecentration && prism.judged)
        reach.unsure = true;
    for (std::size_t i = 0; i < criterionCount; ++i)
        if (!bounded(need, profile, static_cast<Criterion>(i)) &&
            static_cast<Criterion>(i) != Criterion::centres)
            reach.unsure = true;
    return reach;
}

} // namespace quarterstep
