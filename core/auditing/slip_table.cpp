// SPDX-License-Identifier: GPL-3.0-or-later
// Every kind of slip with its words, in the order of the enumerators.
#include "core/auditing/slip.hpp"

namespace quarterstep
{

namespace
{

using S = SlipKind;

constexpr std::array<SlipInfo, slipKinds> table{{
    {S::none, "none", QS_SAY("core", "meant as it is"), false},
    {S::sphereSign, "sphere-sign", QS_SAY("core", "the sign of a sphere"), true},
    {S::cylinderSign, "cylinder-sign", QS_SAY("core", "the sign of a cylinder"), true},
    {S::halfTranspositionUnturned, "half-transposition-unturned",
     QS_SAY("core", "a transposition without the axis"), true},
    {S::halfTranspositionTurned, "half-transposition-turned",
     QS_SAY("core", "a transposition without the sphere"), true},
    {S::axisTurned90, "axis-90", QS_SAY("core", "an axis off by 90 degrees"), true},
    {S::axisMirrored, "axis-mirrored", QS_SAY("core", "an axis read as its mirror image"), true},
    {S::axisDigits, "axis-digits", QS_SAY("core", "digits of an axis"), true},
    {S::columnsExchanged, "columns-exchanged", QS_SAY("core", "sphere and cylinder exchanged"), true},
    {S::decimalShift, "decimal-shift", QS_SAY("core", "a decimal point in another place"), true},
    {S::powerMisread, "power-misread", QS_SAY("core", "a power misread by a step or two"), true},
    {S::additionOnDistance, "addition-on-distance", QS_SAY("core", "the addition put on the distance power"),
     true},
    {S::eyesSwapped, "eyes-swapped", QS_SAY("core", "right and left exchanged in the record"), true},
    {S::rightIntoLeft, "right-into-left", QS_SAY("core", "the right eye written for the left as well"), true},
    {S::previousPerson, "previous-person", QS_SAY("core", "the prescription of the person before"), true},
    {S::additionLeftOut, "addition-left-out", QS_SAY("core", "the addition left out"), true},
    {S::additionAsNearPower, "addition-as-near-power",
     QS_SAY("core", "the addition taken as the whole near power"), true},
    {S::monocularPd, "monocular-pd", QS_SAY("core", "the PD of one eye recorded as that of both"), true},
    {S::nearPdAsDistance, "near-pd-as-distance", QS_SAY("core", "the near PD recorded as distance PD"), true},
    {S::otherEntry, "other-entry", QS_SAY("core", "the record, in a way that is none of those listed"), true},
    {S::neighbouringBin, "neighbouring-bin", QS_SAY("core", "a pair from a bin beside the one meant"), false},
    {S::otherCentresOrSize, "other-centres", QS_SAY("core", "the power meant, other centres or size"), false},
    {S::cylinderIgnored, "cylinder-ignored", QS_SAY("core", "picked by the sphere, the cylinder left out"),
     false},
    {S::cylinderAddedWhole, "cylinder-added-whole", QS_SAY("core", "picked by sphere and whole cylinder"),
     false},
    {S::cylinderSubtracted, "cylinder-subtracted",
     QS_SAY("core", "picked by the sphere less half the cylinder"), false},
    {S::otherPurpose, "other-purpose", QS_SAY("core", "the pair for the person's other purpose"), false},
    {S::pairsExchanged, "pairs-exchanged", QS_SAY("core", "the pairs of two persons exchanged"), false},
    {S::lensesExchanged, "lenses-exchanged", QS_SAY("core", "right and left lens exchanged"), false},
    {S::axisTurnedMounting, "axis-turned", QS_SAY("core", "a lens turned when it was mounted"), false},
    {S::returnedWrongBin, "returned-wrong-bin", QS_SAY("core", "a piece that lay in another line's bin"),
     false},
    {S::otherLineScanned, "other-line-scanned", QS_SAY("core", "another line recorded than given"), false},
    {S::lineOffLabel, "line-off-label", QS_SAY("core", "the piece or its lot off the label"), false},
    {S::recordedTwice, "recorded-twice", QS_SAY("core", "one pair recorded twice"), false},
    {S::otherPick, "other-pick", QS_SAY("core", "another pair than the one meant, in a way not listed"),
     false},
}};

constexpr bool standsInOrder()
{
    for (std::size_t i = 0; i < table.size(); ++i)
        if (table[i].kind != static_cast<SlipKind>(i))
            return false;
    return true;
}
static_assert(standsInOrder(), "each row stands where its enumerator stands");

} // namespace

const std::array<SlipInfo, slipKinds>& slipTable()
{
    return table;
}

const SlipInfo& infoOf(SlipKind kind)
{
    return table[static_cast<std::size_t>(kind)];
}

} // namespace quarterstep
