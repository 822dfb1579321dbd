// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/recommendation.hpp"

#include "core/fitting/criteria/measure.hpp"
#include "core/fitting/criteria/table.hpp"
#include "core/fitting/details.hpp"
#include "core/fitting/eye_facts.hpp"
#include "core/fitting/flags.hpp"
#include "core/fitting/reasons.hpp"
#include "core/fitting/stock_index.hpp"
#include "core/fitting/without_stock.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

bool failsOnlyFor(const Fit& fit, Missing missing)
{
    bool any = false;
    for (const auto& result : fit.criteria)
        if (result.band == Band::fails) {
            if (result.missing != missing)
                return false;
            any = true;
        }
    return any;
}

/// What, if measured, would open the box: asked for instead of sending an order away.
std::vector<Lack> curable(const CandidateLists& lists)
{
    std::vector<Lack> needs;
    const auto any = [&](Missing missing) {
        return std::any_of(lists.misses.begin(), lists.misses.end(),
                           [&](const Candidate& miss) { return failsOnlyFor(miss.fit, missing); });
    };
    if (any(Missing::pd))
        needs.push_back({"pd_not_taken", {QS_SAY("core", "the PD: measure it"), {}}});
    if (any(Missing::vertex))
        needs.push_back({"vertex_not_recorded",
                         {QS_SAY("core", "the vertex distance of this prescription: measure it"), {}}});
    return needs;
}

void judgeWithoutStock(const PersonRecord& person, const Profile& profile, Recommendation& answer)
{
    Supply bare;
    bare.equalPair = true;
    answer.bareEyes = judge(*answer.need, bare, profile);
    Supply own;
    own.equalPair = false;
    if (answer.purpose == Purpose::bifocal)
        own.bifocalAddition = person.wornAddition;
    bool worn = false;
    for (const Eye eye : bothEyes)
        if (const auto& power = person.eyes.of(eye).worn) {
            own.power.of(eye) = answer.purpose == Purpose::near
                                    ? withSphereAdded(*power, person.wornAddition.value_or(Dioptres{}))
                                    : *power;
            worn = true;
        } else if (person.eyes.of(eye).seeing()) {
            return;
        }
    if (worn)
        answer.ownPair = judge(*answer.need, own, profile);
}

void settle(Recommendation& answer, Verdict verdict, std::string key, Sentence reason)
{
    answer.verdict = verdict;
    answer.reasonKey = std::move(key);
    answer.reason = std::move(reason);
}

void settleIncomplete(Recommendation& answer, const std::vector<Lack>& lacks)
{
    for (const auto& lack : lacks)
        answer.needs.push_back(lack.sentence);
    settle(answer, Verdict::incomplete, lacks.front().key, lacks.front().sentence);
}

/// The blurred powers of a miss mean that the box does not hold the power; other criteria speak for
/// themselves.
std::string reasonKeyOf(Criterion criterion)
{
    switch (criterion) {
    case Criterion::blur:
    case Criterion::tooPlus:
    case Criterion::tooMinus:
    case Criterion::nearBlur:
    case Criterion::nearTooPlus:
    case Criterion::nearTooMinus:
    case Criterion::balance:
        return "power_not_in_box";
    default:
        return infoOf(criterion).name;
    }
}

void settleCustom(std::span<const StockLine> stock, const Profile& profile, const FittingRules& rules,
                  const MatchOptions& options, Recommendation& answer)
{
    if (options.candidates.onlyAvailable) {
        auto everything = options.candidates;
        everything.onlyAvailable = false;
        everything.most = 1;
        everything.alike = false;
        const auto full = findCandidates(*answer.need, stock, profile, rules.settings, everything);
        if (!full.ranked.empty() && full.ranked.front().fit.acceptable()) {
            settle(answer, Verdict::custom, "stock_out",
                   {QS_SAY("core", "none left of %1"), {partNames(full.ranked.front(), stock)}});
            return;
        }
    }
    if (answer.candidates.misses.empty()) {
        settle(answer, Verdict::custom, "no_stock",
               {QS_SAY("core", "nothing in the box for this purpose"), {}});
        return;
    }
    const auto& nearest = answer.candidates.misses.front();
    const auto* failing = nearest.fit.firstWith(Band::fails); // every miss has one
    for (const auto& result : nearest.fit.criteria) // what a missing measurement might heal comes last
        if (result.band == Band::fails && failing->missing != Missing::nothing &&
            result.missing == Missing::nothing)
            failing = &result;
    settle(answer, Verdict::custom, reasonKeyOf(failing->criterion), failingSentence(*failing));
}

void tryTyped(const PersonRecord& person, const MatchOptions& options, const Profile& profile,
              Recommendation& answer)
{
    if (!options.trial || answer.candidates.ranked.empty() || !answer.candidates.ranked.front().fit.onTrial())
        return;
    TrialAcuity trial = *options.trial;
    for (const Eye eye : bothEyes)
        if (!trial.best.of(eye))
            trial.best.of(eye) = person.eyes.of(eye).acuity.best;
    auto& first = answer.candidates.ranked.front();
    first.fit = judge(*answer.need, first.supply, profile, &trial);
    nameSources(first.fit, profile);
    if (first.fit.acceptable() || first.fit.onTrial())
        return;
    answer.candidates.misses.insert(answer.candidates.misses.begin(), first);
    answer.candidates.ranked.erase(answer.candidates.ranked.begin());
}

