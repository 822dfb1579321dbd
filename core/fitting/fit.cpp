// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/fit.hpp"

#include "core/fitting/criteria/measure.hpp"
#include "core/fitting/criteria/table.hpp"

#include <algorithm>
#include <bitset>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double readingDrop = 10.0; // mm below the centres at which reading-level imbalance is told

std::optional<PowerVector> nearErrorOf(const EyeNeed& need, const SpheroCylinder& power,
                                       std::optional<Dioptres> addition)
{
    if (!need.nearPower)
        return {};
    return toPowerVector(withSphereAdded(power, addition.value_or(Dioptres{}))) -
           toPowerVector(*need.nearPower);
}

EyeFit eyeFit(const EyeNeed& need, const Supply& supply, Eye eye)
{
    EyeFit fit;
    fit.needed = toPowerVector(need.power);
    fit.supplied = toPowerVector(supply.power.of(eye));
    fit.error = fit.supplied - fit.needed;
    fit.blur = blurStrength(fit.error);
    fit.loss = expectedLoss(fit.blur);
    fit.nearError = nearErrorOf(need, supply.power.of(eye), supply.bifocalAddition);
    return fit;
}

/// Prism of the pair for one PD and one distance between centres, prescribed prism taken off.
PairPrism prismError(const Need& need, const Supply& supply, double pd, double centres)
{
    const double rise = supply.heightsDiffer.value_or(0.0) / 2.0;
    PerEye<EyePrism> prism;
    for (const Eye eye : bothEyes) {
        const double nasal = centres / 2.0 - pd * need.share.of(eye);
        const double above = eye == Eye::right ? 0.0 - rise : rise;
        prism.of(eye) = prismAt(toPowerMatrix(supply.power.of(eye)), eye, nasal, above);
        prism.of(eye).in -= need.eyes.of(eye).prism.in;
        prism.of(eye).up -= need.eyes.of(eye).prism.up;
    }
    return pairPrism(prism.right, prism.left);
}

void measurePrism(const Need& need, const Supply& supply, Fit& fit)
{
    if (!need.pairLevel())
        return;
    if (!supply.centres) {
        fit.prism = pairPrism({0.0 - need.eyes.right.prism.in, 0.0 - need.eyes.right.prism.up},
                              {0.0 - need.eyes.left.prism.in, 0.0 - need.eyes.left.prism.up});
        return;
    }
    fit.prism = prismError(need, supply, need.pd.middle(), supply.centres->middle());
    if (need.pd.least == need.pd.most && supply.centres->least == supply.centres->most)
        return;
    Range range{fit.prism.horizontal, fit.prism.horizontal};
    for (const double pd : {need.pd.least, need.pd.most})
        for (const double centres : {supply.centres->least, supply.centres->most}) {
            const double horizontal = prismError(need, supply, pd, centres).horizontal;
            range = {std::min(range.least, horizontal), std::max(range.most, horizontal)};
        }
    fit.horizontalPrismRange = range;
}

double verticalAtReadingLevel(const SpheroCylinder& right, const SpheroCylinder& left)
{
    return pairPrism(prismAt(toPowerMatrix(right), Eye::right, 0.0, 0.0 - readingDrop),
                     prismAt(toPowerMatrix(left), Eye::left, 0.0, 0.0 - readingDrop))
        .vertical;
}

bool onWorseSide(const Need& need, const EyeFit& eye)
{
    const bool minusIsWorse = need.childRules && !need.nearWork() && !need.cycloplegic;
    const double error = eye.nearError ? eye.nearError->m : eye.error.m;
    return minusIsWorse ? error < -limitTolerance : error > limitTolerance;
}

bool decided(const CriterionResult& result)
{
    return result.band != Band::shown && result.band != Band::notMeasured;
}

