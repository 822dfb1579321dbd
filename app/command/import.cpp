// SPDX-License-Identifier: GPL-3.0-or-later
// import: another ledger merged into the camp's, by the ids of its entries.
#include "app/command/exchange.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/session/leaving.hpp"
#include "inventory/text/names_list.hpp"

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
            {"in_the_air", static_cast<qint64>(flyingIn(camp.ledger()).size())},
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
                     .arg(flyingIn(camp.ledger()).size()));
}

int takeNames(const CommandLine& line, Output& out)
{
    const auto reading = readNamesList(line.value("--names"));
    endOnErrors(reading.findings, out);
    auto camp = openForWork(line, out);
    std::vector<LedgerPerson> persons;
    int changed = 0;
    for (const auto& row : reading.value) {
        persons.push_back({row.person, row.name});
        const auto before = camp.hasLedger() ? camp.ledger().person(row.person) : std::nullopt;
        changed += before && before->name != row.name ? 1 : 0;
    }
    if (!line.has("--dry-run"))
        camp.ledger().putPersons(persons);
    if (line.has("--json"))
        out.json(QJsonObject{{"names", static_cast<qint64>(persons.size())},
                             {"changed", changed},
                             {"dry_run", line.has("--dry-run")}});
    else
        out.line(
            commandWords(QT_TRANSLATE_NOOP("command", "%1 names kept beside the entries, %2 of them changed"))
                .arg(persons.size())
                .arg(changed));
    if (line.has("--dry-run") && !line.has("--json"))
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "dry run: nothing was written")));
    return Exit::done;
}

} // namespace

int runImport(const CommandLine& line, Output& out)
{
    if (line.has("--as"))
        return importPrescriptions(line, out);
    needCamp(line);
    if (line.arguments.size() > 1)
        refuseUsage("arguments-too-many",
                    {QS_SAY("core", "“%1” is one too many; put a text with blanks into quotes"),
                     {line.arguments[1]}});
    if (line.arguments.empty() != line.has("--names"))
        refuseUsage("option-missing", {QS_SAY("core", "`import` needs either a LEDGER or --names FILE"), {}});
    if (line.has("--names"))
        return takeNames(line, out);
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
