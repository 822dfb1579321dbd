// SPDX-License-Identifier: GPL-3.0-or-later
// Referral and recheck rules, cautions. Sources stand beside each rule.
#include "core/fitting/flags.hpp"

#include "core/fitting/criteria/measure.hpp"
#include "core/fitting/eye_facts.hpp"
#include "core/fitting/reasons.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double logMar6over60 = 1.0;

const char* const iapb = "IAPB School Eye Health Guidelines, refractive error management";
const char* const aapos = "AAPOS Vision Screening Committee (Donahue 2013, as quoted)";
const char* const commonPractice = "common practice";

struct FlagRule {
    const char* code;
    const char* text;
    Sign sign;
    Urgency urgency;
    Referral how;
    bool childOnly;
};

const FlagRule signRules[] = {
    {"sudden-loss", QS_SAY("core", "sudden loss of sight: eye clinic the same day"), Sign::suddenLoss,
     Urgency::sameDay, Referral::before, false},
    {"pain", QS_SAY("core", "painful eye: eye clinic the same day"), Sign::pain, Urgency::sameDay,
     Referral::before, false},
    {"red-eye", QS_SAY("core", "red eye: eye clinic the same day"), Sign::redEye, Urgency::sameDay,
     Referral::before, false},
    {"flashes-or-floaters", QS_SAY("core", "new flashes or floaters: eye clinic the same day"),
     Sign::flashesOrFloaters, Urgency::sameDay, Referral::before, false},
    {"double-vision", QS_SAY("core", "double vision: eye clinic the same day"), Sign::doubleVision,
     Urgency::sameDay, Referral::before, false},
    {"white-pupil", QS_SAY("core", "white pupil: eye clinic the same day"), Sign::whitePupil,
     Urgency::sameDay, Referral::before, false},
    {"child-squint", QS_SAY("core", "a child's squint: refer before glasses are given"), Sign::squint,
     Urgency::soon, Referral::before, true},
    {"cycloplegia-wanted",
     QS_SAY("core", "refraction under cycloplegia was asked for: refer before glasses are given"),
     Sign::cycloplegiaWanted, Urgency::soon, Referral::before, false},
    {"distortion", QS_SAY("core", "lines look bent or broken: eye clinic soon"), Sign::distortion,
     Urgency::soon, Referral::with, false},
    {"field-loss", QS_SAY("core", "part of the field of view is missing: eye clinic soon"), Sign::fieldLoss,
     Urgency::soon, Referral::with, false},
    {"halos", QS_SAY("core", "halos around lights: eye clinic soon"), Sign::halos, Urgency::soon,
     Referral::with, false},
};

void refer(Recommendation& answer, Referral how, Urgency urgency, Flag flag)
{
    answer.referral = std::max(answer.referral, how);
    answer.urgency = std::max(answer.urgency, urgency);
    answer.flags.push_back(std::move(flag));
}

void referBySigns(const PersonRecord& person, Recommendation& answer)
{
    for (const auto& rule : signRules) {
        const bool present =
            std::find(person.signs.begin(), person.signs.end(), rule.sign) != person.signs.end();
        if (present && (!rule.childOnly || person.child() || !person.age))
            refer(answer, rule.how, rule.urgency,
                  {rule.code, {rule.text, {}}, rule.childOnly ? iapb : commonPractice});
    }
}

void referChild(const PersonRecord& person, Recommendation& answer)
{
    if (anySeeingEye(person, [](const EyeRecord& eye) {
            const auto best = logMarOf(eye.acuity.best);
            return best && *best > logMar6over9 + roundingSlack;
        }))
        refer(answer, Referral::with, Urgency::routine,
              {"child-below-6-9",
               {QS_SAY("core", "does not reach 6/9 in each eye with the final prescription"), {}},
               iapb});
    if (anySeeingEye(person, [](const EyeRecord& eye) {
            const auto presenting =
                eye.acuity.habitual ? logMarOf(eye.acuity.habitual) : logMarOf(eye.acuity.unaided);
            return presenting && *presenting > logMar6over60 + roundingSlack;
        }))
        refer(answer, Referral::with, Urgency::routine,
              {"child-below-6-60",
               {QS_SAY("core", "presents worse than 6/60 in an eye, even if glasses help"), {}},
               iapb});
    if (anySeeingEye(person, [](const EyeRecord& eye) {
            const auto vector = toPowerVector(eye.final.power);
            return vector.m >= 3.5 - limitTolerance || cylinderSize(vector) >= 1.5 - limitTolerance;
        }))
        refer(answer, Referral::with, Urgency::routine,
              {"child-high-power",
               {QS_SAY("core", "a child with +3.50 D or more, or 1.50 D of cylinder or more"), {}},
               aapos});
}

