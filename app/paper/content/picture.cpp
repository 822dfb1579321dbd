// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/content/picture.hpp"

#include "app/paper/content/html_page.hpp"
#include "app/paper/content/paper_words.hpp"
#include "app/paper/content/plain_text.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace quarterstep
{
namespace
{

constexpr double left = 16.0; ///< mm, for the figures of the axis
constexpr double right = 4.0;
constexpr double top = 4.0;
constexpr double bottom = 10.0;
constexpr std::size_t fewPoints = 6; ///< up to this many each has its name beside it

/// A step of 1, 2 or 5 times a power of ten that cuts `most` into about four.
double stepFor(double most)
{
    const double rough = std::max(most, 1e-6) / 4.0;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double factor : {1.0, 2.0, 5.0})
        if (rough <= factor * power)
            return factor * power;
    return 10.0 * power;
}

QString number(std::int64_t value)
{
    return ltr(QString::number(value));
}

QString tidy(double value)
{
    return QString::number(value, 'g', 4);
}

/// Axes and what stands between them.
class Plot
{
  public:
    Plot(Picture& picture, double mostX, double mostY)
        : picture_(picture), mostX_(std::max(mostX, 1e-9)), mostY_(std::max(mostY, 1e-9))
    {
    }

    [[nodiscard]] QPointF at(double x, double y) const
    {
        const double wide = picture_.width - left - right;
        const double high = picture_.height - top - bottom;
        return {left + wide * std::clamp(x / mostX_, 0.0, 1.0),
                picture_.height - bottom - high * std::clamp(y / mostY_, 0.0, 1.0)};
    }

    void path(PictureRole role, const std::vector<std::pair<double, double>>& points)
    {
        PicturePart part;
        part.role = role;
        for (const auto& [x, y] : points)
            part.points.push_back(at(x, y));
        picture_.parts.push_back(std::move(part));
    }

    void level(PictureRole role, double y) { path(role, {{0.0, y}, {mostX_, y}}); }

    void mark(PictureRole role, double x, double y, const QStringList& row)
    {
        PicturePart part;
        part.kind = PicturePart::Kind::mark;
        part.role = role;
        part.points = {at(x, y)};
        part.row = row;
        picture_.parts.push_back(std::move(part));
    }

    void words(QPointF place, const QString& text, int anchor)
    {
        PicturePart part;
        part.kind = PicturePart::Kind::words;
        part.points = {place};
        part.text = text;
        part.anchor = anchor;
        picture_.parts.push_back(std::move(part));
    }

    /// Beside its mark, on the side where there is room.
    void name(double x, double y, const QString& text)
    {
        const bool toTheRight = 2.0 * x < mostX_;
        words(at(x, y) + QPointF(toTheRight ? 2.2 : -2.2, -1.2), text, toTheRight ? -1 : 1);
    }

    void axes(const QString& xName, bool percentX, bool percentY)
    {
        path(PictureRole::axis, {{0.0, mostY_}, {0.0, 0.0}, {mostX_, 0.0}});
        const auto told = [](double value, bool percent) {
            return percent ? tidy(100.0 * value) + QStringLiteral(" %") : tidy(value);
        };
        for (double y = 0.0; y <= mostY_ * 1.0001; y += stepFor(mostY_))
            words(at(0.0, y) + QPointF(-1.5, 1.0), told(y, percentY), 1);
        for (double x = 0.0; x <= mostX_ * 0.9; x += stepFor(mostX_))
            words(at(x, 0.0) + QPointF(0.0, 4.0), told(x, percentX), 0);
        words(QPointF(picture_.width - right, picture_.height - 1.5), xName, 1);
    }

  private:
    Picture& picture_;
    double mostX_;
    double mostY_;
};

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
    return ltr(tidy(std::round(limits.lower * 1000.0) / 10.0) + QStringLiteral(" – ") +
               tidy(std::round(limits.upper * 1000.0) / 10.0) + QStringLiteral(" %"));
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
void addLimits(Plot& plot, const FunnelChart& chart, double most)
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

QString formatted(QPointF point)
{
    return QString::number(point.x(), 'f', 2) + QLatin1Char(',') + QString::number(point.y(), 'f', 2);
}

const char* classOf(PictureRole role)
{
    constexpr const char* words[] = {"axis", "centre", "alert", "alarm", "plain", "early", "beyond"};
    return words[static_cast<std::size_t>(role)];
}

QString markShape(const PicturePart& part)
{
    const auto at = part.points.front();
    switch (part.role) {
    case PictureRole::early:
        return QStringLiteral("<rect x=\"%1\" y=\"%2\" width=\"2.4\" height=\"2.4\"/>")
            .arg(at.x() - 1.2, 0, 'f', 2)
            .arg(at.y() - 1.2, 0, 'f', 2);
    case PictureRole::beyond:
        return QStringLiteral("<path d=\"M%1 l1.8,1.8 l-1.8,1.8 l-1.8,-1.8 z\"/>")
            .arg(formatted(at - QPointF(0.0, 1.8)));
    default:
        return QStringLiteral("<circle cx=\"%1\" cy=\"%2\" r=\"1.1\"/>")
            .arg(at.x(), 0, 'f', 2)
            .arg(at.y(), 0, 'f', 2);
    }
}

QString svgPart(const PicturePart& part)
{
    const auto role = QLatin1String(classOf(part.role));
    if (part.kind == PicturePart::Kind::words) {
        const char* anchor = part.anchor < 0 ? "start" : part.anchor > 0 ? "end" : "middle";
        return QStringLiteral("<text x=\"%1\" y=\"%2\" text-anchor=\"%3\">%4</text>")
            .arg(part.points.front().x(), 0, 'f', 2)
            .arg(part.points.front().y(), 0, 'f', 2)
            .arg(QLatin1String(anchor), withoutIsolates(part.text).toHtmlEscaped());
    }
    if (part.kind == PicturePart::Kind::mark) {
        const auto row = withoutIsolates(part.row.join(QStringLiteral(" | "))).toHtmlEscaped();
        return QStringLiteral("<g class=\"%1\" data-row=\"%2\"><title>%2</title>%3</g>")
            .arg(role, row, markShape(part));
    }
    QStringList points;
    for (const auto& point : part.points)
        points << formatted(point);
    return QStringLiteral("<polyline class=\"%1\" points=\"%2\"/>").arg(role, points.join(QLatin1Char(' ')));
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
    Plot plot(twin.picture, largest * 1.05, most);
    plot.axes(paperWords(QT_TRANSLATE_NOOP("paper", "hand-overs judged")), false, true);
    plot.level(PictureRole::centre, chart.share);
    addLimits(plot, chart, most);
    for (const auto& point : chart.points) {
        const QStringList row{typed(point.name),
                              number(point.tally.judged),
                              number(point.tally.mismatches),
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
            .arg(number(std::int64_t(series.limits.centre)), number(series.limits.upper));
    auto highest = static_cast<double>(std::max(series.limits.upper, series.running));
    for (const auto& point : series.points)
        highest = std::max(highest, static_cast<double>(point.good));
    Plot plot(twin.picture, static_cast<double>(series.points.size()) + 1.0, highest * 1.1 + 1.0);
    plot.axes(paperWords(QT_TRANSLATE_NOOP("paper", "runs, the last one still open")), false, false);
    plot.level(PictureRole::centre, series.limits.centre);
    plot.level(PictureRole::alarm, static_cast<double>(series.limits.upper));
    std::vector<std::pair<double, double>> line;
    const auto add = [&](std::int64_t good, bool beyond, const QString& name) {
        const QStringList row{name, number(good),
                              beyond ? paperWords(QT_TRANSLATE_NOOP("paper", "better than the share says"))
                                     : paperWords(QT_TRANSLATE_NOOP("paper", "within"))};
        const double x = static_cast<double>(twin.rows.size());
        line.emplace_back(x, static_cast<double>(good));
        plot.mark(beyond ? PictureRole::beyond : PictureRole::plain, x, static_cast<double>(good), row);
        twin.rows.push_back(row);
    };
    for (const auto& point : series.points)
        add(point.good, point.beyond, number(std::int64_t(twin.rows.size())));
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
    Plot plot(twin.picture, static_cast<double>(chart.points.size()) + 1.0, std::min(1.0, highest));
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
                              number(point.tally.judged),
                              number(point.tally.mismatches),
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
            .arg(number(plan.plan.sample), number(plan.plan.allowed));
    Plot plot(twin.picture, curve.empty() ? 1.0 : curve.back().share, 1.0);
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

QString svgOf(const Picture& picture)
{
    auto svg = QStringLiteral("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %1 %2\" role=\"img\" "
                              "direction=\"ltr\"><title>%3</title><desc>%4</desc>")
                   .arg(picture.width)
                   .arg(picture.height)
                   .arg(withoutIsolates(picture.title).toHtmlEscaped(),
                        withoutIsolates(picture.says).toHtmlEscaped());
    for (const auto& part : picture.parts)
        svg += svgPart(part);
    return svg + QStringLiteral("</svg>");
}

} // namespace quarterstep
