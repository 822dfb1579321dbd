// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/packing_curve.hpp"

#include "app/session/pack_lists.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace quarterstep
{
namespace
{

QString curveWords(const char* text)
{
    return QCoreApplication::translate("PackingCurve", text);
}

double units(long thousandths)
{
    return static_cast<double>(thousandths) / 1000.0;
}

ChartDot dotAt(long spend, double share, const QString& name, int look)
{
    return {units(spend), share, name,
            curveWords(QT_TRANSLATE_NOOP("PackingCurve", "%1 % served for %2"))
                .arg(QString::number(100.0 * share, 'f', 1), moneyWords(static_cast<double>(spend))),
            look};
}

} // namespace

ChartData packingCurve(const PackAnswer& answer, long budget, const QString& currency)
{
    ChartData chart;
    chart.across = currency.isEmpty()
                       ? curveWords(QT_TRANSLATE_NOOP("PackingCurve", "money spent"))
                       : curveWords(QT_TRANSLATE_NOOP("PackingCurve", "money spent, %1")).arg(ltr(currency));
    chart.up = curveWords(QT_TRANSLATE_NOOP("PackingCurve", "share of needs served"));
    if (answer.curve.empty()) {
        chart.whyNot = curveWords(QT_TRANSLATE_NOOP("PackingCurve", "Plan first: the curve comes with it."));
        return chart;
    }
    ChartLine curve;
    curve.main = true;
    for (const auto& point : answer.curve) { // a pack is bought whole: a step
        if (!curve.points.empty())
            curve.points.emplace_back(units(point.spend), curve.points.back().second);
        curve.points.emplace_back(units(point.spend), point.share);
    }
    // A box that is nearly full serves nearly all: what more money does would be flat from 0.
    constexpr double step = 0.05;
    const double lowest = answer.curve.front().share;
    const double spread = answer.curve.back().share - lowest;
    chart.floor = std::max(0.0, std::floor((lowest - spread) / step) * step);
    const double end = std::max({units(budget), units(answer.spend), units(answer.curve.back().spend)});
    curve.points.emplace_back(end, curve.points.back().second);
    ChartLine bound{{{0.0, answer.bound}, {end, answer.bound}}, true, false, false};
    ChartLine money{{{units(budget), 0.0}, {units(budget), 1.0}}, false, false, false};
    chart.lines = {curve, bound, money};
    if (answer.knee > 0 && answer.knee < answer.curve.size())
        chart.dots.push_back(dotAt(answer.curve[answer.knee].spend, answer.curve[answer.knee].share,
                                   curveWords(QT_TRANSLATE_NOOP("PackingCurve", "the knee")), 1));
    chart.dots.push_back(dotAt(answer.spend, answer.fittedShare,
                               curveWords(QT_TRANSLATE_NOOP("PackingCurve", "this plan")), 2));
    return chart;
}

} // namespace quarterstep
