// SPDX-License-Identifier: GPL-3.0-or-later
// import --as FORMAT: prescriptions of other programs and instruments as a prescription table. The whole file
// is read first; with a bad row no file is written unless rows may be skipped.
#include "app/command/exchange.hpp"
#include "app/command/exchange_dicom.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/session/bring_in.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/large_text.hpp"
#include "inventory/text/record_text.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cstdio>

#include <unistd.h>

namespace quarterstep
{
namespace
{

constexpr std::array readable{ExchangeFormat::fhir, ExchangeFormat::jsonLines, ExchangeFormat::table,
                              ExchangeFormat::dicom};

/// What was read, and of a table also how it was understood.
struct Taken {
    ImportedRows rows;
    std::optional<MappedTable> table;
};

QJsonObject jsonFinding(const Finding& finding)
{
    constexpr const char* severities[] = {"note", "caution", "error"};
    QJsonArray arguments;
    for (const auto& argument : finding.sentence.arguments)
        arguments.append(jsonText(argument));
    return {{"severity", severities[static_cast<std::size_t>(finding.severity)]},
            {"file", jsonText(finding.position.file)},
            {"line", finding.position.line},
            {"column", finding.position.column},
            {"code", jsonText(finding.code)},
            {"sentence", say(finding.sentence)},
            {"template", jsonText(finding.sentence.text)},
            {"arguments", arguments}};
}

QJsonObject jsonRow(const TableRow& row)
{
    QJsonObject cells;
    if (row.record) {
        for (const auto& [name, cell] : recordCells(*row.record))
            cells.insert(QString::fromStdString(name), jsonText(cell));
        for (const auto& [name, cell] : row.record->otherColumns)
            cells.insert(QString::fromStdString(name), jsonText(cell));
    }
    return {{"person", jsonTextOrNull(row.person)},
            {"line", row.line},
            {"taken", row.record.has_value()},
            {"cells", cells},
            {"findings", jsonFindings(row.findings)}};
}

/// What was read of a row, in one line.
QString readingOf(const TableRow& row)
{
    const auto begin = commandWords(QT_TRANSLATE_NOOP("command", "line %1: %2"))
                           .arg(row.line)
                           .arg(ltr(row.person.empty() ? "?" : row.person));
    if (!row.record)
        return begin + QStringLiteral("; ") + commandWords(QT_TRANSLATE_NOOP("command", "refused"));
    return begin + QStringLiteral("; ") + recordWords(*row.record);
}

struct Count {
    int taken = 0;
    int refused = 0;
};

/// How a table was understood: its map as a file of maps, and what was counted.
void showMap(const MappedTable& table, Output& out)
{
    out.text(QString::fromStdString(writeTableMap(table.map)));
    out.line(commandWords(QT_TRANSLATE_NOOP("command",
                                            "decimals: %1; cylinders: minus %2, plus %3, without a sign %4"))
                 .arg(table.commaDecimals ? commandWords(QT_TRANSLATE_NOOP("command", "comma"))
                                          : commandWords(QT_TRANSLATE_NOOP("command", "point")))
                 .arg(table.minusCylinders)
                 .arg(table.plusCylinders)
                 .arg(table.unsignedCylinders));
    QStringList names;
    for (const auto& name : table.notUnderstood)
        names << ltr(name);
    if (!names.isEmpty())
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "not understood, kept: %1"))
                     .arg(names.join(QStringLiteral(", "))));
}

QJsonObject jsonMap(const MappedTable& table)
{
    QJsonArray columns;
    for (const auto& mapped : table.map.columns)
        columns.append(
            QJsonObject{{"heading", jsonText(mapped.heading)}, {"target", jsonText(mapped.target)}});
    QJsonArray unknown;
    for (const auto& name : table.notUnderstood)
        unknown.append(jsonText(name));
    return {{"separator", QString(QLatin1Char(table.map.separator))},
            {"comma_decimals", table.commaDecimals},
            {"minus_cylinders", table.minusCylinders},
            {"plus_cylinders", table.plusCylinders},
            {"unsigned_cylinders", table.unsignedCylinders},
            {"unsigned_spheres", table.unsignedSpheres},
            {"columns", columns},
            {"not_understood", unknown}};
}

void showPreview(const ImportedRows& rows, Output& out)
{
    for (const auto& row : rows.value)
        out.line(readingOf(row));
}

/// A line of progress on a terminal, written over; nothing elsewhere.
std::function<void(std::size_t, std::size_t)> progressOnTerminal()
{
    if (::isatty(STDERR_FILENO) == 0)
        return {};
    return [](std::size_t done, std::size_t of) {
        std::fprintf(stderr, "\r%zu / %zu%s", done, of, done == of ? "\r\x1b[K" : "");
    };
}

template <class T>
T usableOrTold(Reading<T> reading, Output& out)
{
    out.tell(reading.findings);
    if (!reading.usable())
        throw FilesNotRead();
    return std::move(reading.value);
}