void referYoungDifference(const PersonRecord& person, Recommendation& answer)
{
    if (!person.age || *person.age >= 8.0 || !person.eyes.right.seeing() || !person.eyes.left.seeing())
        return;
    const double difference = std::abs(meanSphere(person.eyes.right.final.power).value() -
                                       meanSphere(person.eyes.left.final.power).value());
    if (difference >= 1.5 - limitTolerance)
        refer(answer, Referral::with, Urgency::routine,
              {"young-difference",
               {QS_SAY("core", "under 8 years and the eyes differ by 1.50 D or more"), {}},
               aapos});
    else if (difference >= 1.0 - limitTolerance)
        answer.flags.push_back({"young-difference-caution",
                                {QS_SAY("core", "under 8 years and the eyes differ by 1.00 D or more"), {}},
                                aapos});
}

void referByPower(const PersonRecord& person, Recommendation& answer)
{
    if (anySeeingEye(person, [](const EyeRecord& eye) {
            return std::abs(meanSphere(eye.final.power).value()) > 6.0 + limitTolerance;
        }))
        refer(answer, Referral::with, Urgency::routine,
              {"high-power", {QS_SAY("core", "mean sphere beyond 6.00 D"), {}}, commonPractice});
    if (anySeeingEye(person, [](const EyeRecord& eye) {
            return minusCylinderForm(eye.final.power).sphere.value() >= 8.0 - limitTolerance;
        }))
        refer(answer, Referral::with, Urgency::routine,
              {"aphakia",
               {QS_SAY("core", "may be without its lens (aphakia): vertex distance needed"), {}},
               commonPractice});
}

void referAdult(const PersonRecord& person, Recommendation& answer)
{
    const auto best = betterEye(person, [](const EyeAcuities& a) { return a.best; });
    const auto pinhole = betterEye(person, [](const EyeAcuities& a) { return a.pinhole; });
    const bool pinholeGains = best && pinhole && *best - *pinhole >= twoLines;
    if (best && *best > logMar6over12 + roundingSlack && !pinholeGains)
        refer(answer, Referral::with, Urgency::routine,
              {"adult-below-6-12",
               {pinhole ? QS_SAY("core",
                                 "worse than 6/12 with the best prescription and no gain through the pinhole")
                        : QS_SAY("core", "worse than 6/12 with the best prescription; pinhole not taken"),
                {}},
               "WHO indicator of effective refractive error coverage (6/12); common practice"});
}

void addPinholeRecheck(const PersonRecord& person, Recommendation& answer)
{
    if (!anySeeingEye(person, [](const EyeRecord& eye) {
            const auto best = logMarOf(eye.acuity.best);
            const auto pinhole = logMarOf(eye.acuity.pinhole);
            return best && pinhole && *best - *pinhole >= twoLines;
        }))
        return;
    answer.recheck = true;
    answer.flags.push_back(
        {"pinhole-better",
         {QS_SAY("core",
                 "the pinhole sees two lines or more better than the final prescription: refract again"),
          {}},
         commonPractice});
}

