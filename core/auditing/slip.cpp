// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/auditing/slip.hpp"

#include "core/auditing/slip_parts.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

using S = SlipKind;

/// Squared distance in SDs of (M, J0, J45) from which the record is held against its slips: three records in
/// four lie below it (chi-squared, three degrees of freedom) and are left alone.
constexpr double worthAsking = 4.0;

void sortMembers(SlipClass& group)
{
    std::stable_sort(group.members.begin(), group.members.end(),
                     [](const SlipMember& a, const SlipMember& b) { return a.weight() > b.weight(); });
}

/// Log of the density of all witnesses under one hypothesis.
double densityOf(const EntryHypothesis& hypothesis, const JudgedHandOver& judged, const WitnessFit& null,
                 const SlipModel& model)
{
    if (hypothesis.truths.empty())
        return hypothesis.member.witnesses + null.logBeside;
    const auto& onFace = judged.facts.supply->power;
    if (hypothesis.truths.size() == 1)
        return witnessesOf(judged, hypothesis.truths.front().second, onFace, model).logDensity;
    double sum = 0.0;
    for (const auto& [share, truth] : hypothesis.truths)
        sum += share * std::exp(witnessesOf(judged, truth, onFace, model).logDensity - null.logDensity);
    return null.logDensity + std::log(sum + 1e-290);
}

Sentence recordDetail(const Truth& recorded, const EntryHypothesis& hypothesis)
{
    if (hypothesis.truths.size() == 1)
        return {QS_SAY("core", "recorded %1; what was measured beside it fits %2"),
                {truthText(recorded), truthText(hypothesis.truths.front().second)}};
    return {QS_SAY("core", "recorded %1; what was measured beside it does not fit"), {truthText(recorded)}};
}

/// Whether anything was measured that could speak of a slip of this kind; otherwise it is not testable, and
/// left out.
bool testable(SlipKind kind, const WitnessFit& recorded)
{
    if (kind == S::additionLeftOut || kind == S::additionAsNearPower)
        return recorded.addition;
    if (kind == S::monocularPd || kind == S::nearPdAsDistance)
        return recorded.pd;
    return recorded.powers;
}

/// Hypotheses of one truth into one class.
std::vector<SlipClass> entryClasses(const JudgedHandOver& judged, const SlipScene& scene,
                                    const WitnessFit& null, const SlipModel& model)
{
    if (!null.any() || null.worst < worthAsking)
        return {};
    const auto asRecorded = truthOf(*judged.facts.record);
    std::vector<SlipClass> classes;
    std::vector<std::optional<Truth>> truths;
    for (auto& hypothesis : entryHypotheses(judged, scene, model)) {
        auto& member = hypothesis.member;
        if (!testable(member.kind, null))
            continue;
        const double density = densityOf(hypothesis, judged, null, model);
        member.witnesses = std::exp(std::clamp(density - null.logDensity, -600.0, 600.0));
        const auto truth =
            hypothesis.truths.size() == 1 ? std::optional(hypothesis.truths.front().second) : std::nullopt;
        std::size_t place = 0;
        for (; place < classes.size(); ++place)
            if (truth && truths[place] && sameTruth(*truths[place], *truth))
                break;
        if (place == classes.size()) {
            SlipClass group;
            group.other = hypothesis.other;
            group.detail = recordDetail(asRecorded, hypothesis);
            classes.push_back(std::move(group));
            truths.push_back(truth);
        }
        classes[place].members.push_back(member);
    }
    return classes;
}

} // namespace

