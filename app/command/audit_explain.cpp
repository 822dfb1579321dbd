// SPDX-License-Identifier: GPL-3.0-or-later
// audit --explain-entry ENTRY: one hand-over in full, with the arithmetic behind each class of slips.
#include "app/command/audit.hpp"
#include "app/command/output.hpp"
#include "app/session/slip_words.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

/// Three figures that count, small ones with a power of ten.
QString figure(double value)
{
    return QString::number(value, 'g', 3);
}

QJsonObject jsonClass(const SlipClass& group)
{
    QJsonArray members;
    for (const auto& member : group.members)
        members.append(QJsonObject{{"name", infoOf(member.kind).word},
                                   {"eye", !member.eye                 ? QJsonValue(QJsonValue::Null)
                                           : *member.eye == Eye::right ? QJsonValue("right")
                                                                       : QJsonValue("left")},
                                   {"prior", member.prior},
                                   {"witnesses", member.witnesses},
                                   {"pair", member.pair},
                                   {"weight", member.weight()}});
    return {{"name", infoOf(group.kind()).word},
            {"probability", jsonNumber(group.probability)},
            {"detail", say(group.detail)},
            {"other_entry", jsonTextOrNull(group.other)},
            {"members", members}};
}

void showClasses(const SlipAnswer& slips, Output& out)
{
    if (slips.empty()) {
        out.line(commandWords(
            QT_TRANSLATE_NOOP("command", "no slip was looked for: record, pair and witnesses agree")));
    } else {
        out.line(commandWords(QT_TRANSLATE_NOOP(
            "command", "probability = prior × witnesses × pair, over the sum; witnesses and pair are against "
                       "what was recorded")));
        for (const auto& group : slips.classes) {
            out.line(QStringLiteral("%1  ").arg(QString::number(group.probability, 'f', 3)) +
                     slipWords(group) + QStringLiteral(": ") + say(group.detail));
            for (const auto& member : group.members)
                out.line(QStringLiteral("         %1: %2 × %3 × %4 = %5")
                             .arg(slipWords(member), figure(member.prior), figure(member.witnesses),
                                  figure(member.pair), figure(member.weight())));
        }
    }
    if (!slips.witnessed)
        out.line(commandWords(QT_TRANSLATE_NOOP(
            "command", "slips of the record are not testable here: nothing was measured beside it (objective "
                       "reading, own pair, acuity with the pair)")));
    if (!slips.additionWitnessed)
        out.line(commandWords(QT_TRANSLATE_NOOP(
            "command", "slips of the addition are not testable here (own pair's addition, near acuity)")));
    if (!slips.pdWitnessed)
        out.line(commandWords(QT_TRANSLATE_NOOP(
            "command", "slips of the PD are not testable here (near PD, card read again)")));
    if (!slips.pairWitnessed)
        out.line(
            commandWords(QT_TRANSLATE_NOOP("command", "the pair itself was not read again by focimeter")));
}

} // namespace

int explainAudit(const CommandLine& line, const Camp& camp, const AuditOptions& options, Output& out)
{
    const auto wanted = line.value("--explain-entry");
    bool found = false;
    AuditEars ears;
    QJsonObject answer;
    ears.judged = [&](const JudgedHandOver& judged, const SlipAnswer& slips) {
        if (judged.facts.entry != wanted)
            return;
        found = true;
        QJsonArray findings;
        for (const auto& finding : judged.findings) {
            findings.append(
                QJsonObject{{"class", infoOf(finding.kind).word}, {"detail", say(finding.detail)}});
            if (!line.has("--json"))
                out.line(say({infoOf(finding.kind).words, {}}) + QStringLiteral(": ") + say(finding.detail));
        }
        QJsonArray classes;
        for (const auto& group : slips.classes)
            classes.append(jsonClass(group));
        answer = {{"entry", jsonText(wanted)},
                  {"findings", findings},
                  {"witnessed", slips.witnessed},
                  {"addition_witnessed", slips.additionWitnessed},
                  {"pd_witnessed", slips.pdWitnessed},
                  {"pair_witnessed", slips.pairWitnessed},
                  {"classes", classes}};
        if (!line.has("--json"))
            showClasses(slips, out);
    };
    (void)auditCamp(camp, options, ears);
    if (!found)
        throw errorSaying("entry-gone", {QS_SAY("core", "no standing hand-over with the id %1"), {wanted}},
                          Exit::badData);
    if (line.has("--json"))
        out.json(answer);
    return Exit::done;
}

} // namespace quarterstep
