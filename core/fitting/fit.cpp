// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/fit.hpp"

#include "core/fitting/criteria/measure.hpp"
#include "core/fitting/criteria/table.hpp"
#include "core/optics/notation.hpp"

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

EyeFit eyeFit(const EyeNeed& need, const Supply& supply, Eye eye, const KnownSupply* known)
{
    EyeFit fit;
    fit.needed = toPowerVector(need.power);
    fit.supplied = known != nullptr ? known->power.of(eye) : toPowerVector(supply.power.of(eye));
    fit.error = fit.supplied - fit.needed;
    fit.blur = blurStrength(fit.error);
    fit.nearError = nearErrorOf(need, supply.power.of(eye), supply.bifocalAddition);
    return fit;
}

/// Prism of the pair for one PD and one distance between centres, prescribed prism taken off.
PairPrism prismError(const Need& need, const Supply& supply, const Fit& fit, double pd, double centres)
{
    const double rise = supply.heightsDiffer.value_or(0.0) / 2.0;
    PerEye<EyePrism> prism;
    for (const Eye eye : bothEyes) {
        const double nasal = centres / 2.0 - pd * need.share.of(eye);
        const double above = eye == Eye::right ? 0.0 - rise : rise;
        prism.of(eye) = prismAt(toPowerMatrix(fit.eyes.of(eye)->supplied), eye, nasal, above);
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
    fit.prism = prismError(need, supply, fit, need.pd.middle(), supply.centres->middle());
    if (need.pd.least == need.pd.most && supply.centres->least == supply.centres->most)
        return;
    Range range{fit.prism.horizontal, fit.prism.horizontal};
    for (const double pd : {need.pd.least, need.pd.most})
        for (const double centres : {supply.centres->least, supply.centres->most}) {
            const double horizontal = prismError(need, supply, fit, pd, centres).horizontal;
            range = {std::min(range.least, horizontal), std::max(range.most, horizontal)};
        }
    fit.horizontalPrismRange = range;
}

double verticalAtReadingLevel(const PowerVector& right, const PowerVector& left)
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

bool decided(Band band)
{
    return band != Band::shown && band != Band::notMeasured;
}

void settleBand(const Results& results, Fit& fit)
{
    const Measured* trial = nullptr;
    for (const auto& result : results)
        if (result.criterion == Criterion::trialAcuity)
            trial = &result;
    fit.band = Band::fits;
    std::bitset<criterionCount> cautions; // a criterion counts once, in whichever eyes
    for (const auto& result : results) {
        if (result.criterion == Criterion::horizontalPrism)
            fit.prismSize = result.measured;
        if (result.criterion == Criterion::frameSize)
            fit.sizeSteps = result.measured;
        if (!decided(result.band))
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

/// Errors of the seeing eyes, cost unless it is known, and the sides.
void measureEyes(const Need& need, const Supply& supply, const KnownSupply* known, Fit& fit)
{
    const double forgiven = known != nullptr ? 0.0 : forgivenMinus(need);
    for (const Eye eye : bothEyes) {
        if (!need.eyes.of(eye).seeing)
            continue;
        auto& eyeResult = fit.eyes.of(eye);
        eyeResult = eyeFit(need.eyes.of(eye), supply, eye, known);
        fit.worseSideEyes += onWorseSide(need, *eyeResult) ? 1 : 0;
        if (known != nullptr)
            continue;
        double cost = costOfError(eyeResult->error, forgiven);
        if (eyeResult->nearError)
            cost += costOfError(*eyeResult->nearError, 0.0);
        fit.cost += cost;
    }
    if (known != nullptr)
        fit.cost = known->cost;
}

void measureReadingLevels(const Need& need, Fit& fit)
{
    if (!need.pairLevel())
        return;
    fit.readingLevelPair = verticalAtReadingLevel(fit.eyes.right->supplied, fit.eyes.left->supplied);
    fit.readingLevelFull = verticalAtReadingLevel(fit.eyes.right->needed, fit.eyes.left->needed);
}

CriterionResult inWords(const Measured& measured)
{
    CriterionResult result;
    result.criterion = measured.criterion;
    result.eye = measured.eye;
    result.measured = measured.measured;
    result.worstOf = measured.worstOf;
    result.limit = measured.limit;
    result.band = measured.band;
    result.missing = measured.missing;
    if (measured.note != nullptr) {
        result.note.text = measured.note;
        if (result.note.text.find("%1") != std::string::npos)
            result.note.arguments.push_back(writeDioptres(Dioptres{measured.limit.value_or(0.0)}));
    }
    return result;
}

/// Calls `act` with a need and a supply in which the pair is centred, where the need takes every pair so.
template <class Act>
bool whenCentred(const Need& need, const Supply& supply, Act act)
{
    if (!need.pdFollowsCentres || !supply.centres)
        return false;
    Need centred = need;
    Supply sure = supply;
    followCentres(centred, sure);
    act(centred, sure);
    return true;
}

/// Whether a search has to measure it: it decides, or the order looks at it.
bool counts(const Profile& profile, Criterion criterion)
{
    return profile.of(criterion).judged || criterion == Criterion::horizontalPrism ||
           criterion == Criterion::frameSize;
}

bool anyFails(const Results& results, std::size_t from)
{
    return std::any_of(results.begin() + from, results.end(),
                       [](const Measured& result) { return result.band == Band::fails; });
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

Fit judge(const Need& need, const Supply& supply, const Profile& profile, const TrialAcuity* trial)
{
    Fit fit;
    if (whenCentred(need, supply, [&](const Need& centred, const Supply& sure) {
            fit = judge(centred, sure, profile, trial);
        }))
        return fit;
    measureEyes(need, supply, nullptr, fit);
    for (const Eye eye : bothEyes)
        if (auto& here = fit.eyes.of(eye))
            here->loss = expectedLoss(here->blur);
    measurePrism(need, supply, fit);
    measureReadingLevels(need, fit);
    Results results;
    const Case c{need, supply, profile, trial, fit, results};
    for (const auto& info : criterionTable())
        info.measure(c);
    settleBand(results, fit);
    fit.criteria.reserve(results.size());
    for (const auto& result : results)
        fit.criteria.push_back(inWords(result));
    return fit;
}

void judgeBriefly(Fit& fit, const Need& need, const Supply& supply, const Profile& profile,
                  const KnownSupply* known)
{
    if (whenCentred(need, supply, [&](const Need& centred, const Supply& sure) {
            judgeBriefly(fit, centred, sure, profile, known);
        }))
        return;
    fit = Fit{};
    measureEyes(need, supply, known, fit);
    Results results;
    const Case c{need, supply, profile, nullptr, fit, results};
    bool pairMeasured = false;
    const auto passes = [&](bool canFail) { // what cannot fail is measured only for what has not failed
        for (const auto& info : criterionTable()) {
            if (!counts(profile, info.criterion) || profile.of(info.criterion).neverFails == canFail)
                continue;
            if (!pairMeasured && info.criterion >= Criterion::horizontalPrism) {
                measurePrism(need, supply, fit);
                measureReadingLevels(need, fit);
                pairMeasured = true;
            }
            const auto before = results.size();
            info.measure(c);
            if (anyFails(results, before))
                return false;
        }
        return true;
    };
    if (!passes(true) || !passes(false)) {
        fit.band = Band::fails;
        return;
    }
    settleBand(results, fit);
}

void nameSources(Fit& fit, const Profile& profile)
{
    for (auto& result : fit.criteria)
        result.source = profile.of(result.criterion).source;
}

} // namespace quarterstep
