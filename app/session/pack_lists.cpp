// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/pack_lists.hpp"

#include "inventory/text/csv_writing.hpp"

#include <QCoreApplication>

namespace quarterstep
{

QString moneyWords(double thousandths)
{
    return QString::number(thousandths / 1000.0, 'f', 2);
}

QString wayWords(const std::string& way)
{
    if (way == "plan")
        return QCoreApplication::translate("command", "this plan");
    if (way == "greedy")
        return QCoreApplication::translate("command", "greedy, without repairs");
    if (way == "newsvendor")
        return QCoreApplication::translate("command", "each line by its own demand (newsvendor)");
    if (way == "keep-levels")
        return QCoreApplication::translate("command", "levels by past use");
    return QCoreApplication::translate("command", "what is on hand, nothing bought");
}

double gapOf(const PackAnswer& answer)
{
    return answer.bound > 0.0 ? (answer.bound - answer.fittedShare) / answer.bound : 0.0;
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
