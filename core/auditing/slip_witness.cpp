// SPDX-License-Identifier: GPL-3.0-or-later
// What was measured beside a record, and how well it goes with a truth: densities up to constants that fall
// out of every ratio.
#include "core/auditing/slip_parts.hpp"

#include "core/fitting/need.hpp"
#include "core/optics/boxing.hpp"
#include "core/optics/power_vector.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double nothingAtAll = 1e-290;

/// A card read again is the card, but for writing in quarters; read wrongly it may say anything.
constexpr double cardStepM = 0.05;
constexpr double cardStepJ = 0.03;
constexpr double cardAnyM = 1.5; // D, (common practice)
constexpr double cardAnyJ = 0.5;
constexpr double cardStepMm = 0.3;
constexpr double cardAnyMm = 6.0;

/// PD of adults: mean 63.36, SD 3.83 mm (Dodgson NA, Proc SPIE 2004;5291:36-46).
constexpr double adultPd = 63.36;
constexpr double adultPdSpread = 3.83;
/// A PD farther from the mean than this many SDs speaks for itself: 3,976 adults lay within 52 to 78 mm
/// there.
constexpr double nobodysPd = 4.0;

double logMixed(double most, double few, double farShare)
{
    return std::log((1.0 - farShare) * most + farShare * few + nothingAtAll);
}

double logCard(const PowerVector& off, double wrong)
{
    const auto all = [&](double m, double j) {
        return gauss(off.m, m) * gauss(off.j0, j) * gauss(off.j45, j);
    };
    return logMixed(all(cardStepM, cardStepJ), all(cardAnyM, cardAnyJ), wrong);
}

const std::optional<SpheroCylinder>* cardOf(const JudgedHandOver& judged, Eye eye)
{
    const auto& later = judged.facts.later;
    return later && later->final.of(eye) ? &later->final.of(eye) : nullptr;
}

/// Adds one number heard beside the record.
void hear(WitnessFit& fit, double density, double squared)
{
    fit.logDensity += density;
    fit.logBeside += density;
    fit.worst = std::max(fit.worst, squared);
}

void hearNumber(WitnessFit& fit, double off, double spread, double farShare)
{
    hear(fit, logMixed(gauss(off, spread), gauss(off, 3.0 * spread), farShare),
         (off / spread) * (off / spread));
}

std::optional<double> meanAddition(const PersonRecord& record, const Truth& truth)
{
    double sum = 0.0;
    int eyes = 0;
    for (const Eye eye : bothEyes)
        if (record.eyes.of(eye).seeing() && truth.addition.of(eye)) {
            sum += *truth.addition.of(eye);
            ++eyes;
        }
    return eyes > 0 ? std::optional(sum / eyes) : std::nullopt;
}

void hearAddition(const JudgedHandOver& judged, const Truth& truth, const SlipModel& model, WitnessFit& fit)
{
    const auto& record = *judged.facts.record;
    const auto addition = meanAddition(record, truth);
    if (addition && record.wornAddition) {
        hearNumber(fit, record.wornAddition->value() - *addition, model.wornAddition, model.farShare);
        fit.addition = true;
    }
    if (!judged.facts.later)
        return;
    for (const Eye eye : bothEyes)
        if (const auto& read = judged.facts.later->addition.of(eye)) {
            const double off = read->value() - truth.addition.of(eye).value_or(0.0);
            hear(fit, logMixed(gauss(off, cardStepM), gauss(off, cardAnyM), model.cardWrong),
                 (off / cardStepM) * (off / cardStepM));
            fit.addition = true;
        }
}

void hearPd(const JudgedHandOver& judged, const Truth& truth, const SlipModel& model, WitnessFit& fit)
{
    const auto& record = *judged.facts.record;
    if (!truth.pd)
        return;
    const bool child = record.child();
    const double mean = child ? meanChildPd(*record.age) : adultPd;
    const double spread = child ? childPdSpread / 2.0 : adultPdSpread;
    const double squared = (*truth.pd - mean) / spread * ((*truth.pd - mean) / spread);
    const bool nobodys = squared > nobodysPd * nobodysPd;
    hear(fit, std::log(gauss(*truth.pd - mean, spread) + nothingAtAll), nobodys ? squared : 0.0);
    fit.pd = fit.pd || nobodys;
    if (record.nearPd) {
        hearNumber(fit, *record.nearPd - centrationAt(*truth.pd, record.working()), model.pd, model.farShare);
        fit.pd = true;
    }
    const auto& right = record.eyes.right.monocularPd;
    const auto& left = record.eyes.left.monocularPd;
    if (record.distancePd && right && left) {
        hearNumber(fit, *right + *left - *truth.pd, model.pd, model.farShare);
        fit.pd = true;
    }
    if (judged.facts.later && judged.facts.later->distancePd) {
        const double off = *judged.facts.later->distancePd - *truth.pd;
        hear(fit, logMixed(gauss(off, cardStepMm), gauss(off, cardAnyMm), model.cardWrong),
             (off / cardStepMm) * (off / cardStepMm));
        fit.pd = true;
    }
}

/// Angle of print as log10; with the distance read at, or that of the person's work.
double printAngle(const NearAcuity& acuity, const PersonRecord& record)
{
    return std::log10(acuity.points / acuity.distanceMm.value_or(record.working()));
}

