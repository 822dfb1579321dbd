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