Taken takeTable(const CommandLine& line, const ImportOptions& options, Output& out)
{
    TableMap given;
    if (line.has("--map"))
        given = usableOrTold(
            readTableMap(usableOrTold(readBytes(line.value("--map")), out), line.value("--map")), out);
    const auto& path = line.arguments.front();
    auto table = importTable(usableOrTold(readLargeBytes(path), out), path, given, options);
    Taken taken{{std::move(table.value.rows), std::move(table.findings)}, std::nullopt};
    taken.table = std::move(table.value);
    return taken;
}

/// Several files: what each instrument says of one patient comes together.
Taken takeDicom(const CommandLine& line, const ImportOptions& options, Output& out)
{
    const auto& ways = dicomWays(); // before anything is read
    if (line.arguments.empty())
        refuseUsage("arguments-missing",
                    {QS_SAY("core", "`import --as dicom` needs the FILES of the instruments"), {}});
    std::vector<NamedBytes> files;
    files.reserve(line.arguments.size());
    for (const auto& path : line.arguments)
        files.push_back({path, usableOrTold(readLargeBytes(path), out)});
    return {ways.read(files, options), std::nullopt};
}

Taken takeOne(const CommandLine& line, ExchangeFormat format, const ImportOptions& options, Output& out)
{
    if (line.arguments.size() != 1)
        refuseUsage("arguments-missing",
                    {QS_SAY("core", "`import --as %1` needs one FILE, or - for standard input"),
                     {line.value("--as")}});
    if (format == ExchangeFormat::table)
        return takeTable(line, options, out);
    return {importFile(format, line.arguments.front(), options), std::nullopt};
}

Taken readAll(const CommandLine& line, Output& out)
{
    ImportOptions options;
    options.today = todayIso();
    options.progress = progressOnTerminal();
    const auto format = formatOf(line, readable);
    if (line.has("--map") && format != ExchangeFormat::table)
        refuseUsage("option-value", {QS_SAY("core", "--map goes with --as table"), {}});
    auto taken =
        format == ExchangeFormat::dicom ? takeDicom(line, options, out) : takeOne(line, format, options, out);
    out.tell(taken.rows.findings);
    for (const auto& row : taken.rows.value)
        out.tell(row.findings);
    if (!taken.rows.usable() && taken.table && line.has("--dry-run") && !line.has("--json"))
        showMap(*taken.table, out); // what was understood helps to write a map
    return taken;
}

/// The whole answer for programs: every row with its cells and findings.
void writeAnswer(const CommandLine& line, const Taken& taken, const Count& count, Output& out)
{
    QJsonArray persons;
    for (const auto& row : taken.rows.value)
        persons.append(jsonRow(row));
    QJsonObject answer{{"format", jsonText(line.value("--as"))},
                       {"persons", persons},
                       {"findings", jsonFindings(taken.rows.findings)},
                       {"taken", count.taken},
                       {"refused", count.refused},
                       {"dry_run", line.has("--dry-run")}};
    if (taken.table)
        answer.insert("map", jsonMap(*taken.table));
    out.json(answer);
}

/// Names the rows left out; throws FilesNotRead where none may be.
void allowSkipping(const CommandLine& line, const ImportedRows& rows, Output& out)
{
    for (const auto& row : rows.value)
        if (!row.record && line.has("--skip-bad-rows"))
            out.tell(Severity::caution, {line.arguments.front(), row.line, 0}, "row-skipped",
                     {QS_SAY("core", "row of %1 left out"), {row.person}});
    if (line.has("--skip-bad-rows"))
        return;
    out.tell(
        Severity::error, Position{}, "nothing-written",
        {QS_SAY("core", "nothing was written; mend what stands above, or leave it out with --skip-bad-rows"),
         {}});
    throw FilesNotRead();
}

} // namespace

QJsonArray jsonFindings(const std::vector<Finding>& findings)
{
    QJsonArray array;
    for (const auto& finding : findings)
        array.append(jsonFinding(finding));
    return array;
}

int importPrescriptions(const CommandLine& line, Output& out)
{
    const auto taken = readAll(line, out);
    const auto& rows = taken.rows;
    Count count;
    for (const auto& row : rows.value)
        ++(row.record ? count.taken : count.refused);
    if (!rows.usable() && line.has("--json"))
        writeAnswer(line, taken, count, out); // what was found is the answer
    if (!rows.usable())
        throw FilesNotRead();
    const bool dry = line.has("--dry-run");
    if (count.refused > 0 && line.has("--output") && !dry)
        allowSkipping(line, rows, out);
    if (line.has("--output") && !dry)
        writeNewFile(line.value("--output"), tableText(rows.value));
    if (line.has("--json")) {
        writeAnswer(line, taken, count, out);
    } else if (dry) {
        if (taken.table)
            showMap(*taken.table, out);
        showPreview(rows, out);
    } else if (!line.has("--output")) {
        out.text(QString::fromStdString(tableText(rows.value)));
    }
    if (!line.has("--json") && (dry || line.has("--output")))
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "prescriptions taken %1, refused %2"))
                     .arg(count.taken)
                     .arg(count.refused));
    if (dry && !line.has("--json"))
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "dry run: nothing was written")));
    return count.refused > 0 ? Exit::badData : Exit::done;
}

} // namespace quarterstep
