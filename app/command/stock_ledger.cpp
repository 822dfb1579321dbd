// SPDX-License-Identifier: GPL-3.0-or-later
// Where the ledger of a camp is kept: a shared one set up, a ledger moved there or back.
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/command/stock.hpp"
#include "app/session/leaving.hpp"
#include "app/session/wording.hpp"
#include "inventory/store/shared_ledger.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

void setUp(const CommandLine& line, Output& out)
{
    const auto address = line.value("--set-up");
    const auto shown = readLedgerAddress(address).shown;
    const bool dryRun = line.has("--dry-run");
    if (!dryRun)
        setUpSharedLedger(address);
    if (line.has("--json"))
        out.json(QJsonObject{{"ledger", jsonText(shown)}, {"dry_run", dryRun}});
    else if (dryRun)
        out.text(QString::fromStdString(std::string(sharedLedgerScript())));
    else
        out.line(
            commandWords(
                QT_TRANSLATE_NOOP(
                    "command", "%1 can be used; add the logins of stations to the group quarterstep_station"))
                .arg(ltr(shown)));
}

void moveIt(const CommandLine& line, Output& out)
{
    const auto target = line.value("--move-ledger");
    const bool dryRun = line.has("--dry-run");
    const auto entries = moveLedger(line.value("--camp"), target, dryRun);
    if (line.has("--json")) {
        out.json(QJsonObject{
            {"ledger", jsonText(target)}, {"entries", static_cast<qint64>(entries)}, {"dry_run", dryRun}});
        return;
    }
    out.line(commandWords(QT_TRANSLATE_NOOP(
                              "command", "%1 entries in %2; the old ledger is not used from here any more"))
                 .arg(entries)
                 .arg(ltr(target)));
    if (dryRun)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "dry run: nothing was written")));
}

} // namespace

std::optional<int> placeLedger(const CommandLine& line, Output& out)
{
    const bool sets = line.has("--set-up");
    const bool moves = line.has("--move-ledger");
    if (!sets && !moves)
        return std::nullopt;
    for (const char* other :
         {"--accept-edits", "--discard-edits", "--moved-here", "--second-station", "--line", "--check"})
        if (line.has(other) || (sets && moves))
            refuseUsage("option-value", {QS_SAY("core", "only one of %1 at a time"),
                                         {std::string("--set-up, --move-ledger") +
                                          (sets && moves ? std::string() : std::string(", ") + other)}});
    if (sets)
        setUp(line, out);
    else
        moveIt(line, out);
    return Exit::done;
}

} // namespace quarterstep
