// SPDX-License-Identifier: GPL-3.0-or-later
// Entry slips of the addition and of the PD.
#include "core/auditing/slip_parts.hpp"

#include "core/fitting/need.hpp"
#include "core/optics/boxing.hpp"
#include "core/optics/near_addition.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

using S = SlipKind;

constexpr double hardlyAnAddition = 0.5; ///< D: a smaller one at near is none
constexpr int leastQuarters = 3;         ///< of a dioptre, of additions proposed
constexpr int mostQuarters = 14;
constexpr double leastAddition = 0.25 * leastQuarters; ///< D
constexpr double mostAddition = 0.25 * mostQuarters;
constexpr double additionSpread = 0.5;   ///< D: SD of additions about that of the age (common practice)
constexpr double alikePower = 0.01;      ///< D
constexpr double leastMonocular = 25.0;  ///< mm: a PD of one eye lies between these
constexpr double mostMonocular = 40.0;   ///< mm
constexpr double chosenByMeasured = 0.5; ///< share of pairs chosen by what was measured, not by what was
                                         ///< written of it (common practice)

Truth withAddition(Truth truth, double addition)
{
    truth.addition = {addition, addition};
    return truth;
}

Truth withPd(Truth truth, double pd)
{
    truth.pd = pd;
    return truth;
}

/// What the seeing eyes need at the least; empty where an eye has none.
std::optional<double> leastRecorded(const PersonRecord& record, const Truth& recorded)
{
    std::optional<double> least;
    for (const Eye eye : bothEyes) {
        if (!record.eyes.of(eye).seeing())
            continue;
        if (!recorded.addition.of(eye))
            return std::nullopt;
        least = std::min(least.value_or(mostAddition), *recorded.addition.of(eye));
    }
    return least;
}

/// The addition is not known; what it may be goes by age: working distance less half the amplitude
/// (Hofstetter 1950), with its scatter.
std::vector<std::pair<double, Truth>> likelyAdditions(const PersonRecord& record, const Truth& recorded)
{
    const double usual =
        additionFor(hofstetterAmplitude(record.age.value_or(55.0)).mean, record.working(), Reserve::half);
    std::vector<std::pair<double, Truth>> truths;
    double sum = 0.0;
    for (int quarters = leastQuarters; quarters <= mostQuarters; ++quarters) {
        const double addition = 0.25 * quarters;
        truths.emplace_back(gauss(addition - usual, additionSpread), withAddition(recorded, addition));
        sum += truths.back().first;
    }
    for (auto& [share, truth] : truths)
        share /= sum;
    return truths;
}

/// The whole near power where it is one sphere in both eyes, as an addition is; and the distance power is
/// none.
std::optional<double> nearPowerLikeAddition(const PersonRecord& record)
{
    const auto& right = record.eyes.right.nearPower;
    const auto& left = record.eyes.left.nearPower;
    if (!right || !left || !(*right == *left) || std::abs(right->cylinder.value()) > alikePower)
        return std::nullopt;
    const double power = right->sphere.value();
    return power >= leastAddition && power <= mostAddition ? std::optional(power) : std::nullopt;
}

/// P(pair | the PD was this, and so measured, and written wrongly) against the null.
double pairWithPd(const JudgedHandOver& judged, const SlipScene& scene, const SlipModel& model, double pd)
{
    if (judged.suggested || scene.settings == nullptr)
        return 1.0;
    auto person = *judged.facts.record;
    person.distancePd = pd;
    const auto need = needFor(person, judged.facts.purpose, *scene.settings);
    if (!need || !judge(need.value(), *judged.facts.supply, *judged.profile).acceptable())
        return 1.0;
    const double null = givenWhenMeant(judged, judged.suggested, *judged.fit, model);
    return 1.0 - chosenByMeasured + chosenByMeasured * model.suggestedGiven / null;
}

} // namespace

void addNearHypotheses(const JudgedHandOver& judged, const SlipScene& scene, const SlipModel& model,
                       std::vector<EntryHypothesis>& all)
{
    const auto& record = *judged.facts.record;
    const auto recorded = truthOf(record);
    const auto add = [&](SlipKind kind, double pair, std::vector<std::pair<double, Truth>> truths) {
        EntryHypothesis hypothesis;
        hypothesis.member = {kind, {}, model.priorOf(kind), 1.0, pair};
        hypothesis.truths = std::move(truths);
        all.push_back(std::move(hypothesis));
    };
    const auto least = leastRecorded(record, recorded);
    const auto purpose = judged.facts.purpose;
    const bool forNear = purpose == Purpose::near || purpose == Purpose::bifocal;
    const auto* later = judged.facts.later.get();
    const bool onCard = later != nullptr && (later->addition.right || later->addition.left);
    if ((forNear && least && *least < hardlyAnAddition) || (!least && onCard))
        add(S::additionLeftOut, 1.0, likelyAdditions(record, recorded));
    if (const auto power = nearPowerLikeAddition(record))
        if (std::abs(*power - least.value_or(*power)) > hardlyAnAddition)
            add(S::additionAsNearPower, 1.0, {{1.0, withAddition(recorded, *power)}});
    const bool oneByOne = record.eyes.right.monocularPd && record.eyes.left.monocularPd;
    if (!recorded.pd)
        return;
    if (!oneByOne && *recorded.pd >= leastMonocular && *recorded.pd <= mostMonocular)
        add(S::monocularPd, pairWithPd(judged, scene, model, 2.0 * *recorded.pd),
            {{1.0, withPd(recorded, 2.0 * *recorded.pd)}});
    const double far = *recorded.pd * (record.working() + rotationCentreDistance) / record.working();
    add(S::nearPdAsDistance, oneByOne ? 1.0 : pairWithPd(judged, scene, model, far),
        {{1.0, withPd(recorded, far)}});
}

} // namespace quarterstep
