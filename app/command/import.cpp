// SPDX-License-Identifier: GPL-3.0-or-later
// import: another ledger merged into the camp's, by the ids of its entries.
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/session/leaving.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

QJsonObject jsonCounts(const std::map<std::string, std::int64_t>& counts)
{
    QJsonObject object;
    for (const auto& [name, count] : counts)
        object.insert(QString::fromStdString(name), static_cast<qint64>(count));
    return object;
}

QJsonObject jsonReport(const CommandLine& line, const Camp& camp, const MergeReport& report)
{
    return {{"site", jsonText(camp.site())},
            {"added", static_cast<qint64>(report.added)},
            {"known", static_cast<qint64>(report.known)},
            {"blanked", static_cast<qint64>(report.blanked)},
            {"by_site", jsonCounts(report.bySite)},
            {"by_station", jsonCounts(report.byStation)},
            {"in_the_air", static_cast<qint64>(inTheAir(camp.ledger().entriesAfter(0)).size())},
            {"dry_run", line.has("--dry-run")}};
}

void showReport(const CommandLine& line, const Camp& camp, const MergeReport& report, Output& out)
{
    out.line(
        commandWords(QT_TRANSLATE_NOOP("command", "entries new %1, known already %2, texts forgotten %3"))
            .arg(report.added)
            .arg(report.known)
            .arg(report.blanked));
    for (const auto& [site, count] : report.bySite)
        out.line(QStringLiteral("  %1: %2").arg(QString::fromStdString(site)).arg(count));
    if (line.has("--dry-run"))
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "dry run: nothing was written")));
    else
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "%1 sent and not taken in"))
                     .arg(inTheAir(camp.ledger().entriesAfter(0)).size()));
}

} // namespace

int runImport(const CommandLine& line, Output& out)
{
    auto camp = openForWork(line, out);
    const auto report = importLedger(camp, line.arguments.front(), line.has("--dry-run"));
    out.tell(report.findings);
    if (line.has("--json"))
        out.json(jsonReport(line, camp, report));
    else
        showReport(line, camp, report, out);
    return Exit::done;
}

} // namespace quarterstep
