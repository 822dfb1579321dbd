// SPDX-License-Identifier: GPL-3.0-or-later
// What settles a camp: counts edited by hand, and a folder that was copied or moved.
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/command/pin_entry.hpp"
#include "app/command/stock.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/yaml_map.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace quarterstep
{
namespace
{

constexpr const char* ways[] = {"--accept-edits", "--discard-edits", "--moved-here", "--second-station"};

void settleEdits(const CommandLine& line, Camp& camp, bool accept, Output& out)
{
    const auto edited = camp.edited();
    if (!line.has("--dry-run") && !edited.empty()) {
        if (accept)
            camp.acceptEdits(edited, line.value("--reason"));
        else
            camp.discardEdits(edited);
    }
    if (line.has("--json")) {
        QJsonArray lines;
        for (const auto& each : edited)
            lines.append(QJsonObject{
                {"line", jsonText(each.line)}, {"in_file", each.inFile}, {"in_ledger", each.inLedger}});
        out.json(QJsonObject{{accept ? "accepted" : "discarded", lines}, {"dry_run", line.has("--dry-run")}});
        return;
    }
    for (const auto& each : edited)
        out.line(QStringLiteral("%1  ").arg(ltr(each.line), -24) +
                 commandWords(QT_TRANSLATE_NOOP("command", "file %1, ledger %2"))
                     .arg(each.inFile)
                     .arg(each.inLedger));
    out.line((accept ? commandWords(QT_TRANSLATE_NOOP("command", "%1 counts taken over from the file"))
                     : commandWords(QT_TRANSLATE_NOOP("command", "%1 counts put back to the ledger's")))
                 .arg(edited.size()));
}

QString placeWords(bool moved, bool second)
{
    if (!moved)
        return commandWords(QT_TRANSLATE_NOOP("command", "the ledger already belongs here"));
    if (second)
        return commandWords(QT_TRANSLATE_NOOP(
            "command",
            "a second station: its entries are numbered apart and can be merged; what it hands over must "
            "have been transferred to it"));
    return commandWords(QT_TRANSLATE_NOOP(
        "command", "the ledger lives here from now on; do not use the other copy any more"));
}

void settlePlace(const CommandLine& line, Camp& camp, bool second, Output& out)
{
    const bool moved = camp.ledger().moved();
    if (moved && !line.has("--dry-run")) {
        if (second)
            camp.becomeSecondStation();
        else
            camp.claimPlace();
    }
    if (line.has("--json"))
        out.json(QJsonObject{{"moved", moved},
                             {"station", jsonText(camp.ledger().station())},
                             {"dry_run", line.has("--dry-run")}});
    else
        out.line(placeWords(moved, second));
}

} // namespace

std::optional<int> settleStock(const CommandLine& line, Output& out)
{
    if (line.has("--set-pin") && line.has("--remove-pin"))
        refuseUsage("option-value",
                    {QS_SAY("core", "only one of %1 at a time"), {"--set-pin, --remove-pin"}});
    if (line.has("--set-pin") || line.has("--remove-pin"))
        return settlePin(line, out);
    const auto asked =
        std::count_if(std::begin(ways), std::end(ways), [&](const char* way) { return line.has(way); });
    if (asked == 0) {
        for (const char* option : {"--reason", "--dry-run"})
            if (line.has(option))
                refuseUsage("option-missing",
                            {QS_SAY("core", "%1 goes with --accept-edits, --discard-edits, --moved-here or "
                                            "--second-station"),
                             {option}});
        return std::nullopt;
    }
    if (asked > 1)
        refuseUsage("option-value", {QS_SAY("core", "only one of %1 at a time"), {listed(ways)}});
    if (line.has("--accept-edits") && line.value("--reason").empty())
        refuseUsage("option-missing", {QS_SAY("core", "--accept-edits needs --reason TEXT"), {}});
    auto camp = Camp::open(line.value("--camp"),
                           line.has("--dry-run") ? Ledger::Mode::readOnly : Ledger::Mode::readWrite);
    out.tell(camp.findings());
    if (!line.has("--dry-run"))
        requirePin(line, camp);
    if (line.has("--accept-edits") || line.has("--discard-edits"))
        settleEdits(line, camp, line.has("--accept-edits"), out);
    else
        settlePlace(line, camp, line.has("--second-station"), out);
    if (line.has("--dry-run") && !line.has("--json"))
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "dry run: nothing was written")));
    return Exit::done;
}

} // namespace quarterstep
