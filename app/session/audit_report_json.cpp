// SPDX-License-Identifier: GPL-3.0-or-later
// The report of an audit in JSON; its names are a promise.
#include "app/session/audit_report.hpp"
#include "app/session/json_values.hpp"
#include "app/session/wording.hpp"

#include <QJsonArray>
#include <QJsonObject>

namespace quarterstep
{
namespace
{

const char* flagOf(Funnel funnel)
{
    constexpr const char* words[] = {"inside", "alert", "alarm"};
    return words[static_cast<std::size_t>(funnel)];
}

QJsonValue jsonCount(const ShownCount& count)
{
    return count ? QJsonValue(static_cast<qint64>(*count)) : QJsonValue(QJsonValue::Null);
}

QJsonObject jsonLimits(const ShareLimits& limits)
{
    return {{"lower", jsonNumber(limits.lower)}, {"upper", jsonNumber(limits.upper)}};
}

QJsonObject jsonGroup(const ReportGroup& group)
{
    QJsonObject object{{"name", jsonText(group.name)},
                       {"judged", jsonCount(group.judged)},
                       {"mismatches", jsonCount(group.mismatches)},
                       {"hidden", !group.shown()}};
    if (group.shown()) {
        const Tally tally{*group.judged, *group.mismatches};
        object.insert("share", jsonNumber(tally.share()));
        object.insert("limits", jsonLimits(exactLimits(tally)));
    }
    return object;
}

QJsonObject jsonBreakdown(const ReportBreakdown& breakdown)
{
    QJsonArray groups;
    for (const auto& group : breakdown.groups) {
        auto object = jsonGroup(group);
        for (const auto& point : breakdown.funnel.points)
            if (point.name == group.name)
                object.insert("funnel", flagOf(point.funnel));
        groups.append(object);
    }
    QJsonArray limits;
    for (const auto& step : breakdown.funnel.limits)
        limits.append(QJsonObject{{"judged", static_cast<qint64>(step.judged)},
                                  {"alert", jsonLimits(step.alert)},
                                  {"alarm", jsonLimits(step.alarm)}});
    return {{"by", jsonText(breakdown.by)}, {"groups", groups}, {"funnel_limits", limits}};
}

QJsonObject jsonCells(const std::vector<ReportCell>& cells)
{
    QJsonObject object;
    for (const auto& cell : cells)
        object.insert(QString::fromStdString(cell.name), jsonCount(cell.count));
    return object;
}

QJsonValue whyNot(const Sentence& sentence)
{
    return sentence.empty() ? QJsonValue(QJsonValue::Null) : QJsonValue(say(sentence));
}

QJsonObject jsonRuns(const GSeries& runs)
{
    QJsonArray points;
    for (const auto& point : runs.points)
        points.append(QJsonObject{{"good", static_cast<qint64>(point.good)}, {"beyond", point.beyond}});
    return {{"why_not_drawn", whyNot(runs.whyNot)},
            {"centre", jsonNumber(runs.limits.centre)},
            {"upper", static_cast<qint64>(runs.limits.upper)},
            {"runs", points},
            {"open_run", static_cast<qint64>(runs.running)}};
}

QJsonObject jsonWeeks(const PChart& weeks)
{
    QJsonArray points;
    for (const auto& point : weeks.points)
        points.append(QJsonObject{{"week", jsonText(point.name)},
                                  {"share", jsonNumber(point.tally.share())},
                                  {"limits", jsonLimits(point.limits)},
                                  {"beyond", point.beyond}});
    return {{"why_not_drawn", whyNot(weeks.whyNot)},
            {"needs", static_cast<qint64>(weeks.needs)},
            {"weeks", points}};
}

QJsonArray jsonSteps(const std::vector<ReportStep>& steps)
{
    QJsonArray array;
    for (const auto& step : steps)
        for (const auto& each : step.classes)
            array.append(QJsonObject{{"where", wordOf(step.step)},
                                     {"class", infoOf(each.kind).word},
                                     {"count", jsonCount(each.count)},
                                     {"next", say({infoOf(each.kind).next, {}})}});
    return array;
}

} // namespace

QJsonObject reportJson(const AuditReport& report)
{
    QJsonArray breakdowns;
    for (const auto& breakdown : report.breakdowns)
        breakdowns.append(jsonBreakdown(breakdown));
    QJsonArray lots;
    for (const auto& lot : report.lots) {
        const bool read = !lot.readBy.empty();
        lots.append(QJsonObject{{"lot", jsonText(lot.id)},
                                {"sample", lot.plan.plan.sample},
                                {"allowed", lot.plan.plan.allowed},
                                {"decision", read ? QJsonValue(wordOf(decide(lot.count, lot.plan.plan)))
                                                  : QJsonValue(QJsonValue::Null)}});
    }
    QJsonArray findings;
    for (const auto& each : report.findings)
        findings.append(QJsonObject{{"entry", jsonText(each.finding.entry)},
                                    {"class", infoOf(each.finding.kind).word},
                                    {"detail", say(each.finding.detail)},
                                    {"slip", jsonTextOrNull(each.slip)},
                                    {"probability", jsonNumber(each.probability)}});
    return {{"site", jsonText(report.site)},
            {"day", jsonText(report.day)},
            {"detail", report.detail},
            {"hand_overs", static_cast<qint64>(report.handOvers)},
            {"all", jsonGroup(report.all)},
            {"next", jsonSteps(report.steps)},
            {"rates", breakdowns},
            {"g_chart", jsonRuns(report.runs)},
            {"p_chart", jsonWeeks(report.weeks)},
            {"lots", lots},
            {"due", jsonCells(report.due)},
            {"wear", jsonCells(report.wear)},
            {"effective_coverage", QJsonObject{{"people", report.people},
                                               {"before", jsonCells(report.before)},
                                               {"share_before", jsonNumber(report.shareBefore)},
                                               {"after", jsonCells(report.after)},
                                               {"share_after", jsonNumber(report.shareAfter)}}},
            {"findings", findings},
            {"chain_ok", report.chain.ok}};
}

} // namespace quarterstep
