// SPDX-License-Identifier: GPL-3.0-or-later
// count: prints a blind sheet (lines and bins, no book quantity), or takes the sheet two persons filled in
// and corrects the book with their reasons.
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/csv_writing.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

int printSheet(const CommandLine& line, Output& out)
{
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    out.tell(camp.findings());
    const auto sheet = countSheet(camp, line.value("--bin"));
    if (line.has("--json")) {
        QJsonArray lines;
        for (const auto& row : sheet)
            lines.append(QJsonObject{{"bin", jsonTextOrNull(row.bin)}, {"line", jsonText(row.line)}});
        out.json(QJsonObject{{"site", jsonText(camp.site())}, {"lines", lines}});
        return Exit::done;
    }
    out.line(QStringLiteral("bin,line,quantity,reason,cause")); // columns as `count` reads them back
    for (const auto& row : sheet)
        out.line(QString::fromStdString(csvCell(row.bin) + "," + csvCell(row.line) + ",,,"));
    return Exit::done;
}

QJsonArray jsonDifferences(const CountWork& work)
{
    QJsonArray lines;
    for (const auto& each : work.lines)
        lines.append(QJsonObject{{"line", jsonText(each.line)},
                                 {"book", each.book},
                                 {"counted", each.counted},
                                 {"difference", each.counted - each.book}});
    return lines;
}

void showDifferences(const CountWork& work, Output& out)
{
    int right = 0;
    for (const auto& each : work.lines) {
        right += each.counted == each.book ? 1 : 0;
        if (each.counted != each.book)
            out.line(QStringLiteral("%1  ").arg(ltr(each.line), -24) +
                     commandWords(QT_TRANSLATE_NOOP("command", "counted %1, book %2, difference %3"))
                         .arg(each.counted)
                         .arg(each.book)
                         .arg(each.counted - each.book));
    }
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "%1 lines counted, %2 as in the book"))
                 .arg(work.lines.size())
                 .arg(right));
}

/// A counted line is settled: what somebody had typed into the file no longer waits to be accepted.
void settleEdits(Camp& camp, const CountWork& work)
{
    std::vector<EditedCount> settled;
    for (const auto& edit : camp.edited())
        for (const auto& each : work.lines)
            if (each.line == edit.line)
                settled.push_back(edit);
    if (!settled.empty())
        camp.discardEdits(settled);
}

} // namespace

int runCount(const CommandLine& line, Output& out)
{
    const bool takes = !line.arguments.empty() || line.has("--line");
    if (!takes) {
        for (const char* option :
             {"--counted-by", "--second", "--reason", "--cause", "--quantity", "--dry-run"})
            if (line.has(option))
                refuseUsage("option-missing",
                            {QS_SAY("core", "%1 goes with a filled-in sheet; name it"), {option}});
        return printSheet(line, out);
    }
    for (const char* option : {"--counted-by", "--second"})
        if (line.value(option).empty())
            refuseUsage(
                "option-missing",
                {QS_SAY("core", "`count` needs the initials of two persons: --counted-by and --second"), {}});
    CountBy by{line.value("--counted-by"), line.value("--second"), line.value("--reason"),
               line.value("--cause")};
    if (!by.cause.empty() && !isCauseOfLoss(by.cause))
        refuseCause(by.cause);
    auto rows = rowsOf(line, line.arguments.empty() ? "" : line.arguments.front(), out);
    auto camp = openForWork(line, out);
    (void)keepGoodRows(line, takeNames(camp, rows), rows, out);
    const auto position = positionOf(camp);
    auto work = countOf(camp, rows, by);
    if (keepGoodRows(line, work.findings, rows, out))
        work = countOf(camp, rows, by);
    if (!line.has("--json"))
        showDifferences(work, out);
    const int exit =
        carryOutAndShow(line, camp, work.entries, out, {{"counted", jsonDifferences(work)}}, position);
    if (!line.has("--dry-run"))
        settleEdits(camp, work);
    return exit;
}

} // namespace quarterstep
