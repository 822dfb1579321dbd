// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/laboratory_order.hpp"

#include "core/fitting/reasons.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double highPower = 4.0; // D: above it vertex distance and heights matter

SpheroCylinder inForm(const SpheroCylinder& power, CylinderForm form)
{
    switch (form) {
    case CylinderForm::minus:
        return minusCylinderForm(power);
    case CylinderForm::plus:
        return plusCylinderForm(power);
    case CylinderForm::asWritten:
        break;
    }
    return power;
}

/// The power as refracted for the purpose, before any conversion to another vertex distance.
SpheroCylinder powerAsRefracted(const EyeRecord& eye, const EyeNeed& need, Purpose purpose)
{
    if (purpose == Purpose::near && eye.nearPower)
        return *eye.nearPower;
    if (purpose == Purpose::near || purpose == Purpose::intermediate)
        return withSphereAdded(eye.final.power, Dioptres{need.addition});
    return eye.final.power;
}

OrderedLens lensFor(const PersonRecord& person, const Need& need, Eye eye, CylinderForm form)
{
    const auto& record = person.eyes.of(eye);
    OrderedLens lens;
    lens.state = record.final.state;
    lens.height = record.heightMm;
    if (need.pdKnown) {
        lens.centration = need.pd.least * need.share.of(eye);
        lens.centrationHalved = !record.monocularPd || need.pdComputed || need.nearWork();
    }
    if (!record.seeing())
        return lens;
    lens.power = inForm(powerAsRefracted(record, need.eyes.of(eye), need.purpose), form);
    lens.prism = need.eyes.of(eye).prism;
    if (need.purpose == Purpose::bifocal)
        lens.addition = Dioptres{need.eyes.of(eye).addition};
    return lens;
}

/// A lens without a power of its own is made like its fellow.
void fillFellow(LaboratoryOrder& order)
{
    for (const Eye eye : bothEyes) {
        auto& lens = order.lenses.of(eye);
        const auto& fellow = order.lenses.of(eye == Eye::right ? Eye::left : Eye::right);
        if (lens.state == EyeState::measured || fellow.state != EyeState::measured)
            continue;
        lens.followsFellow = true;
        lens.power = fellow.power;
        lens.addition = fellow.addition;
    }
}

double strongest(const LaboratoryOrder& order)
{
    double most = 0.0;
    for (const Eye eye : bothEyes)
        most = std::max(most, std::abs(meanSphere(order.lenses.of(eye).power).value()));
    return most;
}

bool prismOrdered(const LaboratoryOrder& order)
{
    return std::any_of(std::begin(bothEyes), std::end(bothEyes), [&](Eye eye) {
        const auto& prism = order.lenses.of(eye).prism;
        return std::max(std::abs(prism.in), std::abs(prism.up)) >= 0.25 - 1e-6;
    });
}

void addMissing(const PersonRecord& person, const Need& need, LaboratoryOrder& order)
{
    auto& missing = order.missing;
    if (!need.pdKnown)
        missing.push_back({QS_SAY("core", "the PD of each eye"), {}});
    const bool heightsMatter = need.purpose == Purpose::bifocal || strongest(order) > highPower;
    if (heightsMatter && !(order.lenses.right.height && order.lenses.left.height))
        missing.push_back({QS_SAY("core", "the heights in the chosen frame"), {}});
    if (strongest(order) > highPower && !person.vertexMm)
        missing.push_back({QS_SAY("core", "the vertex distance of the refraction"), {}});
    if (order.frame.empty())
        missing.push_back({QS_SAY("core", "the frame"), {}});
    if (person.child() && order.prescriber.empty())
        missing.push_back({QS_SAY("core", "the prescriber's name, for a child"), {}});
}

void addNotes(const PersonRecord& person, const Need& need, LaboratoryOrder& order)
{
    auto& notes = order.notes;
    if (need.nearWork())
        notes.push_back({QS_SAY("core", "single vision for %1 mm: whole power, nothing to be added"),
                         {std::to_string(std::lround(order.workingMm.value_or(person.working())))}});
    if (need.pdComputed)
        notes.push_back({QS_SAY("core", "centration computed from the distance PD, not measured"), {}});
    else if (need.pdKnown && (order.lenses.right.centrationHalved || order.lenses.left.centrationHalved))
        notes.push_back({QS_SAY("core", "each eye's PD is half of the binocular one"), {}});
    if (order.lenses.right.followsFellow || order.lenses.left.followsFellow)
        notes.push_back({QS_SAY("core", "balance lens: as its fellow, for looks and weight"), {}});
    if (person.oneSeeingEye())
        notes.push_back({QS_SAY("core", "only one seeing eye: impact-resistant lenses are advised"), {}});
    if (person.child())
        notes.push_back({QS_SAY("core", "for a child: impact-resistant lenses are advised"), {}});
    if (prismOrdered(order))
        notes.push_back({QS_SAY("core", "prism as prescribed, each eye its own"), {}});
    if (order.vertexMm)
        notes.push_back(
            {QS_SAY("core", "refracted at a vertex distance of %1 mm"), {twoDecimals(*order.vertexMm)}});
    if (person.objectiveOnly)
        notes.push_back({QS_SAY("core", "from an objective reading only"), {}});
}

} // namespace

LaboratoryOrder laboratoryOrder(const PersonRecord& person, const Need& need, CylinderForm form)
{
    LaboratoryOrder order;
    order.person = person.person;
    order.purpose = need.purpose;
    order.form = form;
    for (const Eye eye : bothEyes)
        order.lenses.of(eye) = lensFor(person, need, eye, form);
    fillFellow(order);
    order.vertexMm = person.vertexMm;
    if (need.purpose == Purpose::near)
        order.workingMm = person.working();
    if (need.purpose == Purpose::intermediate)
        order.workingMm = person.intermediateMm.value_or(2.0 * person.working());
    order.frame = person.frame;
    order.frameSize = person.frameSize;
    order.prescriber = person.prescriber;
    order.writtenOn = person.writtenOn;
    addMissing(person, need, order);
    addNotes(person, need, order);
    return order;
}

} // namespace quarterstep
