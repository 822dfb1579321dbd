// SPDX-License-Identifier: GPL-3.0-or-later
// audit report: one page for the site, everything for the supervisor; as text, page for a browser, PDF, CSV
// or JSON.
#include "app/command/audit_steps.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/command/print.hpp"
#include "app/paper/content/report_forms.hpp"
#include "app/session/wording.hpp"

namespace quarterstep
{
namespace
{

void write(const CommandLine& line, const std::string& bytes, Output& out)
{
    replaceFile(line.value("--output"), bytes, true);
    out.line(QString::fromStdString(line.value("--output")));
}

} // namespace

int runAuditReport(const CommandLine& line, Output& out)
{
    const auto output = line.value("--output");
    const auto form = output.empty() ? ReportForm::text : reportFormOf(output).value_or(ReportForm::json);
    if (form == ReportForm::pdf) { // drawn as any paper
        auto printed = line;
        printed.verb = "print";
        printed.arguments = {wordOf(PaperKind::auditReport)};
        return runPrint(printed, out);
    }
    if (!output.empty() && form != ReportForm::page && form != ReportForm::table)
        refuseUsage("option-value",
                    {QS_SAY("core", "“%1” is no page, paper or table; end its name in .html, .pdf or .csv"),
                     {output}});
    const auto& language = languageOf(line);
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    out.tell(camp.findings());
    const auto report = reportOf(line, camp, out);
    const auto bytes = [&](ReportForm wanted) {
        return reportBytes(report, wanted, reportSource(camp, report, QUARTERSTEP_VERSION), language);
    };
    if (line.has("--json"))
        out.text(QString::fromStdString(bytes(ReportForm::json)));
    if (form == ReportForm::table)
        write(line, bytes(form), out);
    if (line.has("--json") || form == ReportForm::table)
        return Exit::done;
    const SpokenIn spoken(language);
    if (output.empty())
        out.text(QString::fromStdString(bytes(form)));
    else
        write(line, bytes(form), out);
    return Exit::done;
}

AuditReport reportOf(const CommandLine& line, const Camp& camp, Output& out)
{
    auto options = auditOptions(line, camp, out);
    options.nowMs = asOfMs(line);
    return auditReport(camp, options, line.has("--detail"));
}

} // namespace quarterstep
