// SPDX-License-Identifier: GPL-3.0-or-later
// Cautions from comparing the record with itself and with published figures. Each names its source; none
// keeps a pair back.
#include "core/fitting/flags.hpp"

#include "core/fitting/criteria/measure.hpp"
#include "core/fitting/eye_facts.hpp"
#include "core/fitting/reasons.hpp"
#include "core/optics/angle.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double olderFrom = 65.0;        // years
constexpr double olderChange = 0.75;      // D
constexpr double anyoneChange = 1.00;     // D
constexpr double axisMayTurn = 10.0;      // degrees, common practice
constexpr double axisCounts = 0.75;       // D of cylinder from which an axis is looked at
constexpr double hyperopeOfZhao = 2.00;   // D
constexpr double youngUntil = 8.0;        // years
constexpr double youngMyopia = 3.00;      // D
constexpr double dobsonUntil = 14.0;      // years: the study had children of 4 to 13
constexpr double pointsOfNearSight = 8.0; // N8

const char* const elliott = "Elliott DB, Optom Vis Sci 2014;91:593-601 (second-hand)";

/// Own pair read at distance: a reader on the nose is not a change of the distance power.
bool wornForNear(const PersonRecord& person, const EyeRecord& eye, double change)
{
    const double addition = eye.addition ? eye.addition->value() : 0.0;
    return !person.wornAddition && addition > 0.0 && std::abs(change + addition) <= 0.5 + limitTolerance;
}

bool oblique(double axis)
{
    const double folded = std::fmod(axis, 90.0);
    return folded >= 20.0 && folded <= 70.0;
}

bool obliqueAxisTurned(const EyeRecord& eye)
{
    const auto found = minusCylinderForm(eye.final.power);
    const auto worn = minusCylinderForm(*eye.worn);
    if (-found.cylinder.value() < axisCounts - limitTolerance ||
        -worn.cylinder.value() < axisCounts - limitTolerance)
        return false;
    return (oblique(found.axis.value()) || oblique(worn.axis.value())) &&
           turnBetween(found.axis, worn.axis) > axisMayTurn + limitTolerance;
}

void addChangeFromOwnPair(const PersonRecord& person, Recommendation& answer)
{
    if (answer.purpose != Purpose::distance)
        return;
    double change = 0.0;
    bool turned = false;
    for (const Eye eye : bothEyes) {
        const auto& record = person.eyes.of(eye);
        if (!record.seeing() || !record.worn)
            continue;
        const double here = meanSphere(record.final.power).value() - meanSphere(*record.worn).value();
        if (wornForNear(person, record, here))
            continue;
        change = std::max(change, std::abs(here));
        turned = turned || obliqueAxisTurned(record);
    }
    const bool older = person.age && *person.age >= olderFrom;
    if (older && change > olderChange + limitTolerance)
        answer.flags.push_back({"own-pair-changed",
                                {QS_SAY("core", "from 65 years a change of %1 D in one step is much: falls; "
                                                "ask the prescriber"),
                                 {twoDecimals(change)}},
                                elliott});
    else if (!older && change > anyoneChange + limitTolerance)
        answer.flags.push_back({"own-pair-changed",
                                {QS_SAY("core", "%1 D away from the own pair: where that came within months, "
                                                "the eye clinic looks for the cause"),
                                 {twoDecimals(change)}},
                                "common practice"});
    if (older && turned)
        answer.flags.push_back(
            {"own-axis-turned",
             {QS_SAY("core", "from 65 years an oblique axis turned by more than 10 degrees is hard to get "
                             "used to; ask the prescriber"),
              {}},
             elliott});
}

void addAdditionCaution(const PersonRecord& person, const MatchOptions& options, Recommendation& answer)
{
    if (answer.purpose == Purpose::distance || !person.age || !answer.need)
        return;
    static const std::vector<AgeTable> none;
    const auto suggestions =
        suggestAdditions(*person.age, person.working(), options.ageTables ? *options.ageTables : none);
    for (const Eye eye : bothEyes) {
        const auto& record = person.eyes.of(eye);
        if (!record.seeing() || record.lensImplant || !record.addition)
            continue;
        const double addition = record.addition->value();
        if (judgeAddition(addition, suggestions) != AdditionJudgement::checkAgain)
            continue;
        answer.flags.push_back(
            {"addition-unusual",
             {QS_SAY("core", "addition %1 is more than 0.75 D away from every table for "
                             "this age: was it measured at %2 mm?"),
              {writeDioptres(*record.addition), std::to_string(std::lround(person.working()))}},
             "Arq Bras Oftalmol 2013;76:218-220; tables of additions by age"});
        return;
    }
}