/// A used pair is told wherever it is the one suggested.
void tellUsed(std::span<const StockLine> stock, Recommendation& answer)
{
    const auto& ranked = answer.candidates.ranked;
    if (ranked.empty())
        return;
    for (const auto& part : ranked.front().parts)
        if (stock[part.line].origin == Origin::used) {
            answer.flags.push_back(
                {"used-pair",
                 {QS_SAY("core", "%1 is used: clean it and read its power before it is given"),
                  {stock[part.line].name}},
                 "common practice"});
            return;
        }
}

void settleByStock(const PersonRecord& person, std::span<const StockLine> stock, const Profile& profile,
                   const FittingRules& rules, const MatchOptions& options, Recommendation& answer)
{
    auto& lists = answer.candidates;
    lists = findCandidates(*answer.need, stock, profile, rules.settings, options.candidates);
    for (auto* list : {&lists.ranked, &lists.misses})
        for (auto& candidate : *list)
            nameSources(candidate.fit, profile);
    const std::size_t before = lists.ranked.size();
    tryTyped(person, options, profile, answer);
    tellUsed(stock, answer);
    const bool triedAndShort = lists.ranked.size() < before;
    if (!lists.ranked.empty() && lists.ranked.front().fit.acceptable()) {
        const auto& fit = lists.ranked.front().fit;
        const auto* caution = fit.firstWith(Band::caution);
        if (caution == nullptr)
            settle(answer, Verdict::stock, "served",
                   {QS_SAY("core", "%1 fits"), {partNames(lists.ranked.front(), stock)}});
        else
            settle(answer, Verdict::stock, "caution", cautionSentence(*caution));
        return;
    }
    if (!lists.ranked.empty() && !triedAndShort) {
        answer.needs.push_back(
            {QS_SAY("core", "try %1 and type the acuity with it"), {partNames(lists.ranked.front(), stock)}});
        settle(answer, Verdict::incomplete, "on_trial", answer.needs.back());
        return;
    }
    const auto lacks = curable(lists);
    if (!lacks.empty() && !triedAndShort)
        return settleIncomplete(answer, lacks);
    settleCustom(stock, profile, rules, options, answer);
    findInterim(person, profile, stock, rules, options.candidates.index, answer);
    suggestBalance(person, profile, stock, rules, options.candidates.index, answer);
}

void answerPurpose(const PersonRecord& person, std::span<const StockLine> stock, const FittingRules& rules,
                   const MatchOptions& options, Recommendation& answer)
{
    const Profile* profile = rules.find(answer.profile);
    const auto need = needFor(person, answer.purpose, rules.settings);
    if (need)
        answer.need = need.value();
    if (answer.need && options.assumeCentred && !answer.need->pdKnown)
        answer.need->pdKnown = answer.need->pdFollowsCentres = true;
    addReferral(person, answer);
    addCautions(person, answer);
    if (profile == nullptr) {
        return settleIncomplete(
            answer, {{"profile_unknown", {QS_SAY("core", "a rules profile named %1"), {answer.profile}}}});
    }
    if (answer.need)
        judgeWithoutStock(person, *profile, answer);
    addRecordCautions(person, options, answer);
    if (answer.referral == Referral::before)
        return settle(answer, Verdict::refer, "refer", answer.flags.front().sentence);
    auto lacks = missingFor(person, answer.purpose);
    const bool childObjective = person.child() && person.objectiveOnly;
    if (auto why = whyNothingNeeded(person, answer); !why.empty() && !childObjective)
        return settle(answer, Verdict::none, "none", std::move(why));
    if (!person.eyes.right.seeing() && !person.eyes.left.seeing())
        lacks.push_back({"final_missing", {QS_SAY("core", "a final prescription for at least one eye"), {}}});
    else if (!need)
        lacks.push_back({"addition_missing", need.complaint().sentence});
    if (!lacks.empty())
        return settleIncomplete(answer, lacks);
    settleByStock(person, stock, *profile, rules, options, answer);
}

} // namespace

std::string profileFor(const PersonRecord& person, Purpose purpose)
{
    if (purpose == Purpose::near || purpose == Purpose::intermediate)
        return "adult-near";
    const bool childOrUnknown = person.child() || !person.age;
    return childOrUnknown ? "school" : "adult-distance";
}

std::vector<Recommendation> recommend(const PersonRecord& person, std::span<const StockLine> stock,
                                      const FittingRules& rules, const MatchOptions& options)
{
    std::optional<StockIndex> own;
    MatchOptions indexed = options;
    if (indexed.candidates.index == nullptr)
        indexed.candidates.index = &own.emplace(stock);
    std::vector<Recommendation> answers;
    for (const Purpose purpose : purposesOf(person)) {
        Recommendation answer;
        answer.person = person.person;
        answer.purpose = purpose;
        answer.profile = options.profile.empty() ? profileFor(person, purpose) : options.profile;
        answerPurpose(person, stock, rules, indexed, answer);
        if (const auto* profile = rules.find(answer.profile); options.details && profile != nullptr)
            addDetails(person, *profile, options, answer);
        answers.push_back(std::move(answer));
    }
    if (answers.size() == 2) {
        const auto loss = [](const Recommendation& answer) {
            return answer.bareEyes ? answer.bareEyes->cost : 0.0;
        };
        answers[loss(answers[1]) > loss(answers[0]) ? 0 : 1].secondPair = true;
    }
    return answers;
}

} // namespace quarterstep
