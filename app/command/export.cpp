// SPDX-License-Identifier: GPL-3.0-or-later
// export: a copy of the camp folder, or a table at one of three levels of privacy.
#include "app/command/exchange.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/command/pin_entry.hpp"
#include "app/session/leaving.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

ExportLevel levelOf(const std::string& word)
{
    if (word == "aggregate")
        return ExportLevel::aggregate;
    if (word == "rows")
        return ExportLevel::rows;
    if (word == "full")
        return ExportLevel::full;
    refuseUsage("option-value",
                {QS_SAY("core", "“%1” is not a level; write aggregate, rows or full"), {word}});
}

int copyFolder(const CommandLine& line, Output& out)
{
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    out.tell(camp.findings());
    const auto target = line.value("--folder");
    std::vector<std::string> names;
    if (!line.has("--dry-run"))
        names = exportFolder(camp, target);
    if (line.has("--json")) {
        QJsonArray files;
        for (const auto& name : names)
            files.append(jsonText(name));
        out.json(
            QJsonObject{{"folder", jsonText(target)}, {"files", files}, {"dry_run", line.has("--dry-run")}});
        return Exit::done;
    }
    for (const auto& name : names)
        out.line(QStringLiteral("%1/%2").arg(QString::fromStdString(target), QString::fromStdString(name)));
    if (line.has("--dry-run"))
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "dry run: nothing was written")));
    return Exit::done;
}

QJsonArray jsonTable(const ExportTable& table)
{
    QJsonArray rows;
    for (const auto& row : table.rows) {
        QJsonObject object;
        for (std::size_t i = 0; i < row.size(); ++i)
            object.insert(QString::fromStdString(table.columns[i]), jsonText(row[i]));
        rows.append(object);
    }
    return rows;
}

void writeTable(const CommandLine& line, const ExportTable& table, Output& out)
{
    if (line.has("--output") && !line.has("--dry-run")) {
        replaceFile(line.value("--output"), csvOf(table), true);
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "%1 rows in %2"))
                     .arg(table.rows.size())
                     .arg(QString::fromStdString(line.value("--output"))));
    } else if (line.has("--json"))
        out.json(jsonTable(table));
    else if (line.has("--output"))
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "dry run: nothing was written")));
    else
        out.text(QString::fromStdString(csvOf(table)));
}

} // namespace

int runExport(const CommandLine& line, Output& out)
{
    if (line.has("--as"))
        return exportPrescriptions(line, out);
    needCamp(line);
    if (!line.arguments.empty())
        refuseUsage("arguments-too-many", {QS_SAY("core", "a TABLE goes with --as FORMAT"), {}});
    if (line.has("--folder") == line.has("--level"))
        refuseUsage(
            "option-missing",
            {QS_SAY("core", "`export` needs either --folder FOLDER or --level aggregate, rows or full"), {}});
    if (line.has("--folder"))
        return copyFolder(line, out);
    const auto level = levelOf(line.value("--level"));
    const bool full = level == ExportLevel::full;
    if (full && line.value("--reason").empty())
        refuseUsage(
            "option-missing",
            {QS_SAY("core", "--level full names persons; say why with --reason TEXT, it stays in the ledger"),
             {}});
    if (line.has("--output") && line.has("--json"))
        refuseUsage("option-value", {QS_SAY("core", "--output writes CSV; leave --json out"), {}});
    const bool writes = full && !line.has("--dry-run");
    auto camp = Camp::open(line.value("--camp"), writes ? Ledger::Mode::readWrite : Ledger::Mode::readOnly);
    out.tell(camp.findings());
    (void)camp.ledger();
    if (writes)
        requirePin(line, camp);
    if (writes)
        camp.post(exportEntry(line.value("--actor"), line.value("--reason")));
    writeTable(line, exportTable(camp, level), out);
    return Exit::done;
}

} // namespace quarterstep
