// SPDX-License-Identifier: GPL-3.0-or-later
// transfer: out to another site, in from one, and what was sent and not yet taken in.
#include "app/session/transfer.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>
#include <QStringList>

namespace quarterstep
{
namespace
{

int listFlying(const CommandLine& line, Output& out)
{
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    out.tell(camp.findings());
    const auto flying = camp.hasLedger() ? flyingIn(camp.ledger()) : std::vector<Entry>{};
    if (line.has("--json")) {
        QJsonArray sent;
        for (const auto& entry : flying) {
            auto object = jsonEntry(entry);
            object.insert("from", jsonText(entry.site));
            object.insert("to", jsonText(sentTo(entry)));
            sent.append(object);
        }
        out.json(QJsonObject{{"site", jsonText(camp.site())}, {"in_the_air", sent}});
        return Exit::done;
    }
    for (const auto& entry : flying) {
        QStringList lines;
        for (const auto& movement : entry.movements)
            lines << QStringLiteral("%1 %2").arg(-movement.delta).arg(ltr(movement.line));
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "%1  %2 → %3: %4; entry %5"))
                     .arg(momentWords(entry.atMs), QString::fromStdString(entry.site),
                          QString::fromStdString(sentTo(entry)), lines.join(QStringLiteral(", ")),
                          ltr(entry.id)));
    }
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "%1 sent and not taken in")).arg(flying.size()));
    return Exit::done;
}

Transfer transferOf(const CommandLine& line, const char* site)
{
    Transfer transfer;
    transfer.actor = line.value("--actor");
    transfer.site = line.value(site);
    transfer.note = line.value("--note");
    transfer.sent = line.value("--sent");
    return transfer;
}

int sendOut(const CommandLine& line, const std::string& list, Output& out)
{
    if (line.value("--to").empty())
        refuseUsage("option-missing", {QS_SAY("core", "`transfer out` needs --to SITE"), {}});
    auto rows = rowsOf(line, list, out);
    auto camp = openForWork(line, out);
    (void)keepGoodRows(line, takeNames(camp, rows), rows, out);
    return carryOutAndShow(line, camp, sendTo(camp, rows, transferOf(line, "--to")), out);
}

int takeIn(const CommandLine& line, const std::string& list, Output& out)
{
    const bool asSent = list.empty() && !line.has("--line");
    std::vector<QuantityRow> rows;
    if (!asSent)
        rows = rowsOf(line, list, out);
    auto camp = openForWork(line, out);
    const auto sent = sentEntry(camp, line.value("--sent"));
    if (asSent && !sent)
        refuseUsage(
            "option-missing",
            {QS_SAY("core", "say what came in: a list, or --line; only a transfer that this ledger has is "
                            "known by --sent alone"),
             {}});
    auto transfer = transferOf(line, "--from");
    if (transfer.site.empty() && sent)
        transfer.site = sent->site;
    if (transfer.site.empty())
        refuseUsage("option-missing", {QS_SAY("core", "`transfer in` needs --from SITE"), {}});
    if (asSent)
        rows = rowsSent(*sent);
    (void)keepGoodRows(line, takeNames(camp, rows), rows, out);
    if (sent)
        out.tell(transferDiffers(*sent, rows));
    return carryOutAndShow(line, camp, transferIn(rows, transfer), out);
}

} // namespace

int runTransfer(const CommandLine& line, Output& out)
{
    if (line.arguments.empty())
        return listFlying(line, out);
    const auto list = line.arguments.size() > 1 ? line.arguments[1] : std::string();
    if (line.arguments[0] == "out")
        return sendOut(line, list, out);
    if (line.arguments[0] == "in")
        return takeIn(line, list, out);
    refuseUsage("option-value", {QS_SAY("core", "“%1” is neither out nor in"), {line.arguments[0]}});
}

} // namespace quarterstep
