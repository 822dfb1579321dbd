// SPDX-License-Identifier: GPL-3.0-or-later
// The pictures of the audit, each with its table.
#include "app/paper/content/picture.hpp"

#include "app/paper/content/paper_words.hpp"
#include "app/paper/content/picture_frame.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace quarterstep
{
namespace
{

constexpr std::size_t fewPoints = 6; ///< up to this many each has its name beside it

PictureRole roleOf(Funnel funnel)
{
    return funnel == Funnel::inside  ? PictureRole::plain
           : funnel == Funnel::alert ? PictureRole::early
                                     : PictureRole::beyond;
}

QString funnelWords(Funnel funnel)
{
    if (funnel == Funnel::inside)
        return paperWords(QT_TRANSLATE_NOOP("paper", "within"));
    return funnel == Funnel::alert ? paperWords(QT_TRANSLATE_NOOP("paper", "beyond 95 %"))
                                   : paperWords(QT_TRANSLATE_NOOP("paper", "beyond 99.9 %"));
}

QString limitsWords(const ShareLimits& limits)
{
    return ltr(shortNumber(std::round(limits.lower * 1000.0) / 10.0) + QStringLiteral(" – ") +
               shortNumber(std::round(limits.upper * 1000.0) / 10.0) + QStringLiteral(" %"));
}

double highestShare(const FunnelChart& chart)
{
    double most = 2.0 * chart.share;
    for (const auto& point : chart.points) {
        most = std::max(most, 1.15 * point.tally.share());
        most =
            std::max(most, 1.1 * static_cast<double>(point.alarm) / static_cast<double>(point.tally.judged));
    }
    return std::min(1.0, std::max(most, 0.05));
}

/// Both limits of a funnel, cut where they leave the picture.
void addLimits(PictureFrame& plot, const FunnelChart& chart, double most)
{
    using Points = std::vector<std::pair<double, double>>;
    Points alert;
    Points alarm;
    Points lower;
    for (const auto& step : chart.limits) {
        const auto x = static_cast<double>(step.judged);
        if (step.alert.upper <= most)
            alert.emplace_back(x, step.alert.upper);
        if (step.alarm.upper <= most)
            alarm.emplace_back(x, step.alarm.upper);
        lower.emplace_back(x, step.alert.lower);
    }
    plot.path(PictureRole::alert, alert);
    plot.path(PictureRole::alert, lower);
    plot.path(PictureRole::alarm, alarm);
}

QStringList headOf(std::initializer_list<const char*> words, const QString& first)
{
    QStringList head{first};
    for (const char* each : words)
        head << paperWords(each);
    return head;
}

} // namespace

QString shareWords(double share)
{
    return ltr(QString::number(100.0 * share, 'f', 1) + QStringLiteral(" %"));
}

PictureTwin funnelTwin(const FunnelChart& chart, const QString& title, const QString& names, double height)
{
    PictureTwin twin;
    twin.picture.height = height;
    twin.widths = {5, 2, 2, 2, 4, 3};
    twin.rows.push_back(
        headOf({QT_TRANSLATE_NOOP("paper", "Judged"), QT_TRANSLATE_NOOP("paper", "At odds"),
                QT_TRANSLATE_NOOP("paper", "Share"), QT_TRANSLATE_NOOP("paper", "95 % limits"),
                QT_TRANSLATE_NOOP("paper", "Funnel")},
               names));
    twin.picture.title = title;
    twin.picture.says =
        paperWords(QT_TRANSLATE_NOOP(
                       "paper", "Share at odds against the number judged; lines: the share of all %1, the "
                                "limits of chance at 95 % (dashed) and 99.9 % (solid)"))
            .arg(shareWords(chart.share));
    double largest = 1.0;
    for (const auto& point : chart.points)
        largest = std::max(largest, static_cast<double>(point.tally.judged));
    const double most = highestShare(chart);
    PictureFrame plot(twin.picture, largest * 1.05, most);
    plot.axes(paperWords(QT_TRANSLATE_NOOP("paper", "hand-overs judged")), false, true);
    plot.level(PictureRole::centre, chart.share);
    addLimits(plot, chart, most);
    for (const auto& point : chart.points) {
        const QStringList row{typed(point.name),
                              figure(point.tally.judged),
                              figure(point.tally.mismatches),
                              shareWords(point.tally.share()),
                              limitsWords(point.exact),
                              funnelWords(point.funnel)};
        const auto x = static_cast<double>(point.tally.judged);
        plot.mark(roleOf(point.funnel), x, point.tally.share(), row);
        if (point.funnel != Funnel::inside || chart.points.size() <= fewPoints)
            plot.name(x, point.tally.share(), typed(point.name));
        twin.rows.push_back(row);
    }
    return twin;
}

PictureTwin runsTwin(const GSeries& series, const QString& title)
{
    PictureTwin twin;
    twin.widths = {2, 3, 5};
    twin.rows.push_back(
        headOf({QT_TRANSLATE_NOOP("paper", "Good ones before it"), QT_TRANSLATE_NOOP("paper", "Chart")},
               paperWords(QT_TRANSLATE_NOOP("paper", "Run"))));
    twin.picture.title = title;
    twin.picture.says =
        paperWords(QT_TRANSLATE_NOOP("paper",
                                     "Good hand-overs between two at odds, in their order; centre %1, a run "
                                     "longer than %2 is better than the share says"))
            .arg(figure(std::int64_t(series.limits.centre)), figure(series.limits.upper));
    auto highest = static_cast<double>(std::max(series.limits.upper, series.running));
    for (const auto& point : series.points)
        highest = std::max(highest, static_cast<double>(point.good));
    PictureFrame plot(twin.picture, static_cast<double>(series.points.size()) + 1.0, highest * 1.1 + 1.0);
    plot.axes(paperWords(QT_TRANSLATE_NOOP("paper", "runs, the last one still open")), false, false);
    plot.level(PictureRole::centre, series.limits.centre);
    plot.level(PictureRole::alarm, static_cast<double>(series.limits.upper));
    std::vector<std::pair<double, double>> line;
    const auto add = [&](std::int64_t good, bool beyond, const QString& name) {
        const QStringList row{name, figure(good),
                              beyond ? paperWords(QT_TRANSLATE_NOOP("paper", "better than the share says"))
                                     : paperWords(QT_TRANSLATE_NOOP("paper", "within"))};
        const double x = static_cast<double>(twin.rows.size());
        line.emplace_back(x, static_cast<double>(good));
        plot.mark(beyond ? PictureRole::beyond : PictureRole::plain, x, static_cast<double>(good), row);
        twin.rows.push_back(row);
    };
    for (const auto& point : series.points)
        add(point.good, point.beyond, figure(std::int64_t(twin.rows.size())));
    add(series.running, series.runningBeyond, paperWords(QT_TRANSLATE_NOOP("paper", "open")));
    plot.path(PictureRole::axis, line);
    return twin;
}

PictureTwin pChartTwin(const PChart& chart, const QString& title, double height)
{
    PictureTwin twin;
    twin.picture.height = height;
    twin.widths = {4, 2, 2, 2, 4, 3};
    twin.rows.push_back(headOf({QT_TRANSLATE_NOOP("paper", "Judged"), QT_TRANSLATE_NOOP("paper", "At odds"),
                                QT_TRANSLATE_NOOP("paper", "Share"), QT_TRANSLATE_NOOP("paper", "Limits"),
                                QT_TRANSLATE_NOOP("paper", "Chart")},
                               paperWords(QT_TRANSLATE_NOOP("paper", "Week from"))));
    twin.picture.title = title;
    twin.picture.says =
        paperWords(QT_TRANSLATE_NOOP("paper", "Share at odds by week; centre %1, limits at three standard "
                                              "deviations, which step with the volume"))
            .arg(shareWords(chart.share));
    double highest = 2.0 * chart.share;
    for (const auto& point : chart.points)
        highest = std::max({highest, point.limits.upper * 1.1, point.tally.share() * 1.1});
    PictureFrame plot(twin.picture, static_cast<double>(chart.points.size()) + 1.0, std::min(1.0, highest));
    plot.axes(paperWords(QT_TRANSLATE_NOOP("paper", "weeks")), false, true);
    plot.level(PictureRole::centre, chart.share);
    std::vector<std::pair<double, double>> upper;
    std::vector<std::pair<double, double>> lower;
    for (const auto& point : chart.points) {
        const double x = static_cast<double>(twin.rows.size());
        for (const double side : {x - 0.5, x + 0.5}) {
            upper.emplace_back(side, point.limits.upper);
            lower.emplace_back(side, point.limits.lower);
        }
        const QStringList row{ltr(point.name),
                              figure(point.tally.judged),
                              figure(point.tally.mismatches),
                              shareWords(point.tally.share()),
                              limitsWords(point.limits),
                              point.beyond ? paperWords(QT_TRANSLATE_NOOP("paper", "beyond"))
                                           : paperWords(QT_TRANSLATE_NOOP("paper", "within"))};
        plot.mark(point.beyond ? PictureRole::beyond : PictureRole::plain, x, point.tally.share(), row);
        twin.rows.push_back(row);
    }
    plot.path(PictureRole::alarm, upper);
    plot.path(PictureRole::alarm, lower);
    return twin;
}

PictureTwin curveTwin(const std::vector<OperatingPoint>& curve, const LotPlan& plan, const QString& title)
{
    PictureTwin twin;
    twin.widths = {3, 4, 4};
    twin.rows.push_back(headOf(
        {QT_TRANSLATE_NOOP("paper", "Large lot accepted"), QT_TRANSLATE_NOOP("paper", "This lot accepted")},
        paperWords(QT_TRANSLATE_NOOP("paper", "Failing"))));
    twin.picture.title = title;
    twin.picture.says =
        paperWords(QT_TRANSLATE_NOOP("paper", "How likely a lot is accepted by the share that fails in it: "
                                              "%1 read, at most %2 may fail"))
            .arg(figure(plan.plan.sample), figure(plan.plan.allowed));
    PictureFrame plot(twin.picture, curve.empty() ? 1.0 : curve.back().share, 1.0);
    plot.axes(paperWords(QT_TRANSLATE_NOOP("paper", "failing")), true, true);
    std::vector<std::pair<double, double>> line;
    for (const auto& point : curve) {
        const QStringList row{shareWords(point.share), shareWords(point.accepted),
                              point.of ? shareWords(*point.of) : QStringLiteral("–")};
        line.emplace_back(point.share, point.accepted);
        plot.mark(PictureRole::plain, point.share, point.accepted, row);
        twin.rows.push_back(row);
    }
    plot.path(PictureRole::alarm, line);
    for (const double share : {plan.fine, plan.bad})
        plot.path(PictureRole::alert, {{share, 0.0}, {share, 1.0}});
    return twin;
}

} // namespace quarterstep
