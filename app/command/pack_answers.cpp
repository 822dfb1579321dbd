// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/pack_answers.hpp"

#include "app/command/answers.hpp"
#include "app/command/output.hpp"
#include "app/session/pack_lists.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace quarterstep
{
namespace
{

QJsonArray jsonHeld(const PackAnswer& answer)
{
    QJsonArray held;
    for (const auto& one : answer.held)
        held.append(QJsonObject{{"way", QString::fromStdString(one.way)},
                                {"spend", jsonNumber(one.spend / 1000.0)},
                                {"served_share", jsonNumber(one.share)},
                                {"served_share_first_come", jsonNumber(one.firstCome)}});
    return held;
}

QJsonArray jsonCurve(const PackAnswer& answer)
{
    QJsonArray curve;
    for (const auto& point : answer.curve)
        curve.append(QJsonObject{{"spend", jsonNumber(static_cast<double>(point.spend) / 1000.0)},
                                 {"share", jsonNumber(point.share)}});
    return curve;
}

QJsonObject jsonLeftOut(const PackAnswer& answer)
{
    QJsonArray wanted;
    QJsonArray nobody;
    for (const auto& one : answer.leftOut)
        (one.wanted ? wanted : nobody).append(jsonText(one.line));
    QJsonObject reasons;
    for (const auto& [reason, share] : answer.unservable)
        reasons.insert(QString::fromStdString(reason), jsonNumber(share));
    return {
        {"others_do_as_well", wanted}, {"nobody_needs_it", nobody}, {"unservable_share_by_reason", reasons}};
}

/// Means over the days drawn.
QJsonArray jsonWithout(const PackAnswer& answer)
{
    QJsonArray without;
    for (const auto& one : answer.without)
        without.append(QJsonObject{{"purpose", QString::fromLatin1(jsonWord(one.purpose))},
                                   {"child", one.child},
                                   {"reason", jsonText(one.reason)},
                                   {"needs", jsonNumber(one.needs)},
                                   {"of", jsonNumber(one.of)}});
    return without;
}

void showChecks(const PackAnswer& answer, Output& out)
{
    if (!answer.heldOut) {
        out.line(commandWords(QT_TRANSLATE_NOOP(
            "command", "not checked: too few people to plan on one half and check on the other")));
        return;
    }
    out.line(commandWords(QT_TRANSLATE_NOOP(
        "command", "checked on people that were not planned for (planned on one half, served the other):")));
    for (const auto& one : answer.held)
        out.line(QStringLiteral("  ") + checkedWords(one));
}

void showLeftOut(const PackAnswer& answer, Output& out)
{
    for (const auto& [reason, share] : answer.unservable)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "nothing on offer serves %1 %: %2"))
                     .arg(percent(share), QString::fromStdString(reason)));
    QStringList names[2];
    for (const auto& one : answer.leftOut)
        names[one.wanted ? 1 : 0] << ltr(one.line);
    if (!names[1].isEmpty())
        out.line(commandWords(
                     QT_TRANSLATE_NOOP("command", "not bought, since others do as well for the money: %1"))
                     .arg(names[1].join(QStringLiteral(", "))));
    if (!names[0].isEmpty())
        out.line(commandWords(
                     QT_TRANSLATE_NOOP("command", "not bought, since nobody of this demand needs them: %1"))
                     .arg(names[0].join(QStringLiteral(", "))));
}

void showRunOuts(const PackAnswer& answer, Output& out)
{
    constexpr std::size_t shown = 8;
    for (std::size_t i = 0; i < std::min(shown, answer.runOuts.size()); ++i)
        out.line(runOutWords(answer.runOuts[i]));
}

void showBoxes(const PackAnswer& answer, Output& out)
{
    int box = 0;
    for (const auto& row : answer.boxes) {
        if (row.box != box) {
            box = row.box;
            out.line(commandWords(QT_TRANSLATE_NOOP("command", "box %1")).arg(box));
        }
        const auto bin = row.bin.empty() ? commandWords(QT_TRANSLATE_NOOP("command", "new")) : ltr(row.bin);
        out.line(QStringLiteral("  %1  %2  %3").arg(ltr(row.line), bin).arg(row.quantity));
    }
}

} // namespace

