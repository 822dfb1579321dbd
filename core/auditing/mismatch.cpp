// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/auditing/mismatch.hpp"

#include "core/fitting/order.hpp"
#include "core/fitting/reasons.hpp"
#include "core/fitting/stock_index.hpp"
#include "core/joined.hpp"
#include "core/optics/notation.hpp"
#include "core/optics/power_vector.hpp"
#include "core/record/judgement.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

using K = AuditClass;

constexpr double oneStep = 0.02;     // logMAR, the step in which candidates are ordered
constexpr double neverBetter = 1e-9; // logMAR; a saving below it is none

void add(JudgedHandOver& judged, K kind, Sentence detail)
{
    judged.findings.push_back({judged.facts.entry, kind, std::move(detail)});
}

/// The answer without any stock: need, whether anything is needed, what is missing.
std::optional<Recommendation> answerFor(const HandOverFacts& facts, const FittingRules& rules)
{
    static const StockIndex nothing{std::span<const StockLine>{}};
    MatchOptions options;
    options.profile = facts.profile;
    options.candidates.index = &nothing;
    auto person = *facts.record;
    person.purpose = facts.purpose;
    auto answers = recommend(person, {}, rules, options);
    return answers.empty() ? std::nullopt : std::optional(std::move(answers.front()));
}

void tellFit(JudgedHandOver& judged)
{
    const auto& facts = judged.facts;
    if (judged.outside()) {
        const auto* failing = judged.fit->firstWith(Band::fails);
        add(judged, facts.reasonGiven ? K::outsideWithReason : K::outsideWithoutReason,
            failingSentence(*failing));
    }
    if (judged.fit->onTrial())
        add(judged, K::onTrialWithoutAcuity,
            {QS_SAY("core", "this pair may be given only with the acuity read with it; none was recorded"),
             {}});
    if (judged.nothingNeeded)
        add(judged, K::notNeeded, {QS_SAY("core", "by the record nothing was needed for this purpose"), {}});
    bool centresKnown = judged.need->pdKnown && !facts.supply->centresAssumed;
    const auto* centres = judged.fit->firstWith(Band::notMeasured);
    centresKnown = centresKnown || (centres == nullptr && !facts.supply->centres);
    if (!centresKnown && judged.need->pairLevel())
        add(judged, K::centresNotMeasured,
            {judged.need->pdKnown
                 ? QS_SAY("core", "the centres of this pair were assumed, not measured")
                 : QS_SAY("core", "the PD was not measured; prism is judged at its worst likely value"),
             {}});
}

/// Stored and new judgement: the same rules and the same fit give the same words and thousandths.
void tellDifference(JudgedHandOver& judged)
{
    const auto& facts = judged.facts;
    Entry again;
    putJudgement(again, *judged.fit);
    const auto number = [&](const char* name) { return std::stol(again.fields[name]); };
    const bool same =
        (facts.verdict.empty() || facts.verdict == again.fields["verdict"]) &&
        (!facts.costThousandths || *facts.costThousandths == number("cost_thousandths")) &&
        (!facts.horizontalThousandths || *facts.horizontalThousandths == number("prism_h_thousandths"));
    if (!same)
        add(judged, K::verdictDiffers,
            {QS_SAY("core",
                    "the entry says %1, judged again it is %2; the cost was %3 and is %4 thousandths"),
             {facts.verdict, again.fields["verdict"], std::to_string(facts.costThousandths.value_or(0)),
              again.fields["cost_thousandths"]}});
}

void tellAcuity(JudgedHandOver& judged, double shortfall)
{
    const auto& facts = judged.facts;
    if (!facts.acuity)
        return;
    for (const Eye eye : bothEyes) {
        const auto& typed = facts.acuity->distance.of(eye);
        const auto& best = facts.record->eyes.of(eye).acuity.best;
        const auto& fit = judged.fit->eyes.of(eye);
        if (!typed || !typed->logMar || !best || !best->logMar || !fit)
            continue;
        const double worse = *typed->logMar - (*best->logMar + fit->loss);
        if (worse > shortfall + 1e-6)
            add(judged, K::acuityWorse,
                {eye == Eye::right
                     ? QS_SAY("core", "right eye: %1 with this pair, %2 logMAR worse than predicted")
                     : QS_SAY("core", "left eye: %1 with this pair, %2 logMAR worse than predicted"),
                 {typed->asRecorded, twoDecimals(worse)}});
    }
}