const std::array<SlipInfo, slipKinds>& slipTable()
{
    static constexpr std::array<SlipInfo, slipKinds> table{{
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
        {S::additionOnDistance, "addition-on-distance",
         QS_SAY("core", "the addition put on the distance power"), true},
        {S::eyesSwapped, "eyes-swapped", QS_SAY("core", "right and left exchanged in the record"), true},
        {S::rightIntoLeft, "right-into-left", QS_SAY("core", "the right eye written for the left as well"),
         true},
        {S::previousPerson, "previous-person", QS_SAY("core", "the prescription of the person before"), true},
        {S::additionLeftOut, "addition-left-out", QS_SAY("core", "the addition left out"), true},
        {S::additionAsNearPower, "addition-as-near-power",
         QS_SAY("core", "the addition taken as the whole near power"), true},
        {S::monocularPd, "monocular-pd", QS_SAY("core", "the PD of one eye recorded as that of both"), true},
        {S::nearPdAsDistance, "near-pd-as-distance", QS_SAY("core", "the near PD recorded as distance PD"),
         true},
        {S::otherEntry, "other-entry", QS_SAY("core", "the record, in a way that is none of those listed"),
         true},
        {S::neighbouringBin, "neighbouring-bin", QS_SAY("core", "a pair from a bin beside the one meant"),
         false},
        {S::otherCentresOrSize, "other-centres", QS_SAY("core", "the power meant, other centres or size"),
         false},
        {S::cylinderIgnored, "cylinder-ignored",
         QS_SAY("core", "picked by the sphere, the cylinder left out"), false},
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
        {S::otherLineScanned, "other-line-scanned", QS_SAY("core", "another line recorded than given"),
         false},
        {S::lineOffLabel, "line-off-label", QS_SAY("core", "the piece or its lot off the label"), false},
        {S::recordedTwice, "recorded-twice", QS_SAY("core", "one pair recorded twice"), false},
        {S::otherPick, "other-pick", QS_SAY("core", "another pair than the one meant, in a way not listed"),
         false},
    }};
    return table;
}

const SlipInfo& infoOf(SlipKind kind)
{
    return slipTable()[static_cast<std::size_t>(kind)];
}

double SlipModel::priorOf(SlipKind kind) const
{
    if (kind != SlipKind::none)
        return prior[static_cast<std::size_t>(kind)];
    double left = 1.0;
    for (std::size_t i = 1; i < slipKinds; ++i)
        left -= prior[i];
    return left;
}

const SlipClass* SlipAnswer::told(const SlipModel& model) const
{
    if (classes.empty() || classes.front().kind() == SlipKind::none ||
        classes.front().probability < model.told)
        return nullptr;
    return &classes.front();
}

SlipAnswer slipOf(const JudgedHandOver& judged, const SlipScene& scene, const SlipModel& model)
{
    SlipAnswer answer;
    if (!judged.fit || !judged.facts.record || !judged.facts.supply)
        return answer;
    const auto recorded =
        witnessesOf(judged, truthOf(*judged.facts.record), judged.facts.supply->power, model);
    answer.witnessed = recorded.powers;
    answer.additionWitnessed = recorded.addition;
    answer.pdWitnessed = recorded.pd;
    answer.pairWitnessed =
        judged.facts.later && (judged.facts.later->pair.right || judged.facts.later->pair.left);
    auto classes = entryClasses(judged, scene, recorded, model);
    for (auto& group : pickClasses(judged, scene, model))
        classes.push_back(std::move(group));
    for (auto& group : faceClasses(judged, scene, model))
        classes.push_back(std::move(group));
    if (classes.empty())
        return answer;
    SlipClass null;
    null.members.push_back({SlipKind::none, {}, model.priorOf(SlipKind::none), 1.0, 1.0});
    null.detail = {QS_SAY("core", "record and pair meant as they are"), {}};
    classes.push_back(std::move(null));
    double sum = 0.0;
    for (auto& group : classes) {
        sortMembers(group);
        for (const auto& member : group.members)
            group.probability += member.weight();
        sum += group.probability;
    }
    for (auto& group : classes)
        group.probability /= sum;
    std::stable_sort(classes.begin(), classes.end(),
                     [](const SlipClass& a, const SlipClass& b) { return a.probability > b.probability; });
    answer.classes = std::move(classes);
    return answer;
}

} // namespace quarterstep
