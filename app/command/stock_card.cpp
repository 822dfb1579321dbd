// SPDX-License-Identifier: GPL-3.0-or-later
// The stock card of a line.
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/command/stock.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/line_code.hpp"

#include <QCoreApplication>
#include <QDateTime>

namespace quarterstep
{
namespace
{

std::string wordIn(const std::map<std::string, std::string>& words, const char* name)
{
    const auto found = words.find(name);
    return found == words.end() ? std::string() : found->second;
}

QJsonObject jsonRow(const CardRow& row)
{
    const auto& entry = row.entry;
    return {{"entry", jsonText(entry.id)},
            {"number", static_cast<qint64>(entry.number)},
            {"at", QDateTime::fromMSecsSinceEpoch(entry.atMs, Qt::UTC).toString(Qt::ISODateWithMs)},
            {"kind", wordOf(entry.kind)},
            {"person", jsonTextOrNull(entry.person)},
            {"actor", jsonTextOrNull(entry.actor)},
            {"on_hand", row.movement.delta},
            {"held", row.movement.held},
            {"quarantined", row.movement.quarantined},
            {"balance", static_cast<qint64>(row.balance)},
            {"from", jsonTextOrNull(wordIn(entry.fields, "from"))},
            {"to", jsonTextOrNull(wordIn(entry.fields, "to"))},
            {"second", jsonTextOrNull(wordIn(entry.fields, "second"))},
            {"cause", jsonTextOrNull(wordIn(entry.fields, "cause"))},
            {"reason", jsonTextOrNull(wordIn(entry.texts, "reason"))},
            {"note", jsonTextOrNull(wordIn(entry.texts, "note"))}};
}

QString rowWords(const CardRow& row)
{
    const auto& entry = row.entry;
    QString text = QStringLiteral("%1  %2  %3  ")
                       .arg(momentWords(entry.atMs))
                       .arg(ltr(signedCount(row.movement.delta)), 5)
                       .arg(row.balance, 5) +
                   kindWords(entry.kind);
    const auto add = [&text](const QString& words) { text += QStringLiteral("; ") + words; };
    if (row.movement.held != 0)
        add(commandWords(QT_TRANSLATE_NOOP("command", "held %1")).arg(ltr(signedCount(row.movement.held))));
    if (row.movement.quarantined != 0)
        add(commandWords(QT_TRANSLATE_NOOP("command", "in quarantine %1"))
                .arg(ltr(signedCount(row.movement.quarantined))));
    if (!entry.person.empty())
        add(ltr(entry.person));
    if (!entry.actor.empty())
        add(commandWords(QT_TRANSLATE_NOOP("command", "by %1")).arg(ltr(entry.actor)));
    for (const char* name : {"from", "to", "second", "cause"})
        if (const auto words = wordIn(entry.fields, name); !words.empty())
            add(QString::fromStdString(words));
    for (const char* name : {"reason", "note"})
        if (const auto words = wordIn(entry.texts, name); !words.empty())
            add(QString::fromStdString(words));
    return text + QStringLiteral("; ") + ltr(entry.id);
}

} // namespace

int showCard(const CommandLine& line, const Camp& camp, Output& out)
{
    auto name = line.value("--line");
    if (const auto scanned = lineScanned(camp.stock(), name))
        name = camp.stock()[scanned.value()].name;
    else if (scanned.complaint().code == "code-check-digit")
        throw errorSaying("code-check-digit", scanned.complaint().sentence, Exit::badData);
    const auto rows = camp.hasLedger() ? camp.ledger().card(camp.site(), name) : std::vector<CardRow>{};
    const auto index = camp.lineNamed(name);
    if (rows.empty() && !index)
        throw errorSaying("unknown-line", {QS_SAY("core", "there is no line %1 in this camp"), {name}},
                          Exit::badData);
    if (line.has("--json")) {
        QJsonArray movements;
        for (const auto& row : rows)
            movements.append(jsonRow(row));
        out.json(QJsonObject{{"site", jsonText(camp.site())},
                             {"line", jsonText(name)},
                             {"on_hand", index ? QJsonValue(camp.stock()[*index].onHand)
                                               : QJsonValue(static_cast<qint64>(rows.back().balance))},
                             {"movements", movements}});
        return Exit::done;
    }
    out.line(QStringLiteral("%1, %2").arg(ltr(name), QString::fromStdString(camp.site())));
    if (index)
        if (const auto& stock = camp.stock()[*index]; stock.keepLeast || stock.keepMost)
            out.line(commandWords(QT_TRANSLATE_NOOP("command", "keep at least %1, at most %2"))
                         .arg(stock.keepLeast ? QString::number(*stock.keepLeast) : QStringLiteral("-"),
                              stock.keepMost ? QString::number(*stock.keepMost) : QStringLiteral("-")));
    for (const auto& row : rows)
        out.line(rowWords(row));
    if (rows.empty())
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "no ledger yet")));
    return Exit::done;
}

} // namespace quarterstep
