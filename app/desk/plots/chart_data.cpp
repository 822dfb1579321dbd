// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/chart_data.hpp"

#include "app/session/wording.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

QString chartWords(const char* text)
{
    return QCoreApplication::translate("ChartData", text);
}

QString percentOf(double share)
{
    return ltr(QStringLiteral("%1 %").arg(QString::number(100.0 * share, 'f', 1)));
}

QString tallyWords(const Tally& tally)
{
    return chartWords(QT_TRANSLATE_NOOP("ChartData", "%1 of %2 at odds, %3"))
        .arg(tally.mismatches)
        .arg(tally.judged)
        .arg(percentOf(tally.share()));
}

} // namespace

QString shareTick(double share)
{
    return ltr(QStringLiteral("%1 %").arg(QString::number(100.0 * share, 'g', 4)));
}

ChartData chartOf(const FunnelChart& funnel)
{
    ChartData chart;
    chart.across = chartWords(QT_TRANSLATE_NOOP("ChartData", "hand-overs judged"));
    chart.up = chartWords(QT_TRANSLATE_NOOP("ChartData", "pair and record at odds"));
    for (const auto& point : funnel.points)
        chart.dots.push_back({static_cast<double>(point.tally.judged), point.tally.share(),
                              QString::fromStdString(point.name), tallyWords(point.tally),
                              static_cast<int>(point.funnel)});
    ChartLine middle{{}, false, true};
    ChartLine lowAlert;
    ChartLine highAlert;
    ChartLine lowAlarm{{}, true, false};
    ChartLine highAlarm{{}, true, false};
    for (const auto& step : funnel.limits) {
        const auto at = static_cast<double>(step.judged);
        middle.points.emplace_back(at, funnel.share);
        lowAlert.points.emplace_back(at, step.alert.lower);
        highAlert.points.emplace_back(at, step.alert.upper);
        lowAlarm.points.emplace_back(at, step.alarm.lower);
        highAlarm.points.emplace_back(at, step.alarm.upper);
    }
    chart.lines = {middle, lowAlert, highAlert, lowAlarm, highAlarm};
    if (chart.dots.empty())
        chart.whyNot = chartWords(QT_TRANSLATE_NOOP("ChartData", "No hand-over was judged yet."));
    return chart;
}

ChartData chartOf(const GSeries& series)
{
    ChartData chart;
    chart.across = chartWords(QT_TRANSLATE_NOOP("ChartData", "mismatches in order"));
    chart.up = chartWords(QT_TRANSLATE_NOOP("ChartData", "good hand-overs before it"));
    chart.joined = true;
    chart.percent = false;
    chart.whyNot = series.drawn() ? QString() : say(series.whyNot);
    double at = 0.0;
    for (const auto& point : series.points) {
        at += 1.0;
        chart.dots.push_back(
            {at, static_cast<double>(point.good), QString::number(static_cast<int>(at)),
             chartWords(QT_TRANSLATE_NOOP("ChartData", "%1 good hand-overs before it")).arg(point.good),
             point.beyond ? 1 : 0});
    }
    const double end = at + 0.5;
    for (const auto& [height, middle] : {std::pair{static_cast<double>(series.limits.centre), true},
                                         std::pair{static_cast<double>(series.limits.upper), false}})
        chart.lines.push_back({{{0.5, height}, {end, height}}, !middle, middle});
    return chart;
}

ChartData chartOf(const PChart& pchart)
{
    ChartData chart;
    chart.across = chartWords(QT_TRANSLATE_NOOP("ChartData", "weeks in order"));
    chart.up = chartWords(QT_TRANSLATE_NOOP("ChartData", "pair and record at odds"));
    chart.joined = true;
    chart.whyNot = pchart.drawn() ? QString() : say(pchart.whyNot);
    ChartLine middle{{}, false, true};
    ChartLine low{{}, true, false};
    ChartLine high{{}, true, false};
    double at = 0.0;
    for (const auto& point : pchart.points) {
        at += 1.0;
        chart.dots.push_back({at, point.tally.share(), QString::fromStdString(point.name),
                              tallyWords(point.tally), point.beyond ? 2 : 0});
        for (const double edge : {at - 0.5, at + 0.5}) { // the limits step with the volume of each week
            middle.points.emplace_back(edge, pchart.share);
            low.points.emplace_back(edge, point.limits.lower);
            high.points.emplace_back(edge, point.limits.upper);
        }
    }
    chart.lines = {middle, low, high};
    return chart;
}

} // namespace quarterstep