void addObjectiveRecheck(const PersonRecord& person, Recommendation& answer)
{
    bool identical = !person.objectiveOnly;
    double worstM = 0.0;
    double worstJ = 0.0;
    int compared = 0;
    for (const Eye eye : bothEyes) {
        const auto& record = person.eyes.of(eye);
        if (!record.seeing() || !record.objective) {
            identical = false;
            continue;
        }
        ++compared;
        const auto apart = toPowerVector(record.final.power) - toPowerVector(*record.objective);
        worstM = std::max(worstM, std::abs(apart.m));
        worstJ = std::max(worstJ, std::hypot(apart.j0, apart.j45));
        const auto vector = toPowerVector(record.final.power);
        identical =
            identical && blurStrength(apart) < limitTolerance && cylinderSize(vector) >= 0.5 - limitTolerance;
    }
    const bool far = worstM > 1.0 + limitTolerance || worstJ > 0.5 + limitTolerance;
    const Sentence apart{
        QS_SAY("core", "objective reading and final prescription are %1 D apart in mean sphere"),
        {twoDecimals(worstM)}};
    const char* const source = "Pesudovs and Weisinger 2004; common practice";
    if (compared > 0 && far) {
        answer.recheck = true;
        answer.flags.push_back({"objective-far", apart, source});
    } else if (compared > 0 && worstM > 0.5 + limitTolerance) {
        answer.flags.push_back({"objective-apart", apart, source});
    }
    if (identical && compared == 2) {
        answer.recheck = true;
        answer.flags.push_back(
            {"final-is-objective",
             {QS_SAY(
                  "core",
                  "the final prescription repeats the objective reading in all six numbers: was it refined?"),
              {}},
             commonPractice});
    }
}

bool noticeableNear(const Recommendation& answer)
{
    return answer.need && answer.need->pdComputed;
}

} // namespace

void addReferral(const PersonRecord& person, Recommendation& answer)
{
    referBySigns(person, answer);
    if (person.child()) {
        referChild(person, answer);
        referYoungDifference(person, answer);
    } else {
        referAdult(person, answer);
    }
    referByPower(person, answer);
    addPinholeRecheck(person, answer);
    addObjectiveRecheck(person, answer);
}

void addCautions(const PersonRecord& person, Recommendation& answer)
{
    auto& flags = answer.flags;
    if (person.child())
        flags.push_back(
            {"child",
             {QS_SAY("core", "under 16: the prescriber's name stays with the pair, and the guardian is told"),
              {}},
             "IAPB School Eye Health Guidelines; common practice"});
    if (!person.age)
        flags.push_back(
            {"age-unknown",
             {QS_SAY("core", "age not recorded: the strictest limits that could apply are used"), {}},
             commonPractice});
    if (person.oneSeeingEye())
        flags.push_back(
            {"one-seeing-eye",
             {QS_SAY("core", "only one seeing eye: impact-resistant lenses and protective wear are advised"),
              {}},
             commonPractice});
    if (person.objectiveOnly && !person.child())
        flags.push_back(
            {"objective-only",
             {QS_SAY("core", "an objective reading only: a subjective refraction should follow"), {}},
             "IAPB School Eye Health Guidelines (children); common practice (adults)"});
    if (person.monthsSinceWritten && *person.monthsSinceWritten > (person.child() ? 6 : 24))
        flags.push_back({"old-prescription",
                         {QS_SAY("core", "the prescription is %1 months old"),
                          {std::to_string(*person.monthsSinceWritten)}},
                         commonPractice});
    if (!person.symptoms.empty())
        flags.push_back(
            {"symptoms", {QS_SAY("core", "symptoms recorded: %1"), {person.symptoms}}, commonPractice});
    if (answer.need && !answer.need->pdKnown && answer.need->pairLevel())
        flags.push_back({"pd-not-taken", {QS_SAY("core", "PD not taken"), {}}, commonPractice});
    else if (noticeableNear(answer))
        flags.push_back({"near-pd-computed",
                         {QS_SAY("core", "near PD computed from the distance PD, not measured"), {}},
                         "PD W / (W + 27)"});
    if (answer.need && answer.purpose != Purpose::distance &&
        anySeeingEye(person, [](const EyeRecord& eye) { return eye.lensImplant; }))
        flags.push_back(
            {"lens-implant",
             {QS_SAY("core", "an eye with a lens implant: additions differ between the eyes"), {}},
             commonPractice});
    if (anySeeingEye(
            person,
            [](const EyeRecord& eye) { return std::abs(meanSphere(eye.final.power).value()) > 4.0; }) &&
        !person.vertexMm)
        flags.push_back({"vertex-not-recorded",
                         {QS_SAY("core", "above 4.00 D the vertex distance matters: record it"), {}},
                         "effectivity formula"});
}

} // namespace quarterstep
