// SPDX-License-Identifier: GPL-3.0-or-later
// stock: the lines of a camp with their counts, and the state of the ledger.
#include "app/command/answers.hpp"
#include "app/command/inputs.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

QJsonObject jsonLine(const StockLine& line)
{
    return {
        {"line", jsonText(line.name)},    {"kind", jsonWord(line.kind)}, {"on_hand", line.onHand},
        {"available", line.available()},  {"held", line.held},           {"quarantined", line.quarantined},
        {"bin", jsonTextOrNull(line.bin)}};
}

QJsonObject jsonStock(const Camp& camp, const std::optional<ChainCheck>& chain)
{
    QJsonArray lines;
    for (const auto& line : camp.stock())
        lines.append(jsonLine(line));
    QJsonArray edited;
    for (const auto& each : camp.edited())
        edited.append(QJsonObject{
            {"line", jsonText(each.line)}, {"in_file", each.inFile}, {"in_ledger", each.inLedger}});
    QJsonValue ledger(QJsonValue::Null);
    if (chain)
        ledger = QJsonObject{{"entries", static_cast<qint64>(chain->entries)},
                             {"chain_ok", chain->ok},
                             {"first_bad", chain->firstBad ? QJsonValue(static_cast<qint64>(*chain->firstBad))
                                                           : QJsonValue(QJsonValue::Null)}};
    return {{"site", jsonText(camp.site())}, {"lines", lines}, {"edited", edited}, {"ledger", ledger}};
}

QString lineWords(const StockLine& line)
{
    QString text = QStringLiteral("%1  %2  ").arg(ltr(line.name), -24).arg(say(line.kind), -11) +
                   commandWords(QT_TRANSLATE_NOOP("command", "on hand %1  available %2"))
                       .arg(line.onHand, 4)
                       .arg(line.available(), 4);
    if (!line.bin.empty())
        text +=
            QStringLiteral("  ") + commandWords(QT_TRANSLATE_NOOP("command", "bin %1")).arg(ltr(line.bin));
    return text;
}

void showStock(const Camp& camp, const std::optional<ChainCheck>& chain, Output& out)
{
    out.line(QString::fromStdString(camp.site()));
    for (const auto& line : camp.stock())
        out.line(lineWords(line));
    if (!chain) {
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "no ledger yet")));
        return;
    }
    out.line((chain->ok ? commandWords(QT_TRANSLATE_NOOP("command", "ledger: %1 entries, all in order"))
                        : commandWords(QT_TRANSLATE_NOOP("command", "ledger: %1 entries, not in order")))
                 .arg(chain->entries));
}

} // namespace

int runStock(const CommandLine& line, Output& out)
{
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    out.tell(camp.findings());
    std::optional<ChainCheck> chain;
    if (camp.hasLedger())
        chain = camp.ledger().checkChain();
    if (line.has("--json"))
        out.json(jsonStock(camp, chain));
    else
        showStock(camp, chain, out);
    if (!chain || chain->ok)
        return Exit::done;
    out.tell(
        line.has("--check") ? Severity::error : Severity::caution, Position{}, "chain-broken",
        {QS_SAY("core",
                "ledger entry %1 is not as it was written: %2; keep the folder as it is and compare it with "
                "a copy"),
         {std::to_string(chain->firstBad.value_or(0)), chain->what}});
    return line.has("--check") ? Exit::badData : Exit::done;
}

} // namespace quarterstep
