// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/auditing/lot.hpp"

#include "core/auditing/even_draw.hpp"
#include "core/auditing/rates.hpp"

#include <boost/math/special_functions/gamma.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace quarterstep
{

namespace
{

constexpr double riskSlack = 1e-12; // a risk equal to the one asked for is kept to

double logChoose(int of, int some)
{
    return boost::math::lgamma(of + 1.0) - boost::math::lgamma(some + 1.0) -
           boost::math::lgamma(of - some + 1.0);
}

} // namespace

std::optional<LotPlan> smallestPlan(double fine, double bad, const PlanRisks& atMost)
{
    if (fine < 0.0 || fine >= bad || bad > 1.0)
        return std::nullopt;
    int allowed = 0;
    for (int sample = 1; sample <= largestSample; ++sample) {
        // The consumer's risk rises with the number allowed and falls with the sample: never step back.
        while (allowed < sample &&
               risksOf({sample, allowed}, fine, bad).provider > atMost.provider + riskSlack)
            ++allowed;
        const SamplingPlan plan{sample, allowed};
        const auto risks = risksOf(plan, fine, bad);
        if (allowed < sample && risks.consumer <= atMost.consumer + riskSlack)
            return LotPlan{plan, fine, bad, risks};
    }
    return std::nullopt;
}

LotPlan planOf(int sample, std::optional<int> allowed, double fine, double bad)
{
    const SamplingPlan plan = allowed ? SamplingPlan{sample, *allowed} : planFor(sample, fine, bad);
    return {plan, fine, bad, risksOf(plan, fine, bad)};
}

double acceptedInLot(const SamplingPlan& plan, int lot, int failing)
{
    assert(failing >= 0 && failing <= lot && plan.sample <= lot);
    const int least = std::max(0, plan.sample - (lot - failing)); // so many must be among the sample
    const int most = std::min({plan.allowed, plan.sample, failing});
    double sum = 0.0;
    for (int found = least; found <= most; ++found)
        sum += std::exp(logChoose(failing, found) + logChoose(lot - failing, plan.sample - found) -
                        logChoose(lot, plan.sample));
    return std::min(1.0, sum);
}

std::vector<OperatingPoint> operatingCurve(const SamplingPlan& plan, std::optional<int> lot, double step,
                                           double most)
{
    std::vector<OperatingPoint> curve;
    const auto count = static_cast<int>(std::floor(most / step + 1e-9));
    for (int i = 0; i <= count; ++i) {
        OperatingPoint point{i * step, acceptedAt(plan, i * step), {}};
        if (lot && plan.sample <= *lot)
            point.of = acceptedInLot(plan, *lot, static_cast<int>(std::lround(point.share * *lot)));
        curve.push_back(point);
    }
    return curve;
}

std::vector<std::size_t> drawnInOrder(std::size_t lot, std::size_t count, std::uint64_t seed)
{
    EvenDraw draw(seed);
    std::vector<std::size_t> places(lot);
    std::iota(places.begin(), places.end(), std::size_t{0});
    count = std::min(count, lot);
    for (std::size_t i = 0; i < count; ++i) // Fisher and Yates, from the front
        std::swap(places[i], places[i + draw.upTo(lot - i - 1)]);
    places.resize(count);
    return places;
}

const char* wordOf(LotDecision decision)
{
    constexpr const char* words[] = {"accepted", "refused", "open"};
    return words[static_cast<std::size_t>(decision)];
}

LotCount countRows(std::span<const RowOutcome> rows, const SamplingPlan& plan)
{
    LotCount count;
    for (const auto row : rows) {
        if (row == RowOutcome::unread)
            continue;
        if (count.read == plan.sample) {
            ++count.spareRead;
            continue;
        }
        ++count.read;
        count.failed += row == RowOutcome::good ? 0 : 1;
    }
    return count;
}

LotDecision decide(const LotCount& count, const SamplingPlan& plan)
{
    if (count.failed > plan.allowed)
        return LotDecision::refused;
    return count.failed + (plan.sample - count.read) <= plan.allowed ? LotDecision::accepted
                                                                     : LotDecision::open;
}

Sentence decisionSentence(const LotCount& count, const SamplingPlan& plan)
{
    const std::vector<std::string> numbers{std::to_string(count.failed), std::to_string(count.read),
                                           std::to_string(plan.sample), std::to_string(plan.allowed),
                                           std::to_string(plan.sample - count.read)};
    switch (decide(count, plan)) {
    case LotDecision::refused:
        return {QS_SAY("core", "refused: %1 of %2 read failed, more than the %4 allowed among %3"), numbers};
    case LotDecision::accepted:
        if (count.read < plan.sample)
            return {
                QS_SAY("core",
                       "accepted: %1 of %2 read failed; even if the %5 not read failed too, it would be no "
                       "more than the %4 allowed among %3"),
                numbers};
        return {QS_SAY("core", "accepted: %1 of %2 read failed, no more than the %4 allowed among %3"),
                numbers};
    case LotDecision::open:
        break;
    }
    return {
        QS_SAY("core", "open: %1 of %2 read failed, %4 are allowed among %3; %5 pairs are still to be read"),
        numbers};
}

} // namespace quarterstep