/// A focimeter reading of the pair itself, where one was taken.
void tellReading(JudgedHandOver& judged, double limit)
{
    const auto& facts = judged.facts;
    if (!facts.later)
        return;
    for (const Eye eye : bothEyes) {
        const auto& reading = facts.later->pair.of(eye);
        if (!reading)
            continue;
        const auto off = toPowerVector(*reading) - toPowerVector(facts.supply->power.of(eye));
        if (std::max({std::abs(off.m), std::abs(off.j0), std::abs(off.j45)}) > limit + neverBetter)
            add(judged, K::offLabel,
                {eye == Eye::right ? QS_SAY("core", "right eye: read %1, recorded %2")
                                   : QS_SAY("core", "left eye: read %1, recorded %2"),
                 {writePower(*reading), writePower(facts.supply->power.of(eye))}});
    }
}

/// Looks into the box only where something there could have been better by a step of cost: the cost of a pair
/// is never below nought.
void lookInBox(JudgedHandOver& judged, const FittingRules& rules, const BoxThen& box, double regret)
{
    if (judged.nothingNeeded || (judged.fit->band == Band::fits && judged.fit->cost < oneStep)) {
        judged.suggested = judged.fit->acceptable();
        return;
    }
    CandidateOptions options;
    options.index = box.index;
    options.alike = false;
    options.misses = false;
    auto lists = findCandidates(*judged.need, box.lines, *judged.profile, rules.settings, options);
    const auto acceptable = [](const Candidate& candidate) { return candidate.fit.acceptable(); };
    judged.acceptableGroups =
        static_cast<std::size_t>(std::count_if(lists.ranked.begin(), lists.ranked.end(), acceptable));
    if (judged.acceptableGroups == 0)
        return;
    judged.best = std::move(lists.ranked.front());
    for (const auto& part : judged.best->parts) {
        judged.bestLines.push_back(box.lines[part.line].name);
        judged.bestBins.push_back(box.lines[part.line].bin);
    }
    judged.suggested =
        judged.fit->acceptable() && asGoodAs(*judged.need, *judged.profile, *judged.fit, judged.best->fit);
    const double saved = judged.fit->cost - judged.best->fit.cost;
    if (saved >= regret - neverBetter || (judged.outside() && saved > neverBetter))
        add(judged, K::betterPairInBox,
            {QS_SAY("core", "%1 was in the box (bin %2) and would have cost %3 logMAR less"),
             {joined(judged.bestLines, " + "), joined(judged.bestBins, " + "), twoDecimals(saved)}});
}

} // namespace

bool JudgedHandOver::mismatch() const
{
    return std::any_of(findings.begin(), findings.end(),
                       [](const AuditFinding& finding) { return infoOf(finding.kind).mismatch; });
}

bool asGoodAs(const Need& need, const Profile& profile, const Fit& fit, const Fit& best)
{
    const auto key = fitKey(need, profile, fit);
    const auto bestKey = fitKey(need, profile, best);
    return key.costStep <= bestKey.costStep && key.cautions <= bestKey.cautions &&
           key.prismStep <= bestKey.prismStep;
}

JudgedHandOver judgeAgain(HandOverFacts facts, const FittingRules* rules, const BoxThen& box,
                          const AuditThresholds& thresholds)
{
    JudgedHandOver judged;
    judged.facts = std::move(facts);
    const auto& known = judged.facts;
    if (known.checks.empty() || known.checks == "none")
        add(judged, K::checksNotRecorded,
            {QS_SAY("core", "neither power, fit, acuity nor instructions are recorded"), {}});
    judged.profile = rules != nullptr ? rules->find(known.profile) : nullptr;
    if (judged.profile == nullptr) {
        add(judged, K::rulesMissing,
            {QS_SAY("core",
                    "the rules with the hash %1 (profile %2) are neither in the ledger nor in rules.yaml"),
             {known.rulesHash, known.profile}});
        return judged;
    }
    const auto answer = known.record && known.supply ? answerFor(known, *rules) : std::nullopt;
    if (!answer || !answer->need) {
        add(judged, K::recordMissing,
            {known.record
                 ? QS_SAY("core", "the pair as it was judged, or part of the prescription, is not recorded")
                 : QS_SAY("core", "the prescription is not recorded or was forgotten"),
             {}});
        return judged;
    }
    judged.need = answer->need;
    judged.nothingNeeded = answer->verdict == Verdict::none;
    judged.fit = judge(*judged.need, *known.supply, *judged.profile, known.acuity ? &*known.acuity : nullptr);
    tellFit(judged);
    tellDifference(judged);
    tellAcuity(judged, thresholds.acuityShortfall);
    tellReading(judged, thresholds.offLabel);
    lookInBox(judged, *rules, box, thresholds.regret);
    return judged;
}

} // namespace quarterstep
