// SPDX-License-Identifier: GPL-3.0-or-later
// The report as a table for other programs: the same figures, small counts as hidden as on paper.
#include "app/session/audit_report.hpp"

#include "app/session/keeping.hpp"
#include "core/record/masking.hpp"
#include "inventory/text/csv_writing.hpp"

#include <algorithm>
#include <cstdio>

namespace quarterstep
{

namespace
{

std::string shareText(double share)
{
    char text[32];
    std::snprintf(text, sizeof text, "%.4f", share);
    return text;
}

std::string countText(const ShownCount& count)
{
    return count ? std::to_string(*count) : "under " + std::to_string(leastShown);
}

void addGroup(const std::string& by, const ReportGroup& group, const FunnelPoint* point, std::string& text)
{
    std::vector<std::string> row{"rate", by, group.name, countText(group.mismatches),
                                 countText(group.judged)};
    if (group.shown()) {
        const Tally tally{*group.judged, *group.mismatches};
        const auto limits = exactLimits(tally);
        row.insert(row.end(), {shareText(tally.share()), shareText(limits.lower), shareText(limits.upper)});
    } else
        row.insert(row.end(), 3, "");
    constexpr const char* flags[] = {"inside", "alert", "alarm"};
    row.emplace_back(point == nullptr ? "" : flags[static_cast<std::size_t>(point->funnel)]);
    text += csvRow(row);
}

void addCells(const std::string& section, const std::string& of, const std::vector<ReportCell>& cells,
              std::string& text)
{
    for (const auto& cell : cells)
        text += csvRow({section, of, cell.name, countText(cell.count), "", "", "", "", ""});
}

} // namespace

std::string reportCsv(const AuditReport& report)
{
    auto text = csvRow({"section", "by", "name", "count", "of", "share", "lower_95", "upper_95", "flag"});
    addGroup("all", report.all, nullptr, text);
    for (const auto& breakdown : report.breakdowns)
        for (const auto& group : breakdown.groups) {
            const auto& points = breakdown.funnel.points;
            const auto point = std::find_if(points.begin(), points.end(),
                                            [&](const FunnelPoint& each) { return each.name == group.name; });
            addGroup(breakdown.by, group, point == points.end() ? nullptr : &*point, text);
        }
    for (const auto& step : report.steps)
        for (const auto& each : step.classes)
            text += csvRow({"class", wordOf(step.step), infoOf(each.kind).word, countText(each.count), "", "",
                            "", "", ""});
    for (const auto& lot : report.lots)
        if (!lot.readBy.empty())
            text += csvRow({"lot", localDay(lot.atMs), std::to_string(lot.number),
                            std::to_string(lot.count.failed), std::to_string(lot.count.read), "", "", "",
                            wordOf(decide(lot.count, lot.plan.plan))});
    addCells("due", "stage", report.due, text);
    addCells("wear", "outcome", report.wear, text);
    addCells("coverage", "before", report.before, text);
    addCells("coverage", "after", report.after, text);
    for (const auto& each : report.findings)
        text += csvRow(
            {"finding", infoOf(each.finding.kind).word, each.finding.entry, "", "", "", "", "", each.slip});
    return text;
}

} // namespace quarterstep
