// SPDX-License-Identifier: GPL-3.0-or-later
// What must be known first, and who needs nothing. Sources: Congdon 2008 (cut-offs of distance error);
// Morjaria et al., JAMA Ophthalmol 2017;135:527-533 (two lines of gain); IAPB School Eye Health Guidelines
// (children).
#include "core/fitting/flags.hpp"

#include "core/fitting/criteria/measure.hpp"
#include "core/fitting/eye_facts.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

std::vector<Lack> missingFor(const PersonRecord& person, Purpose purpose)
{
    std::vector<Lack> missing;
    if (person.child() && person.objectiveOnly)
        missing.push_back(
            {"objective_only_child",
             {QS_SAY(
                  "core",
                  "a subjective refraction: a child is never given glasses from an objective reading alone"),
              {}}});
    if (person.child() && person.prescriber.empty())
        missing.push_back({"prescriber_missing", {QS_SAY("core", "the prescriber's name, for a child"), {}}});
    if (purpose == Purpose::distance)
        return missing;
    const bool confirmed = person.nearBest.has_value() || anySeeingEye(person, [](const EyeRecord& eye) {
                               return eye.nearPower.has_value() || eye.lensImplant;
                           });
    if (person.age && *person.age < 35.0 && !confirmed)
        missing.push_back({"addition_unconfirmed",
                           {QS_SAY("core", "an addition under 35 years must be confirmed: near acuity with "
                                           "it, or a near power by trial"),
                            {}}});
    return missing;
}

namespace
{

bool smallDistanceError(const PersonRecord& person)
{
    return !anySeeingEye(person, [](const EyeRecord& eye) {
        const auto vector = toPowerVector(eye.final.power);
        return vector.m <= -0.75 + limitTolerance || vector.m >= 1.0 - limitTolerance ||
               cylinderSize(vector) >= 0.75 - limitTolerance;
    });
}

/// The gain rule speaks of acuity at one moment; a hyperopic or unequal child may see well and still need
/// help.
bool gainRuleMayApply(const PersonRecord& person)
{
    if (!person.child())
        return true;
    const double right = meanSphere(person.eyes.right.final.power).value();
    const double left = meanSphere(person.eyes.left.final.power).value();
    return std::max(right, left) < 1.0 && std::abs(right - left) < 1.0;
}

Sentence whyNoDistance(const PersonRecord& person)
{
    const auto unaided = betterEye(person, [](const EyeAcuities& a) { return a.unaided; });
    const auto best = betterEye(person, [](const EyeAcuities& a) { return a.best; });
    if (smallDistanceError(person) && unaided && *unaided <= logMar6over9 + roundingSlack)
        return {QS_SAY("core", "small error and 6/9 or better without glasses"), {}};
    if (unaided && best && *unaided - *best < twoLines && gainRuleMayApply(person))
        return {QS_SAY("core", "glasses gain the better eye less than two lines"), {}};
    return {};
}

Sentence whyNoNear(const PersonRecord& person, const Recommendation& answer)
{
    if (answer.need) {
        bool small = true;
        for (const Eye eye : bothEyes)
            if (answer.need->eyes.of(eye).seeing) {
                const auto vector = toPowerVector(answer.need->eyes.of(eye).power);
                small = small && std::abs(vector.m) <= 0.5 + limitTolerance &&
                        cylinderSize(vector) < 0.75 - limitTolerance;
            }
        if (small)
            return {QS_SAY("core", "reads without spectacles"), {}};
    }
    if (person.nearUnaided && person.nearUnaided->points <= 6.0 + limitTolerance)
        return {QS_SAY("core", "reads N6 without spectacles"), {}};
    return {};
}

bool ownPairKept(const PersonRecord& person, const Recommendation& answer)
{
    if (!answer.ownPair || !answer.ownPair->acceptable() || answer.purpose != Purpose::distance)
        return false;
    return !anySeeingEye(person, [](const EyeRecord& eye) {
        const auto habitual = logMarOf(eye.acuity.habitual);
        const auto best = logMarOf(eye.acuity.best);
        return !habitual || !best || *habitual - *best > oneLine;
    });
}

} // namespace

Sentence whyNothingNeeded(const PersonRecord& person, const Recommendation& answer)
{
    if (!person.eyes.right.seeing() && !person.eyes.left.seeing())
        return {};
    if (!person.symptoms.empty())
        return {};
    if (ownPairKept(person, answer))
        return {QS_SAY("core", "the own pair still fits: a spare only"), {}};
    if (answer.purpose == Purpose::distance)
        return whyNoDistance(person);
    if (answer.purpose == Purpose::near)
        return whyNoNear(person, answer);
    return {};
}

} // namespace quarterstep
