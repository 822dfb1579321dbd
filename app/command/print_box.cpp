// SPDX-License-Identifier: GPL-3.0-or-later
// Papers about the box: labels, packing, counts, the audit, cards.
#include "app/command/audit_steps.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/picked.hpp"
#include "app/command/print.hpp"
#include "app/paper/content/lot_rows.hpp"
#include "app/paper/content/report_forms.hpp"
#include "core/fitting/line_code.hpp"
#include "core/record/life.hpp"

#include <algorithm>
#include <set>

namespace quarterstep
{
namespace
{

const StockLine& lineOf(const PrintBox& box, const std::string& text, const Position& place = {})
{
    const auto found = lineScanned(box.stock, text);
    if (found)
        return box.stock[found.value()];
    Finding finding;
    finding.position = place;
    finding.code = found.complaint().code;
    finding.sentence = found.complaint().sentence;
    throw Error(std::move(finding), Exit::badData);
}

std::vector<QuantityRow> listOf(const CommandLine& line, Output& out)
{
    auto reading = readQuantityList(line.arguments.back());
    out.tell(reading.findings);
    if (!reading.usable())
        throw FilesNotRead();
    return std::move(reading.value.rows);
}

/// Lines to label, each as often as it is wanted.
std::vector<Paper> labels(const CommandLine& line, const PrintBox& box, Output& out)
{
    std::vector<Paper> papers;
    const auto add = [&](const StockLine& each, int copies) {
        const auto paper = stockLabel(each, box.source);
        papers.insert(papers.end(), static_cast<std::size_t>(copies), paper);
    };
    if (line.arguments.size() == 2)
        for (const auto& row : listOf(line, out))
            add(lineOf(box, row.line, row.place), row.quantity);
    for (const auto& name : linesTyped(line.value("--lines")))
        add(lineOf(box, name), quantityOf(line));
    if (line.has("--line"))
        add(lineOf(box, line.value("--line")), quantityOf(line));
    if (line.arguments.size() == 2 || line.has("--lines") || line.has("--line"))
        return papers;
    for (const auto& each : box.stock)
        if (!line.has("--bin") || each.bin == line.value("--bin"))
            add(each, quantityOf(line));
    return papers;
}

std::vector<Paper> binLabels(const CommandLine& line, const PrintBox& box)
{
    std::set<std::string> bins;
    for (const auto& each : box.stock)
        if (!each.bin.empty() && (!line.has("--bin") || each.bin == line.value("--bin")))
            bins.insert(each.bin);
    std::vector<Paper> papers;
    papers.reserve(bins.size());
    for (const auto& bin : bins)
        papers.push_back(binLabel(bin, box.stock, box.source));
    return papers;
}

Paper packing(const CommandLine& line, const PrintBox& box, Output& out)
{
    if (line.arguments.size() != 2)
        refuseUsage("arguments-missing",
                    {QS_SAY("core", "`print %1` needs a list of lines and quantities"), {"packing-list"}});
    std::vector<PackingRow> rows;
    for (const auto& row : listOf(line, out))
        rows.push_back(packingRow(lineOf(box, row.line, row.place), row.box, row.bin, row.quantity));
    return packingList(std::move(rows), box.source);
}

Paper counting(const CommandLine& line, const PrintBox& box)
{
    std::vector<CountRow> rows;
    for (const auto& each : box.stock)
        if (!line.has("--bin") || each.bin == line.value("--bin"))
            rows.push_back({each.bin, each.name});
    std::sort(rows.begin(), rows.end(), [](const CountRow& a, const CountRow& b) {
        return std::tie(a.bin, a.line) < std::tie(b.bin, b.line);
    });
    return countSheetPaper(rows, box.source);
}

std::vector<Paper> auditing(const CommandLine& line, const PrintBox& box)
{
    std::vector<AuditRow> rows;
    if (box.camp && line.has("--lot"))
        return {auditSheet(lotRows(*box.camp, line.value("--lot")), box.source)};
    if (box.camp && box.camp->hasLedger()) {
        const auto entries = box.camp->ledger().entriesAfter(0);
        const auto gone = takenBack(entries);
        for (const auto& entry : entries)
            if (entry.kind == EntryKind::handedOver && gone.count(entry.id) == 0 &&
                (!line.has("--person") || entry.person == line.value("--person")))
                rows.push_back(auditRowOf(entry));
    }
    if (rows.empty())
        return {};
    return {auditSheet(rows, box.source)};
}

std::vector<Paper> reporting(const CommandLine& line, const PrintBox& box, Output& out)
{
    if (!box.camp)
        refuseUsage("option-missing", {QS_SAY("core", "`print %1` needs --camp FOLDER"), {"audit-report"}});
    const auto report = reportOf(line, *box.camp, out);
    return {auditReportPaper(report, reportSource(*box.camp, report, QUARTERSTEP_VERSION))};
}

Paper card(const CommandLine& line, const PrintBox& box)
{
    const auto role = roleNamed(line.value("--role"));
    if (!role)
        refuseUsage("option-value",
                    {QS_SAY("core", "say whose card with --role: optician, keeper or supervisor"), {}});
    return quickCard(*role, box.source);
}

} // namespace

std::vector<Paper> boxPapers(PaperKind kind, const CommandLine& line, const PrintBox& box, Output& out)
{
    switch (kind) {
    case PaperKind::stockLabel:
        return labels(line, box, out);
    case PaperKind::binLabel:
        return binLabels(line, box);
    case PaperKind::packingList:
        return {packing(line, box, out)};
    case PaperKind::countSheet:
        return {counting(line, box)};
    case PaperKind::auditSheet:
        return auditing(line, box);
    case PaperKind::auditReport:
        return reporting(line, box, out);
    default:
        return {card(line, box)};
    }
}

} // namespace quarterstep