void settleBand(Fit& fit)
{
    const CriterionResult* trial = nullptr;
    for (const auto& result : fit.criteria)
        if (result.criterion == Criterion::trialAcuity)
            trial = &result;
    fit.band = Band::fits;
    std::bitset<criterionCount> cautions; // a criterion counts once, in whichever eyes
    for (const auto& result : fit.criteria) {
        if (!decided(result))
            continue;
        Band band = result.band;
        if (band == Band::onTrial && trial != nullptr && trial->band == Band::fits)
            band = Band::caution;
        fit.band = std::max(fit.band, band);
        if (band == Band::caution)
            cautions.set(static_cast<std::size_t>(result.criterion));
    }
    fit.cautions = static_cast<int>(cautions.count());
}

} // namespace

double forgivenMinus(const Need& need)
{
    if (need.nearWork() || !need.age)
        return 0.0;
    const double age = *need.age;
    if (age < 16.0 || age >= 60.0)
        return 0.0;
    return age < 40.0 ? 1.0 : std::clamp((15.0 - 0.25 * age) / 4.0, 0.0, 1.0);
}

double costOfError(PowerVector error, double forgiven)
{
    const double taken = error.m < 0.0 ? std::min(forgiven, 0.0 - error.m) : 0.0;
    const double m = error.m + taken;
    return std::log10(1.0 + m * m + error.j0 * error.j0 + error.j45 * error.j45) + 0.05 * taken;
}

double costOf(const Need& need, Eye eye, const SpheroCylinder& power, std::optional<Dioptres> addition)
{
    const auto& wanted = need.eyes.of(eye);
    double cost = costOfError(toPowerVector(power) - toPowerVector(wanted.power), forgivenMinus(need));
    if (const auto nearError = nearErrorOf(wanted, power, addition))
        cost += costOfError(*nearError, 0.0);
    return cost;
}

Fit judge(const Need& need, const Supply& supply, const Profile& profile, const TrialAcuity* trial)
{
    Fit fit;
    fit.criteria.reserve(24);
    judgeInto(fit, need, supply, profile, trial);
    return fit;
}

void followCentres(Need& need, Supply& supply)
{
    if (!need.pdFollowsCentres || !supply.centres)
        return;
    const double pd = supply.centres->middle();
    need.pd = {pd, pd};
    need.pdKnown = true;
    need.pdFollowsCentres = false;
    supply.centres = need.pd;
}

void judgeInto(Fit& fit, const Need& need, const Supply& supply, const Profile& profile,
               const TrialAcuity* trial)
{
    if (need.pdFollowsCentres && supply.centres) {
        Need centred = need;
        Supply sure = supply;
        followCentres(centred, sure);
        judgeInto(fit, centred, sure, profile, trial);
        return;
    }
    auto room = std::move(fit.criteria);
    room.clear();
    fit = Fit{};
    fit.criteria = std::move(room);
    const double forgiven = forgivenMinus(need);
    for (const Eye eye : bothEyes) {
        if (!need.eyes.of(eye).seeing)
            continue;
        auto& eyeResult = fit.eyes.of(eye);
        eyeResult = eyeFit(need.eyes.of(eye), supply, eye);
        double cost = costOfError(eyeResult->error, forgiven);
        if (eyeResult->nearError)
            cost += costOfError(*eyeResult->nearError, 0.0);
        fit.cost += cost;
        fit.worseSideEyes += onWorseSide(need, *eyeResult) ? 1 : 0;
    }
    measurePrism(need, supply, fit);
    if (need.pairLevel()) {
        fit.readingLevelPair = verticalAtReadingLevel(supply.power.right, supply.power.left);
        fit.readingLevelFull = verticalAtReadingLevel(need.eyes.right.power, need.eyes.left.power);
    }
    const Case c{need, supply, profile, trial, fit};
    for (const auto& info : criterionTable())
        info.measure(c);
    settleBand(fit);
}

void nameSources(Fit& fit, const Profile& profile)
{
    for (auto& result : fit.criteria)
        result.source = profile.of(result.criterion).source;
}

} // namespace quarterstep
