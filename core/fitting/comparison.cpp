// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/comparison.hpp"

#include "core/fitting/reasons.hpp"
#include "core/fitting/without_stock.hpp"

#include <cmath>
#include <cstdio>
#include <tuple>

namespace quarterstep
{

namespace
{

/// The two candidates with what is compared.
struct Side {
    const Candidate* candidate = nullptr;
    RankKey key;
    std::string name;

    [[nodiscard]] bool fails() const { return candidate->fit.band == Band::fails; }
};

std::string threeDecimals(double value)
{
    char text[32];
    std::snprintf(text, sizeof text, "%ld.%03ld", std::lround(value * 1000.0) / 1000,
                  std::lround(value * 1000.0) % 1000);
    return text;
}

double balanceOf(const Fit& fit)
{
    return fit.eyes.right && fit.eyes.left ? std::abs(fit.eyes.right->error.m - fit.eyes.left->error.m) : 0.0;
}

/// First key that differs; both within limits or on trial.
RankStep stepBetween(const RankKey& a, const RankKey& b)
{
    if (a.onTrial != b.onTrial)
        return RankStep::onTrial;
    if (a.costStep != b.costStep)
        return RankStep::cost;
    if (a.cautions != b.cautions)
        return RankStep::cautions;
    if (a.worseSideEyes != b.worseSideEyes)
        return RankStep::worseSide;
    if (a.balanceStep != b.balanceStep)
        return RankStep::balance;
    if (a.prismStep != b.prismStep)
        return RankStep::prism;
    if (a.baseOutAtNear != b.baseOutAtNear)
        return RankStep::baseOutAtNear;
    if (a.sizeSteps != b.sizeSteps)
        return RankStep::frameSize;
    if (a.scarcity != b.scarcity)
        return RankStep::scarcity;
    if (a.cost != b.cost)
        return RankStep::exactCost;
    if (a.parts != b.parts)
        return RankStep::parts;
    return a.name != b.name ? RankStep::name : RankStep::same;
}

Sentence costSentence(const Side& upper, const Side& lower)
{
    return {QS_SAY("core", "%1 costs less sight than %2: %3 against %4 logMAR over the eyes"),
            {upper.name, lower.name, threeDecimals(upper.key.cost), threeDecimals(lower.key.cost)}};
}

Sentence figures(const char* text, const Side& upper, const Side& lower, double a, double b)
{
    return {text, {upper.name, lower.name, twoDecimals(a), twoDecimals(b)}};
}

Sentence counts(const char* text, const Side& upper, const Side& lower, long a, long b)
{
    return {text, {upper.name, lower.name, std::to_string(a), std::to_string(b)}};
}

Sentence sentenceFor(RankStep step, const Side& upper, const Side& lower)
{
    const RankKey& a = upper.key;
    const RankKey& b = lower.key;
    const std::vector<std::string> names{upper.name, lower.name};
    switch (step) {
    case RankStep::outsideLimit:
        return {QS_SAY("core", "%1 is within the limits, or may be tried; %2 is outside one"), names};
    case RankStep::onTrial:
        return {QS_SAY("core", "%1 is acceptable as it is; %2 is on trial until the acuity with it is typed"),
                names};
    case RankStep::cost:
        return costSentence(upper, lower);
    case RankStep::cautions:
        return counts(QS_SAY("core", "equal in sight; %1 has fewer cautions than %2: %3 against %4"), upper,
                      lower, a.cautions, b.cautions);
    case RankStep::worseSide:
        return counts(QS_SAY("core", "equal in sight and cautions; %1 errs to the side that people reject in "
                                     "fewer eyes than %2: %3 against %4"),
                      upper, lower, a.worseSideEyes, b.worseSideEyes);
    case RankStep::balance:
        return figures(QS_SAY("core", "equal so far; %1 keeps the eyes in better balance than %2: %3 against "
                                      "%4 D apart"),
                       upper, lower, balanceOf(upper.candidate->fit), balanceOf(lower.candidate->fit));
    case RankStep::prism:
        return figures(
            QS_SAY("core",
                   "equal so far; %1 has less horizontal prism than %2: %3 against %4 prism dioptres"),
            upper, lower, upper.candidate->fit.prismSize, lower.candidate->fit.prismSize);
    case RankStep::baseOutAtNear:
        return {QS_SAY("core", "equal so far; at near, base in (%1) comes before base out (%2)"), names};
    case RankStep::frameSize:
        return counts(QS_SAY("core", "equal so far; the frame of %1 suits the size wanted better than %2: %3 "
                                     "against %4 classes off"),
                      upper, lower, std::lround(a.sizeSteps), std::lround(b.sizeSteps));
    case RankStep::scarcity:
        return {QS_SAY("core", "equal so far; %1 is less scarce in the box than %2"), names};
    case RankStep::exactCost:
        return costSentence(upper, lower);
    case RankStep::parts:
        return counts(
            QS_SAY("core", "equal in all that is judged; %1 is fewer pieces than %2: %3 against %4"), upper,
            lower, static_cast<long>(a.parts), static_cast<long>(b.parts));
    case RankStep::name:
        return {QS_SAY("core", "equal in all that is judged; %1 comes before %2 by name"), names};
    case RankStep::same:
        break;
    }
    return {QS_SAY("core", "%1 and %2 are the same"), names};
}

} // namespace

Comparison whyAbove(const Need& need, std::span<const StockLine> stock, const Profile& profile,
                    const CandidateOptions& options, const Candidate& first, const Candidate& second)
{
    const auto sideOf = [&](const Candidate& candidate) {
        return Side{&candidate, rankKey(need, stock, profile, options, candidate),
                    partNames(candidate, stock)};
    };
    const Side a = sideOf(first);
    const Side b = sideOf(second);
    Comparison answer;
    if (a.fails() != b.fails()) {
        answer.step = RankStep::outsideLimit;
        answer.firstAbove = b.fails();
    } else if (a.fails()) { // misses stand in order of cost alone
        answer.step = a.key.cost != b.key.cost   ? RankStep::cost
                      : a.key.name != b.key.name ? RankStep::name
                                                 : RankStep::same;
        answer.firstAbove = std::tie(a.key.cost, a.key.name) < std::tie(b.key.cost, b.key.name);
    } else {
        answer.step = stepBetween(a.key, b.key);
        answer.firstAbove = a.key < b.key;
    }
    answer.sentence = answer.firstAbove || answer.step == RankStep::same ? sentenceFor(answer.step, a, b)
                                                                         : sentenceFor(answer.step, b, a);
    return answer;
}

} // namespace quarterstep
