// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/need.hpp"

#include "core/fitting/fit_chance.hpp"
#include "core/optics/boxing.hpp"
#include "core/optics/effectivity.hpp"
#include "core/optics/near_addition.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

bool hasNearNeed(const PersonRecord& person)
{
    for (const Eye eye : bothEyes) {
        const auto& record = person.eyes.of(eye);
        if (record.seeing() && (record.addition || record.nearPower))
            return true;
    }
    return false;
}

/// Whether a distance power would be felt at all (the bounds under which nothing is needed; Congdon 2008).
bool hasDistanceNeed(const PersonRecord& person)
{
    for (const Eye eye : bothEyes) {
        const auto& record = person.eyes.of(eye);
        if (!record.seeing())
            continue;
        const auto vector = toPowerVector(record.final.power);
        if (vector.m <= -0.75 || vector.m >= 1.0 || cylinderSize(vector) >= 0.75 - 1e-9)
            return true;
    }
    return false;
}

double intermediateAddition(const PersonRecord& person, double addition)
{
    if (!person.intermediateMm)
        return addition / 2.0; // half the addition, where no distance was stated
    return std::max(0.0, addition - (1000.0 / person.working() - 1000.0 / *person.intermediateMm));
}

/// Half of Hofstetter's mean amplitude, the other half kept in reserve; none with a lens implant.
double usableAccommodation(const PersonRecord& person, const EyeRecord& eye)
{
    if (!person.age || eye.lensImplant)
        return 0.0;
    return hofstetterAmplitude(*person.age).mean / 2.0;
}

SpheroCylinder atStockVertex(const SpheroCylinder& power, const PersonRecord& person,
                             const Settings& settings)
{
    if (!person.vertexMm)
        return power;
    return atVertexDistance(power, Millimetres{*person.vertexMm}, Millimetres{settings.stockVertex})
        .value_or(power);
}

Complaint additionMissing(Purpose purpose)
{
    return {"addition-missing",
            {purpose == Purpose::near
                 ? QS_SAY("core", "near glasses need an addition, or a near power found by trial")
                 : QS_SAY("core", "this purpose needs an addition, or a near power found by trial"),
             {}},
            0};
}

std::optional<Complaint> setPowers(const PersonRecord& person, const Settings& settings, Need& need)
{
    for (const Eye eye : bothEyes) {
        const auto& record = person.eyes.of(eye);
        auto& wanted = need.eyes.of(eye);
        wanted.seeing = record.seeing();
        if (!wanted.seeing)
            continue;
        wanted.prism = record.final.prism.value_or(EyePrism{});
        const auto scatter = scatterOf(record, person.objectiveOnly);
        wanted.scatter = scatter.covariance;
        wanted.scatterSource = scatter.source;
        wanted.accommodation = usableAccommodation(person, record);
        SpheroCylinder power = record.final.power;
        const auto addition = additionOf(record);
        if (need.purpose != Purpose::distance && !addition)
            return additionMissing(need.purpose);
        if (need.purpose != Purpose::distance)
            wanted.addition =
                need.purpose == Purpose::intermediate ? intermediateAddition(person, *addition) : *addition;
        if (need.purpose == Purpose::near)
            power = record.nearPower ? *record.nearPower : withSphereAdded(power, Dioptres{*addition});
        else if (need.purpose == Purpose::intermediate)
            power = withSphereAdded(power, Dioptres{wanted.addition});
        else if (need.purpose == Purpose::bifocal)
            wanted.nearPower = withSphereAdded(atStockVertex(power, person, settings), Dioptres{*addition});
        wanted.power = atStockVertex(power, person, settings);
    }
    return {};
}

/// Distance at which the purpose looks, mm from the spectacle plane; empty = far.
std::optional<double> lookingDistance(const PersonRecord& person, Purpose purpose)
{
    if (purpose == Purpose::near)
        return person.working();
    if (purpose == Purpose::intermediate)
        return person.intermediateMm.value_or(2.0 * person.working());
    return {};
}

Range plausiblePd(const PersonRecord& person, Purpose purpose, const Settings& settings)
{
    if (person.child()) {
        const double mean = meanChildPd(*person.age);
        Range range{mean - childPdSpread, mean + childPdSpread};
        if (const auto distance = lookingDistance(person, purpose))
            range = {centrationAt(range.least, *distance), centrationAt(range.most, *distance)};
        return range;
    }
    return lookingDistance(person, purpose) ? settings.adultNearPd : settings.adultDistancePd;
}

void setPd(const PersonRecord& person, const Settings& settings, Need& need)
{
    std::optional<double> distancePd = person.distancePd;
    const auto& right = person.eyes.right.monocularPd;
    const auto& left = person.eyes.left.monocularPd;
    if (right && left) {
        distancePd = *right + *left;
        need.share = {*right / *distancePd, *left / *distancePd};
    }
    std::optional<double> pd = distancePd;
    if (const auto looking = lookingDistance(person, need.purpose)) {
        pd.reset();
        if (need.purpose == Purpose::near && person.nearPd) {
            pd = person.nearPd;
        } else if (distancePd) {
            pd = centrationAt(*distancePd, *looking);
            need.pdComputed = true;
        }
    }
    need.pdKnown = pd.has_value();
    need.pd = pd ? Range{*pd, *pd} : plausiblePd(person, need.purpose, settings);
}

void setMeanSphereLoss(const PersonRecord& person, Need& need)
{
    for (const Eye eye : bothEyes) {
        const auto& acuity = person.eyes.of(eye).acuity;
        if (!need.eyes.of(eye).seeing || !acuity.meanSphere || !acuity.best || !acuity.meanSphere->logMar ||
            !acuity.best->logMar)
            continue;
        const double loss = *acuity.meanSphere->logMar - *acuity.best->logMar;
        need.meanSphereLoss = std::max(need.meanSphereLoss.value_or(loss), loss);
    }
}

} // namespace

std::optional<double> additionOf(const EyeRecord& eye)
{
    if (eye.nearPower)
        return meanSphere(*eye.nearPower).value() - meanSphere(eye.final.power).value();
    if (eye.addition)
        return eye.addition->value();
    return {};
}

double meanChildPd(double age, bool boy)
{
    return boy ? 43.36 + 1.663 * age - 0.034 * age * age : 41.76 + 1.891 * age - 0.052 * age * age;
}

double meanChildPd(double age)
{
    return (meanChildPd(age, true) + meanChildPd(age, false)) / 2.0;
}

std::vector<Purpose> purposesOf(const PersonRecord& person)
{
    if (person.purpose == Purpose::both)
        return {Purpose::distance, Purpose::near};
    if (person.purpose != Purpose::unstated)
        return {person.purpose};
    const bool near = hasNearNeed(person);
    if (near && hasDistanceNeed(person))
        return {Purpose::distance, Purpose::near};
    return {near ? Purpose::near : Purpose::distance};
}

Parsed<Need> needFor(const PersonRecord& person, Purpose purpose, const Settings& settings)
{
    Need need;
    need.purpose = purpose;
    need.age = person.age;
    need.childRules = person.child();
    need.cycloplegic = person.cycloplegia.value_or(false);
    need.vertexRecorded = person.vertexMm.has_value();
    need.frameSize = person.frameSize;
    if (auto complaint = setPowers(person, settings, need))
        return *complaint;
    setPd(person, settings, need);
    if (purpose == Purpose::distance)
        setMeanSphereLoss(person, need);
    return need;
}

} // namespace quarterstep