QJsonObject jsonPacking(const PackAnswer& answer, const PackQuestion& question, const QStringList& told)
{
    QJsonArray lines;
    for (const auto& row : answer.lines)
        lines.append(QJsonObject{{"line", jsonText(row.line)}, {"quantity", row.quantity}});
    QJsonArray order;
    for (const auto& row : answer.order)
        order.append(QJsonObject{{"offer", jsonText(row.offer)},
                                 {"packs", row.packs},
                                 {"pieces", row.pieces},
                                 {"cost", jsonNumber(static_cast<double>(row.cost) / 1000.0)},
                                 {"weight_g", static_cast<double>(row.grams)},
                                 {"on_hand", row.onHand},
                                 {"wanted_share", jsonNumber(row.wanted)},
                                 {"only_share", jsonNumber(row.only)},
                                 {"served_more", jsonNumber(row.servedMore)}});
    QJsonArray boxes;
    for (const auto& row : answer.boxes)
        boxes.append(QJsonObject{{"box", row.box},
                                 {"bin", jsonTextOrNull(row.bin)},
                                 {"line", jsonText(row.line)},
                                 {"quantity", row.quantity},
                                 {"bought", row.bought}});
    QJsonArray runOuts;
    for (const auto& one : answer.runOuts)
        runOuts.append(QJsonObject{{"line", jsonText(one.line)},
                                   {"chance", jsonNumber(one.chance)},
                                   {"at_person", jsonNumber(one.atPerson)}});
    const bool knee = answer.knee < answer.curve.size();
    return {{"spend", jsonNumber(static_cast<double>(answer.spend) / 1000.0)},
            {"served_share", answer.heldOut ? jsonNumber(answer.servedShare) : QJsonValue()},
            {"fitted_share", jsonNumber(answer.fittedShare)},
            {"servable_share", jsonNumber(answer.servable)},
            {"weight_g", static_cast<double>(answer.grams)},
            {"people", question.people},
            {"lines", lines},
            {"order", order},
            {"boxes", boxes},
            {"curve", jsonCurve(answer)},
            {"knee",
             knee ? jsonNumber(static_cast<double>(answer.curve[answer.knee].spend) / 1000.0) : QJsonValue()},
            {"proof", answer.impossible ? QJsonValue()
                                        : QJsonObject{{"bound", jsonNumber(answer.bound)},
                                                      {"gap", jsonNumber(gapOf(answer))}}},
            {"held_out", jsonHeld(answer)},
            {"run_outs", runOuts},
            {"left_out", jsonLeftOut(answer)},
            {"without", jsonWithout(answer)},
            {"demand", QJsonArray::fromStringList(told)}};
}

void showPacking(const PackAnswer& answer, const PackQuestion& question, const QStringList& told,
                 const QString& currency, Output& out)
{
    for (const auto& words : told)
        out.line(words);
    if (answer.impossible)
        return;
    out.line(
        commandWords(QT_TRANSLATE_NOOP("command", "order for the next %1 people:")).arg(question.people));
    for (const auto& row : answer.order)
        out.line(QStringLiteral("  ") +
                 commandWords(QT_TRANSLATE_NOOP("command", "%1: %2 packs, %3 pieces, %4"))
                     .arg(ltr(row.offer))
                     .arg(row.packs)
                     .arg(row.pieces)
                     .arg(moneyWords(static_cast<double>(row.cost))));
    out.line(spendWords(answer, question, currency));
    showChecks(answer, out);
    out.line(fittedWords(answer));
    if (const auto knee = kneeWords(answer); !knee.isEmpty())
        out.line(knee);
    showRunOuts(answer, out);
    showLeftOut(answer, out);
    showBoxes(answer, out);
}

} // namespace quarterstep
