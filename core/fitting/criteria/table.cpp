// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/criteria/table.hpp"

#include "core/finding.hpp"
#include "core/fitting/criteria/measure.hpp"

namespace quarterstep
{

namespace
{

using C = Criterion;

constexpr std::array<CriterionInfo, criterionCount> table{{
    {C::residualCylinder, "residual_cylinder", "residual cylinder", "D", QS_SAY("core", "cylinder left over"),
     QS_SAY("core", "cylinder left over %1 D, limit %2 D"), QS_SAY("core", "%1 D of cylinder left over"),
     measureResidualCylinder},
    {C::needDifference, "difference_of_needs", "difference of needs", "D",
     QS_SAY("core", "difference between the eyes' needs"),
     QS_SAY("core", "the eyes differ by %1 D, limit %2 D for one power in both lenses"),
     QS_SAY("core", "the eyes differ by %1 D"), measureNeedDifference},
    {C::powerSize, "power_size", "power size", "D", QS_SAY("core", "size of the power"),
     QS_SAY("core", "power %1 D, limit %2 D"), QS_SAY("core", "high power: %1 D"), measurePowerSize},
    {C::blur, "blur", "blur", "D", QS_SAY("core", "blur strength"),
     QS_SAY("core", "blur strength %1 D, limit %2 D"), QS_SAY("core", "blur strength %1 D"), measureBlur},
    {C::tooPlus, "too_plus", "too plus", "D", QS_SAY("core", "too much plus"),
     QS_SAY("core", "%1 D too much plus, limit %2 D"), QS_SAY("core", "%1 D too much plus"), measureTooPlus},
    {C::tooMinus, "too_minus", "too minus", "D", QS_SAY("core", "too much minus or too little plus"),
     QS_SAY("core", "%1 D too much minus or too little plus, limit %2 D"),
     QS_SAY("core", "%1 D too much minus or too little plus"), measureTooMinus},
    {C::suppliedDifference, "difference_supplied", "difference supplied", "D",
     QS_SAY("core", "difference between the two lenses"),
     QS_SAY("core", "the two lenses differ by %1 D, limit %2 D"),
     QS_SAY("core", "the two lenses differ by %1 D"), measureSuppliedDifference},
    {C::balance, "balance", "balance", "D", QS_SAY("core", "balance between the eyes"),
     QS_SAY("core", "one eye %1 D off against the other, limit %2 D"),
     QS_SAY("core", "one eye %1 D off against the other"), measureBalance},
    {C::suppliedCylinder, "supplied_cylinder", "supplied cylinder", "D",
     QS_SAY("core", "cylinder of the lens beyond the need"),
     QS_SAY("core", "the lens has %1 D more cylinder than needed, limit %2 D"),
     QS_SAY("core", "%1 D more cylinder than needed"), measureSuppliedCylinder},
    {C::axisTurn, "axis_turn", "axis turn", "degrees", QS_SAY("core", "axis off"),
     QS_SAY("core", "axis off by %1 degrees, limit %2"), QS_SAY("core", "axis off by %1 degrees"),
     measureAxisTurn},
    {C::horizontalPrism, "horizontal_prism", "horizontal prism", "pd", QS_SAY("core", "horizontal prism"),
     QS_SAY("core", "horizontal prism %1, limit %2"), QS_SAY("core", "horizontal prism %1"),
     measureHorizontalPrism},
    {C::verticalPrism, "vertical_prism", "vertical prism", "pd", QS_SAY("core", "vertical prism"),
     QS_SAY("core", "vertical prism %1, limit %2"), QS_SAY("core", "vertical prism %1"),
     measureVerticalPrism},
    {C::centres, "centres", "centres", "mm", QS_SAY("core", "centres against PD"),
     QS_SAY("core", "centres %1 mm off the PD, limit %2 mm"), QS_SAY("core", "centres %1 mm off the PD"),
     measureCentres},
    {C::readingLevel, "reading_level", "reading level", "pd",
     QS_SAY("core", "vertical imbalance at the reading level"),
     QS_SAY("core", "vertical imbalance %1 at the reading level, limit %2"),
     QS_SAY("core", "vertical imbalance %1 at the reading level"), measureReadingLevel},
    {C::frameSize, "frame_size", "frame size", "", QS_SAY("core", "frame size class"),
     QS_SAY("core", "frame size off by %1 class, limit %2"), QS_SAY("core", "frame size off by %1 class"),
     measureFrameSize},
    {C::nearBlur, "near_blur", "near blur", "D", QS_SAY("core", "blur strength at near"),
     QS_SAY("core", "blur strength at near %1 D, limit %2 D"), QS_SAY("core", "blur strength at near %1 D"),
     measureNearBlur},
    {C::nearTooPlus, "near_too_plus", "near too plus", "D", QS_SAY("core", "near power too strong"),
     QS_SAY("core", "near power %1 D too strong, limit %2 D"), QS_SAY("core", "near power %1 D too strong"),
     measureNearTooPlus},
    {C::nearTooMinus, "near_too_minus", "near too minus", "D", QS_SAY("core", "near power too weak"),
     QS_SAY("core", "near power %1 D too weak, limit %2 D"), QS_SAY("core", "near power %1 D too weak"),
     measureNearTooMinus},
    {C::sphereError, "sphere_error", "sphere error", "D", QS_SAY("core", "sphere off"),
     QS_SAY("core", "sphere off by %1 D, limit %2 D"), QS_SAY("core", "sphere off by %1 D"),
     measureSphereError},
    {C::cylinderError, "cylinder_error", "cylinder error", "D", QS_SAY("core", "cylinder off"),
     QS_SAY("core", "cylinder off by %1 D, limit %2 D"), QS_SAY("core", "cylinder off by %1 D"),
     measureCylinderError},
    {C::axisError, "axis_error", "axis error", "degrees", QS_SAY("core", "axis against the prescription"),
     QS_SAY("core", "axis %1 degrees off the prescription, limit %2"),
     QS_SAY("core", "axis %1 degrees off the prescription"), measureAxisError},
    {C::meanSphereAcuity, "mean_sphere_acuity", "mean sphere acuity", "logmar",
     QS_SAY("core", "acuity with the mean sphere"),
     QS_SAY("core", "acuity with the mean sphere %1 logMAR below the full correction, limit %2"),
     QS_SAY("core", "acuity with the mean sphere %1 logMAR lower"), measureMeanSphereAcuity},
    {C::trialAcuity, "trial_acuity", "trial acuity", "logmar", QS_SAY("core", "acuity with this pair"),
     QS_SAY("core", "acuity with this pair is %1 logMAR beyond what is asked, limit %2"),
     QS_SAY("core", "tried: acuity %1 logMAR short"), measureTrialAcuity},
}};

constexpr bool standsInOrder()
{
    for (std::size_t i = 0; i < table.size(); ++i)
        if (table[i].criterion != static_cast<Criterion>(i))
            return false;
    return true;
}
static_assert(standsInOrder(), "each row stands where its enumerator stands");

} // namespace

const std::array<CriterionInfo, criterionCount>& criterionTable()
{
    return table;
}

const CriterionInfo& infoOf(Criterion criterion)
{
    return table[static_cast<std::size_t>(criterion)];
}

} // namespace quarterstep
