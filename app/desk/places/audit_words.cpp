// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/audit_words.hpp"

#include "app/desk/models/findings_model.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/words.hpp"
#include "app/session/slip_words.hpp"
#include "app/session/wording.hpp"
#include "core/optics/notation.hpp"

#include <QGuiApplication>
#include <QStringList>

namespace quarterstep
{

QString joinedNames(const std::vector<std::string>& names)
{
    QStringList list;
    for (const auto& name : names)
        list << QString::fromStdString(name);
    return ltr(list.join(QStringLiteral(" + ")));
}

QString auditCaseWords(const AuditCase& one)
{
    QStringList lines;
    const auto& judged = one.judged;
    for (const Eye eye : bothEyes) {
        const auto name = eye == Eye::right ? AuditPlace::tr("Right") : AuditPlace::tr("Left");
        if (!judged.need)
            break;
        const auto& need = judged.need->eyes.of(eye);
        if (!need.seeing) {
            lines << AuditPlace::tr("%1: not judged").arg(name);
            continue;
        }
        auto line =
            AuditPlace::tr("%1: needs %2").arg(name, ltr(QString::fromStdString(writePower(need.power))));
        if (judged.facts.supply)
            line += AuditPlace::tr(", was given %1")
                        .arg(ltr(QString::fromStdString(writePower(judged.facts.supply->power.of(eye)))));
        if (judged.fit)
            line +=
                QStringLiteral(" · ") + DeskWords::residual(judged.fit->eyes.of(eye), judged.facts.purpose);
        lines << line;
    }
    if (judged.fit)
        lines << AuditPlace::tr("Pair %1: %2").arg(joinedNames(one.given), DeskWords::verdict(*judged.fit));
    if (judged.best && !judged.bestLines.empty())
        lines << AuditPlace::tr("In the box lay %1 (bin %2): %3")
                     .arg(joinedNames(judged.bestLines), joinedNames(judged.bestBins),
                          DeskWords::verdict(judged.best->fit));
    const bool mirrored = QGuiApplication::isRightToLeft();
    for (const auto& finding : judged.findings) {
        const auto& info = quarterstep::infoOf(finding.kind);
        lines << QStringLiteral("%1 %2: %3")
                     .arg(mirrored ? QStringLiteral("\u25C2") : QStringLiteral("\u25B8"),
                          say(Sentence{info.words, {}}), say(finding.detail));
        lines << QStringLiteral("%1 %2").arg( // what to do about it
            mirrored ? QStringLiteral("\u2190") : QStringLiteral("\u2192"), say(Sentence{info.next, {}}));
    }
    return lines.join(QLatin1Char('\n'));
}

QString slipArithmetic(const AuditCase& one)
{
    if (one.judged.facts.atMs == 0)
        return {};
    QStringList lines;
    const auto figure = [](double value) { return QString::number(value, 'g', 3); };
    if (one.slips.empty())
        lines << AuditPlace::tr("No slip was looked for: record, pair and witnesses agree.");
    for (const auto& group : one.slips.classes) {
        lines << AuditPlace::tr("%1  %2: %3")
                     .arg(ltr(QString::number(group.probability, 'f', 3)), slipWords(group),
                          say(group.detail));
        for (const auto& member : group.members)
            lines << ltr(QStringLiteral("        %1 × %2 × %3 = %4")
                             .arg(figure(member.prior), figure(member.witnesses), figure(member.pair),
                                  figure(member.weight())));
    }
    if (!one.slips.empty())
        lines << AuditPlace::tr(
            "Below each: prior × witnesses × pair; the probability is its part of the sum.");
    if (!one.slips.witnessed)
        lines << AuditPlace::tr("Slips of the record cannot be tested here: nothing was measured beside it.");
    return lines.join(QLatin1Char('\n'));
}

QString chainWords(const ChainCheck& chain)
{
    return chain.ok ? AuditPlace::tr("The record is whole: %1 entries, each follows the one before.")
                          .arg(chain.entries)
                    : say(brokenChain(chain));
}

} // namespace quarterstep
