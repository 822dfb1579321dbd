// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/auditing/charts.hpp"

#include <algorithm>
#include <set>

namespace quarterstep
{

namespace
{

FunnelStep stepAt(std::int64_t judged, double share)
{
    const auto of = [judged](std::int64_t count) {
        return static_cast<double>(count) / static_cast<double>(judged);
    };
    const auto limits = [&](double tail) {
        return ShareLimits{of(funnelLower(judged, share, tail)), of(funnelUpper(judged, share, tail))};
    };
    return {judged, limits(alertTail), limits(alarmTail)};
}

/// 1 to the largest, evenly, and the sizes of the groups.
std::set<std::int64_t> sizesOf(std::span<const GroupTally> groups, int steps)
{
    std::set<std::int64_t> sizes;
    for (const auto& group : groups)
        if (group.tally.judged > 0)
            sizes.insert(group.tally.judged);
    if (sizes.empty())
        return sizes;
    const std::int64_t largest = *sizes.rbegin();
    for (int i = 0; i < steps; ++i)
        sizes.insert(1 + (largest - 1) * i / std::max(1, steps - 1));
    return sizes;
}

} // namespace

std::int64_t funnelLower(std::int64_t trials, double share, double tail)
{
    std::int64_t low = 0;
    std::int64_t high = trials;
    while (low < high) { // smallest c with P(X <= c) > tail
        const auto middle = low + (high - low) / 2;
        if (binomialUpTo(middle, trials, share) > tail)
            high = middle;
        else
            low = middle + 1;
    }
    return low;
}

FunnelChart funnelChart(std::span<const GroupTally> groups, double share, int steps)
{
    FunnelChart chart;
    chart.share = share;
    for (const auto& group : groups)
        if (group.tally.judged > 0)
            chart.points.push_back({group.name, group.tally, exactLimits(group.tally),
                                    funnelOf(group.tally, share),
                                    funnelUpper(group.tally.judged, share, alertTail),
                                    funnelUpper(group.tally.judged, share, alarmTail)});
    for (const auto judged : sizesOf(groups, steps))
        chart.limits.push_back(stepAt(judged, share));
    return chart;
}

GSeries gSeries(std::span<const GPoint> runs, std::int64_t running, const Tally& all)
{
    GSeries series;
    series.share = all.share();
    series.running = running;
    series.points.assign(runs.begin(), runs.end());
    if (all.mismatches == 0 || all.mismatches == all.judged) {
        series.whyNot =
            all.mismatches == 0
                ? Sentence{QS_SAY("core", "no mismatch, so there is no run between two of them to draw"), {}}
                : Sentence{
                      QS_SAY("core", "every hand-over is a mismatch; there is no run of good ones to draw"),
                      {}};
        return series;
    }
    series.limits = gChart(series.share);
    for (auto& point : series.points)
        point.beyond = point.good > series.limits.upper;
    series.runningBeyond = running > series.limits.upper;
    return series;
}

PChart pChart(std::span<const GroupTally> groups, double share)
{
    PChart chart;
    chart.share = share;
    std::int64_t small = 0;
    std::int64_t without = 0;
    const auto needs = pChartNeeds(share);
    chart.needs = needs.value_or(0);
    for (const auto& group : groups) {
        if (group.tally.judged == 0)
            continue;
        const auto limits = pChartLimits(share, group.tally.judged);
        const double own = group.tally.share();
        chart.points.push_back({group.name, group.tally, limits, own > limits.upper || own < limits.lower});
        small += group.tally.judged < chart.needs ? 1 : 0;
        without += group.tally.mismatches == 0 ? 1 : 0;
    }
    const auto count = static_cast<std::int64_t>(chart.points.size());
    const auto number = [](std::int64_t value) { return std::to_string(value); };
    if (!needs || share >= 1.0)
        chart.whyNot = {needs ? QS_SAY("core", "every hand-over is a mismatch; a p-chart has no limits then")
                              : QS_SAY("core", "no mismatch; a p-chart has no limits then"),
                        {}};
    else if (count < 2)
        chart.whyNot = {QS_SAY("core", "a p-chart compares groups over time, and there are not two yet"), {}};
    else if (small > 0)
        chart.whyNot = {QS_SAY("core",
                               "%1 of %2 groups have fewer than the %3 hand-overs from which a p-chart could "
                               "show at this share that things got better; look at the g-chart"),
                        {number(small), number(count), number(chart.needs)}};
    else if (4 * without >= count)
        chart.whyNot = {
            QS_SAY("core", "%1 of %2 groups have no mismatch, a quarter or more; look at the g-chart"),
            {number(without), number(count)}};
    return chart;
}

} // namespace quarterstep
