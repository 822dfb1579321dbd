// SPDX-License-Identifier: GPL-3.0-or-later
// Criteria of one eye: what error the pair leaves, and at what powers.
#include "core/fitting/criteria/measure.hpp"

#include "core/optics/angle.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

template <class Function>
void forEachJudgedEye(const Case& c, Function function)
{
    for (const Eye eye : bothEyes)
        if (const auto& fit = c.fit.eyes.of(eye))
            function(eye, *fit);
}

template <class Function>
void forEachNearEye(const Case& c, Function function)
{
    forEachJudgedEye(c, [&](Eye eye, const EyeFit& fit) {
        if (fit.nearError)
            function(eye, *fit.nearError);
    });
}

} // namespace

void measureBlur(const Case& c)
{
    forEachJudgedEye(c, [&](Eye eye, const EyeFit& fit) { tell(c, Criterion::blur, eye, fit.blur); });
}

void measureTooPlus(const Case& c)
{
    forEachJudgedEye(
        c, [&](Eye eye, const EyeFit& fit) { tell(c, Criterion::tooPlus, eye, std::max(0.0, fit.error.m)); });
}

void measureTooMinus(const Case& c)
{
    forEachJudgedEye(c, [&](Eye eye, const EyeFit& fit) {
        tell(c, Criterion::tooMinus, eye, std::max(0.0, 0.0 - fit.error.m));
    });
}

void measureResidualCylinder(const Case& c)
{
    forEachJudgedEye(c, [&](Eye eye, const EyeFit& fit) {
        tell(c, Criterion::residualCylinder, eye, cylinderSize(fit.error));
    });
}

void measurePowerSize(const Case& c)
{
    const auto& rule = c.rule(Criterion::powerSize);
    forEachJudgedEye(c, [&](Eye eye, const EyeFit& fit) {
        const double power = c.need.nearWork() ? fit.supplied.m : fit.needed.m;
        const bool minusAtNear = c.need.nearWork() && power < 0.0 && rule.minus;
        auto& result = tell(c, Criterion::powerSize, eye, std::abs(power),
                            minusAtNear ? *rule.minus : bandsAt(rule, c.need.age), rule.neverFails);
        const bool high = rule.vertexAbove && std::abs(power) > *rule.vertexAbove + limitTolerance;
        if (high && !c.need.vertexRecorded && (result.band == Band::fits || result.band == Band::caution)) {
            result.band = Band::fails;
            result.limit = rule.vertexAbove;
            result.missing = Missing::vertex;
            result.note = QS_SAY("core", "above %1 D the vertex distance must be recorded");
        }
    });
}

void measureSuppliedCylinder(const Case& c)
{
    forEachJudgedEye(c, [&](Eye eye, const EyeFit& fit) {
        const double supplied = cylinderSize(fit.supplied);
        const double needed = cylinderSize(fit.needed);
        if (supplied < limitTolerance)
            return;
        auto& result = tell(c, Criterion::suppliedCylinder, eye, std::max(0.0, supplied - needed));
        const bool worseThanSphere = cylinderSize(fit.error) >= needed - limitTolerance;
        if (result.band != Band::shown && worseThanSphere) {
            result.band = Band::fails;
            result.note = QS_SAY("core", "a sphere would leave less cylinder than this lens does");
        }
    });
}

void measureAxisTurn(const Case& c)
{
    forEachJudgedEye(c, [&](Eye eye, const EyeFit& fit) {
        if (cylinderSize(fit.supplied) < limitTolerance || cylinderSize(fit.needed) < limitTolerance)
            return;
        const double turn =
            turnBetween(toSpheroCylinder(fit.supplied).axis, toSpheroCylinder(fit.needed).axis);
        const auto& rule = c.rule(Criterion::axisTurn);
        for (const auto& step : rule.byCylinder)
            if (cylinderSize(fit.needed) <= step.cylinder + limitTolerance) {
                tell(c, Criterion::axisTurn, eye, turn, Bands{Limit{step.fits, false}, {}, {}},
                     rule.neverFails);
                return;
            }
        tell(c, Criterion::axisTurn, eye, turn);
    });
}

void measureNearBlur(const Case& c)
{
    forEachNearEye(
        c, [&](Eye eye, PowerVector error) { tell(c, Criterion::nearBlur, eye, blurStrength(error)); });
}

void measureNearTooPlus(const Case& c)
{
    forEachNearEye(
        c, [&](Eye eye, PowerVector error) { tell(c, Criterion::nearTooPlus, eye, std::max(0.0, error.m)); });
}

void measureNearTooMinus(const Case& c)
{
    forEachNearEye(c, [&](Eye eye, PowerVector error) {
        tell(c, Criterion::nearTooMinus, eye, std::max(0.0, 0.0 - error.m));
    });
}

// The audit indicator compares written numbers: both in minus-cylinder form.

void measureSphereError(const Case& c)
{
    forEachJudgedEye(c, [&](Eye eye, const EyeFit& fit) {
        const double error =
            toSpheroCylinder(fit.supplied).sphere.value() - toSpheroCylinder(fit.needed).sphere.value();
        tell(c, Criterion::sphereError, eye, std::abs(error));
    });
}

void measureCylinderError(const Case& c)
{
    forEachJudgedEye(c, [&](Eye eye, const EyeFit& fit) {
        tell(c, Criterion::cylinderError, eye,
             std::abs(cylinderSize(fit.supplied) - cylinderSize(fit.needed)));
    });
}

void measureAxisError(const Case& c)
{
    const auto& rule = c.rule(Criterion::axisError);
    forEachJudgedEye(c, [&](Eye eye, const EyeFit& fit) {
        const double needed = cylinderSize(fit.needed);
        if (needed < limitTolerance || cylinderSize(fit.supplied) < limitTolerance)
            return;
        const double turn =
            turnBetween(toSpheroCylinder(fit.supplied).axis, toSpheroCylinder(fit.needed).axis);
        for (const auto& step : rule.byCylinder)
            if (needed <= step.cylinder + limitTolerance) {
                tell(c, Criterion::axisError, eye, turn, Bands{Limit{step.fits, false}, {}, {}});
                return;
            }
        tell(c, Criterion::axisError, eye, turn);
    });
}

} // namespace quarterstep
