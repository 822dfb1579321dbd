// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/pack_lists.hpp"

#include "app/session/wording.hpp"
#include "inventory/text/csv_writing.hpp"

#include <QCoreApplication>

namespace quarterstep
{

namespace
{

QString packWords(const char* text)
{
    return QCoreApplication::translate("command", text);
}

QString percentOf(double share)
{
    return QString::number(100.0 * share, 'f', 1);
}

} // namespace

QString moneyWords(double thousandths)
{
    return QString::number(thousandths / 1000.0, 'f', 2);
}

QString wayWords(const std::string& way)
{
    if (way == "plan")
        return packWords(QT_TRANSLATE_NOOP("command", "this plan"));
    if (way == "greedy")
        return packWords(QT_TRANSLATE_NOOP("command", "greedy, without repairs"));
    if (way == "newsvendor")
        return packWords(QT_TRANSLATE_NOOP("command", "each line by its own demand (newsvendor)"));
    if (way == "keep-levels")
        return packWords(QT_TRANSLATE_NOOP("command", "levels by past use"));
    return packWords(QT_TRANSLATE_NOOP("command", "what is on hand, nothing bought"));
}

double gapOf(const PackAnswer& answer)
{
    return answer.bound > 0.0 ? (answer.bound - answer.fittedShare) / answer.bound : 0.0;
}

QString spendWords(const PackAnswer& answer, const PackQuestion& question, const QString& currency)
{
    return packWords(QT_TRANSLATE_NOOP("command", "spend %1 of %2 %3, %4 pieces, %5 kg"))
        .arg(moneyWords(static_cast<double>(answer.spend)), moneyWords(static_cast<double>(question.budget)),
             currency)
        .arg(answer.pieces)
        .arg(QString::number(static_cast<double>(answer.grams) / 1000.0, 'f', 1));
}

QString checkedWords(const Held& held)
{
    return packWords(QT_TRANSLATE_NOOP("command", "%1: serves %2 %, first come %3 %, spends %4"))
        .arg(wayWords(held.way), percentOf(held.share), percentOf(held.firstCome), moneyWords(held.spend));
}

QString fittedWords(const PackAnswer& answer)
{
    return packWords(QT_TRANSLATE_NOOP(
                         "command",
                         "on the draws planned for: %1 %, no order serves more than %2 % (gap %3 %); on "
                         "offer and on hand could serve %4 % at most"))
        .arg(percentOf(answer.fittedShare), percentOf(answer.bound), percentOf(gapOf(answer)),
             percentOf(answer.servable));
}

QString kneeWords(const PackAnswer& answer)
{
    if (answer.knee == 0 || answer.knee >= answer.curve.size())
        return {};
    return packWords(QT_TRANSLATE_NOOP("command", "the curve bends at %1: %2 % of the draws planned for"))
        .arg(moneyWords(static_cast<double>(answer.curve[answer.knee].spend)),
             percentOf(answer.curve[answer.knee].share));
}

QString runOutWords(const RunOut& one)
{
    return packWords(QT_TRANSLATE_NOOP("command", "%1 runs out on %2 days in a hundred, by person %3"))
        .arg(ltr(one.line), QString::number(100.0 * one.chance, 'f', 0),
             QString::number(one.atPerson, 'f', 0));
}

std::string orderCsv(const PackAnswer& answer)
{
    std::string csv = csvRow({"offer", "packs", "pieces", "cost", "weight_g"});
    for (const auto& row : answer.order)
        csv += csvRow({row.offer, std::to_string(row.packs), std::to_string(row.pieces),
                       moneyWords(static_cast<double>(row.cost)).toStdString(), std::to_string(row.grams)});
    return csv;
}

std::string boxesCsv(const PackAnswer& answer)
{
    std::string csv = csvRow({"box", "bin", "line", "quantity", "of_these_bought"});
    for (const auto& row : answer.boxes)
        csv += csvRow({std::to_string(row.box), row.bin, row.line, std::to_string(row.quantity),
                       std::to_string(row.bought)});
    return csv;
}

} // namespace quarterstep