/// Loss of the better eye at near; too weak a pair is made up for as far as the eye can.
double nearLoss(const JudgedHandOver& judged, const Truth& truth, const PerEye<SpheroCylinder>& onFace)
{
    double least = 9.0;
    for (const Eye eye : bothEyes) {
        if (!judged.facts.record->eyes.of(eye).seeing())
            continue;
        auto wanted = toPowerVector(truth.finals.of(eye));
        wanted.m += truth.addition.of(eye).value_or(0.0);
        auto error = toPowerVector(onFace.of(eye)) - wanted;
        if (error.m < 0.0)
            error.m = std::min(0.0, error.m + judged.need->eyes.of(eye).accommodation);
        least = std::min(least, expectedLoss(blurStrength(error)));
    }
    return least;
}

} // namespace

double gauss(double difference, double spread)
{
    return std::exp(-0.5 * (difference / spread) * (difference / spread)) / spread;
}

double logScatter(const PowerVector& off, double m, double j, double farShare)
{
    const auto all = [&](double times) {
        return gauss(off.m, m * times) * gauss(off.j0, j * times) * gauss(off.j45, j * times);
    };
    return logMixed(all(1.0), all(3.0), farShare);
}

double squaredDistance(const PowerVector& off, double m, double j)
{
    return (off.m / m) * (off.m / m) + (off.j0 / j) * (off.j0 / j) + (off.j45 / j) * (off.j45 / j);
}

double logDensityOfEye(const JudgedHandOver& judged, Eye eye, const PowerVector& truth,
                       const SlipModel& model)
{
    const auto& record = judged.facts.record->eyes.of(eye);
    if (!record.seeing())
        return 0.0;
    double density = 0.0;
    if (record.objective)
        density += logScatter(toPowerVector(*record.objective) - truth, model.objectiveM, model.objectiveJ,
                              model.farShare);
    if (const auto* card = cardOf(judged, eye))
        density += logCard(toPowerVector(**card) - truth, model.cardWrong);
    return density;
}

double logDensityAround(const JudgedHandOver& judged, Eye eye, const PowerVector& centre, double spreadM,
                        double spreadJ, const SlipModel& model)
{
    const auto& record = judged.facts.record->eyes.of(eye);
    if (!record.seeing())
        return 0.0;
    if (const auto* card = cardOf(judged, eye)) { // the card is the truth, and so it is near the centre
        const auto read = toPowerVector(**card);
        const double around = logScatter(read - centre, spreadM, spreadJ, 0.0);
        return record.objective ? around + logScatter(toPowerVector(*record.objective) - read,
                                                      model.objectiveM, model.objectiveJ, model.farShare)
                                : around;
    }
    return record.objective ? logScatter(toPowerVector(*record.objective) - centre, spreadM, spreadJ, 0.0)
                            : 0.0;
}

WitnessFit acuitiesOf(const JudgedHandOver& judged, const Truth& truth, const PerEye<SpheroCylinder>& onFace,
                      const SlipModel& model)
{
    WitnessFit fit;
    const auto& facts = judged.facts;
    if (!facts.acuity || !facts.supply)
        return fit;
    for (const Eye eye : bothEyes) {
        const auto& record = facts.record->eyes.of(eye);
        const auto& typed = facts.acuity->distance.of(eye);
        const auto& best = record.acuity.best;
        if (facts.purpose != Purpose::distance || !record.seeing() || !typed || !typed->logMar || !best ||
            !best->logMar)
            continue;
        const auto error = toPowerVector(onFace.of(eye)) - toPowerVector(truth.finals.of(eye));
        hearNumber(fit, *typed->logMar - *best->logMar - expectedLoss(blurStrength(error)), model.acuity,
                   model.farShare);
        fit.powers = true;
    }
    const auto& near = facts.acuity->near;
    if (facts.purpose == Purpose::near && near && facts.record->nearBest && near->points > 0.0 &&
        facts.record->nearBest->points > 0.0 && judged.need) {
        hearNumber(fit,
                   printAngle(*near, *facts.record) - printAngle(*facts.record->nearBest, *facts.record) -
                       nearLoss(judged, truth, onFace),
                   model.nearAcuity, model.farShare);
        fit.addition = true;
    }
    return fit;
}

WitnessFit witnessesOf(const JudgedHandOver& judged, const Truth& truth, const PerEye<SpheroCylinder>& onFace,
                       const SlipModel& model)
{
    auto fit = acuitiesOf(judged, truth, onFace, model);
    for (const Eye eye : bothEyes) {
        const auto& record = judged.facts.record->eyes.of(eye);
        if (!record.seeing())
            continue;
        const auto true1 = toPowerVector(truth.finals.of(eye));
        fit.logDensity += logDensityOfEye(judged, eye, true1, model);
        if (record.objective) {
            const auto off = toPowerVector(*record.objective) - true1;
            fit.worst = std::max(fit.worst, squaredDistance(off, model.objectiveM, model.objectiveJ));
            fit.powers = true;
        }
        if (const auto* card = cardOf(judged, eye)) {
            const auto off = toPowerVector(**card) - true1;
            fit.worst = std::max(fit.worst, squaredDistance(off, cardStepM, cardStepJ));
            fit.powers = true;
        }
        if (record.worn) {
            const auto off = toPowerVector(*record.worn) - true1;
            hear(fit, logScatter(off, model.wornM, model.wornJ, model.farShare),
                 squaredDistance(off, model.wornM, model.wornJ));
            fit.powers = true;
        }
    }
    hearAddition(judged, truth, model, fit);
    hearPd(judged, truth, model, fit);
    return fit;
}

} // namespace quarterstep