void addNearCautions(const PersonRecord& person, Recommendation& answer)
{
    if (answer.purpose == Purpose::distance)
        return;
    if (person.nearBest && person.nearBest->points > pointsOfNearSight + limitTolerance)
        answer.flags.push_back(
            {"near-below-n8",
             {QS_SAY("core", "does not read N8 with the near correction: see where the rest is lost"), {}},
             "Chan et al., Asia-Pac J Ophthalmol 2018;7:370 (near impairment)"});
    if (answer.purpose == Purpose::intermediate && !person.intermediateMm)
        answer.flags.push_back(
            {"half-addition",
             {QS_SAY("core", "half the addition is used: no distance was stated for this work"), {}},
             "common practice"});
    if (answer.purpose != Purpose::intermediate && answer.ownPair && answer.ownPair->acceptable())
        answer.flags.push_back({"own-pair-fits",
                                {QS_SAY("core", "the own pair is within the limits for this purpose: perhaps "
                                                "a spare only"),
                                 {}},
                                "common practice"});
}

void addCycloplegiaCaution(const PersonRecord& person, Recommendation& answer)
{
    if (!person.child() || person.cycloplegia.value_or(false))
        return;
    const char* const zhao = "Zhao et al., Optom Vis Sci 2004;81:49-55";
    const bool hyperope = anySeeingEye(person, [](const EyeRecord& eye) {
        return meanSphere(eye.final.power).value() >= hyperopeOfZhao - limitTolerance;
    });
    if (hyperope)
        answer.flags.push_back({"no-cycloplegia",
                                {QS_SAY("core", "a hyperopic child without cycloplegia: the reading may hide "
                                                "about 3 D more; the prescriber decides"),
                                 {}},
                                zhao});
    else if (person.cycloplegia)
        answer.flags.push_back({"no-cycloplegia",
                                {QS_SAY("core", "a child without cycloplegia: such readings lie about 0.4 D "
                                                "on the minus side in myopes, more in others"),
                                 {}},
                                zhao});
}

void addAmblyopiaRisk(const PersonRecord& person, Recommendation& answer)
{
    if (!person.age || *person.age >= dobsonUntil)
        return;
    const auto& right = person.eyes.right;
    const auto& left = person.eyes.left;
    if (*person.age < youngUntil && anySeeingEye(person, [](const EyeRecord& eye) {
            return meanSphere(eye.final.power).value() < -youngMyopia - limitTolerance;
        }))
        answer.flags.push_back(
            {"young-myopia",
             {QS_SAY("core", "under 8 years and myopia beyond 3.00 D: at risk of amblyopia"), {}},
             "AAPOS Vision Screening Committee (Donahue 2013, as quoted; copies differ)"});
    if (!right.seeing() || !left.seeing())
        return;
    const double rightM = meanSphere(right.final.power).value();
    const double leftM = meanSphere(left.final.power).value();
    const double cylinders =
        std::abs(std::abs(right.final.power.cylinder.value()) - std::abs(left.final.power.cylinder.value()));
    const char* const dobson = "Dobson et al., Invest Ophthalmol Vis Sci 2008;49:4427";
    if (std::max(rightM, leftM) > limitTolerance && std::abs(rightM - leftM) >= 1.0 - limitTolerance)
        answer.flags.push_back(
            {"hyperopic-difference",
             {QS_SAY("core",
                     "a child's eyes differ by 1.00 D or more on the plus side: at risk of amblyopia"),
              {}},
             dobson});
    if (cylinders >= 2.0 - limitTolerance)
        answer.flags.push_back(
            {"cylinder-difference",
             {QS_SAY("core", "a child's cylinders differ by 2.00 D or more: at risk of amblyopia"), {}},
             dobson});
}

} // namespace

void addRecordCautions(const PersonRecord& person, const MatchOptions& options, Recommendation& answer)
{
    addChangeFromOwnPair(person, answer);
    addAdditionCaution(person, options, answer);
    addNearCautions(person, answer);
    addCycloplegiaCaution(person, answer);
    addAmblyopiaRisk(person, answer);
}

} // namespace quarterstep
