// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/single_change.hpp"

#include "core/fitting/criteria/measure.hpp"
#include "core/fitting/reasons.hpp"

#include <cmath>
#include <functional>

namespace quarterstep
{

namespace
{

constexpr double powerStep = 0.25;  // D, that of trial lenses and stock
constexpr int mostPowerSteps = 16;  // 4 D either way
constexpr int mostCentreSteps = 25; // mm either way

/// Everything a change may touch.
struct Trial {
    Need need;
    Supply supply;
    const Profile* profile = nullptr;
};

/// Tries changes and keeps the first good one, and the first that leads to a trial.
class Changes
{
  public:
    Changes(const Need& need, const Candidate& miss, const Profile& profile)
        : start_{need, miss.supply, &profile}
    {
    }

    [[nodiscard]] const Trial& start() const { return start_; }
    [[nodiscard]] bool done() const { return good_.has_value(); }

    void attempt(ChangeKind kind, const std::function<void(Trial&)>& change, Sentence sentence)
    {
        if (done())
            return;
        Trial trial = start_;
        change(trial);
        const auto fit = judge(trial.need, trial.supply, *trial.profile);
        if (fit.acceptable())
            good_ = SingleChange{kind, std::move(sentence), false};
        else if (fit.onTrial() && !tried_)
            tried_ = SingleChange{kind, std::move(sentence), true};
    }

    [[nodiscard]] std::optional<SingleChange> answer() const { return good_ ? good_ : tried_; }

  private:
    Trial start_;
    std::optional<SingleChange> good_;
    std::optional<SingleChange> tried_;
};

std::string written(double power)
{
    return writeDioptres(Dioptres{power});
}

void tryMeasurements(Changes& changes)
{
    const auto& need = changes.start().need;
    changes.attempt(ChangeKind::typedAcuity, [](Trial&) {},
                    {QS_SAY("core", "would need better acuity with this very pair"), {}});
    if (!need.vertexRecorded)
        changes.attempt(ChangeKind::recordVertex, [](Trial& t) { t.need.vertexRecorded = true; },
                        {QS_SAY("core", "would do once the vertex distance is recorded"), {}});
    const auto& centres = changes.start().supply.centres;
    if (!need.pdKnown && centres)
        changes.attempt(ChangeKind::measurePd,
                        [](Trial& t) {
                            const double middle = t.supply.centres->middle();
                            t.need.pd = {middle, middle};
                            t.need.pdKnown = true;
                        },
                        {QS_SAY("core", "would do if the PD, once measured, is near %1 mm"),
                         {twoDecimals(centres->middle())}});
    Profile allowing = *changes.start().profile;
    allowing.prismByDecentration = true;
    changes.attempt(ChangeKind::prescriber, [&allowing](Trial& t) { t.profile = &allowing; },
                    {QS_SAY("core", "would do if the prescriber allows prism by decentration"), {}});
}

void tryCentration(Changes& changes)
{
    const auto& supply = changes.start().supply;
    if (!supply.centres)
        return;
    const double middle = std::round(supply.centres->middle());
    for (int step = 0; step <= mostCentreSteps; ++step)
        for (const int side : {-1, 1}) {
            const double centres = middle + side * step;
            changes.attempt(ChangeKind::centres,
                            [centres](Trial& t) {
                                t.supply.centres = Range{centres, centres};
                                t.supply.centresAssumed = false;
                            },
                            {QS_SAY("core", "would do with centres %1 mm apart"),
                             {std::to_string(std::lround(centres))}});
        }
    if (supply.heightsDiffer)
        changes.attempt(ChangeKind::heights, [](Trial& t) { t.supply.heightsDiffer = 0.0; },
                        {QS_SAY("core", "would do with both centres at the same height"), {}});
}

void addSphere(Trial& trial, Eye eye, double by)
{
    auto& power = trial.supply.power.of(eye);
    power = withSphereAdded(power, Dioptres{by});
}

Sentence sphereSentence(const Supply& supply, double by)
{
    const auto& right = supply.power.right;
    if (supply.power.right == supply.power.left && right.cylinder == Dioptres{})
        return {QS_SAY("core", "would do with %1 in both lenses instead of %2"),
                {written(right.sphere.value() + by), writeDioptres(right.sphere)}};
    return {QS_SAY("core", "would do with %1 D in both lenses"), {written(by)}};
}

void tryPowers(Changes& changes)
{
    const auto& supply = changes.start().supply;
    for (int step = 1; step <= mostPowerSteps; ++step)
        for (const int side : {-1, 1}) {
            const double by = side * step * powerStep;
            changes.attempt(
                ChangeKind::sphere,
                [by](Trial& t) {
                    addSphere(t, Eye::right, by);
                    addSphere(t, Eye::left, by);
                },
                sphereSentence(supply, by));
        }
    for (int step = 1; step <= mostPowerSteps && !supply.equalPair; ++step)
        for (const int side : {-1, 1})
            for (const Eye eye : bothEyes) {
                const double by = side * step * powerStep;
                const Dioptres sphere{supply.power.of(eye).sphere.value() + by};
                changes.attempt(ChangeKind::oneSphere, [by, eye](Trial& t) { addSphere(t, eye, by); },
                                {eye == Eye::right
                                     ? QS_SAY("core", "would do with sphere %1 in the right lens")
                                     : QS_SAY("core", "would do with sphere %1 in the left lens"),
                                 {writeDioptres(sphere)}});
            }
    for (int step = 1; step <= mostPowerSteps && supply.bifocalAddition; ++step)
        for (const int side : {-1, 1}) {
            const Dioptres addition{supply.bifocalAddition->value() + side * step * powerStep};
            changes.attempt(ChangeKind::nearAddition,
                            [addition](Trial& t) { t.supply.bifocalAddition = addition; },
                            {QS_SAY("core", "would do with addition %1"), {writeDioptres(addition)}});
        }
}

/// The quarter step nearest to the mean sphere needed; of two equally near the one with less plus.
SpheroCylinder nearestSphere(const EyeNeed& need)
{
    const double m = toPowerVector(need.power).m;
    return sphereOf(std::ceil(m / powerStep - 0.5 - limitTolerance) * powerStep);
}

void tryOtherLenses(Changes& changes)
{
    const auto& need = changes.start().need;
    if (!need.pairLevel())
        return;
    const auto right = nearestSphere(need.eyes.right);
    const auto left = nearestSphere(need.eyes.left);
    changes.attempt(ChangeKind::separateLenses,
                    [&](Trial& t) {
                        t.supply.power = {right, left};
                        t.supply.equalPair = right == left;
                    },
                    {QS_SAY("core", "would do with a lens of its own for each eye: right %1, left %2"),
                     {writeDioptres(right.sphere), writeDioptres(left.sphere)}});
}

void tryPrescription(Changes& changes)
{
    changes.attempt(ChangeKind::prescription,
                    [](Trial& t) {
                        for (const Eye eye : bothEyes)
                            if (t.need.eyes.of(eye).seeing)
                                t.supply.power.of(eye) = t.need.eyes.of(eye).power;
                        t.supply.equalPair =
                            t.need.pairLevel() && t.supply.power.right == t.supply.power.left;
                    },
                    {QS_SAY("core", "would do with lenses made to the prescription, cylinder included"), {}});
}

} // namespace

std::optional<SingleChange> singleChangeFor(const Need& need, const Candidate& miss, const Profile& profile)
{
    Changes changes(need, miss, profile);
    tryMeasurements(changes);
    tryCentration(changes);
    tryPowers(changes);
    tryOtherLenses(changes);
    tryPrescription(changes);
    return changes.answer();
}

} // namespace quarterstep
