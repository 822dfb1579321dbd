// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/packing_rows.hpp"

#include "app/session/pack_lists.hpp"
#include "app/session/wording.hpp"

namespace quarterstep
{

namespace
{

MadeCell nameCell(const std::string& name)
{
    return {name.empty() ? QString() : ltr(name), QString::fromStdString(name), QString::fromStdString(name)};
}

MadeCell countCell(int count)
{
    return {QString::number(count), count};
}

MadeCell moneyCell(double thousandths)
{
    return {ltr(moneyWords(thousandths)), thousandths};
}

MadeCell oneDigit(double value)
{
    return {ltr(QString::number(value, 'f', 1)), value};
}

/// A number keeps its sign where a line is broken.
MadeCell percentCell(double share)
{
    return {ltr(QStringLiteral("%1\u00A0%").arg(QString::number(100.0 * share, 'f', 1))), share};
}

QString percentOf(double share)
{
    return percentCell(share).shown;
}

} // namespace

MadeTable PackingRows::order(const PackAnswer& answer)
{
    MadeTable table{{tr("Pack"), tr("Packs"), tr("Pieces"), tr("Cost"), tr("Grams"), tr("Why")}, {}};
    for (const auto& row : answer.order)
        table.rows.push_back({nameCell(row.offer),
                              countCell(row.packs),
                              countCell(row.pieces),
                              moneyCell(static_cast<double>(row.cost)),
                              {QString::number(row.grams), static_cast<qlonglong>(row.grams)},
                              {why(row), why(row)}});
    return table;
}

QString PackingRows::why(const OrderRow& row)
{
    QStringList words;
    constexpr double least = 0.0005; // shown in tenths of a per cent
    words << (row.servedMore >= least ? tr("without it %1 fewer served").arg(percentOf(row.servedMore))
                                      : tr("a reserve"));
    if (row.only >= least)
        words << tr("nothing else for %1").arg(percentOf(row.only));
    words << tr("fits %1").arg(percentOf(row.wanted))
          << (row.onHand > 0 ? tr("%n on hand", nullptr, row.onHand) : tr("none on hand"));
    return words.join(QStringLiteral(" · "));
}

MadeTable PackingRows::boxes(const PackAnswer& answer)
{
    MadeTable table{{tr("Box"), tr("Bin"), tr("Line"), tr("Pieces"), tr("Of these bought")}, {}};
    for (const auto& row : answer.boxes)
        table.rows.push_back({countCell(row.box),
                              row.bin.empty() ? MadeCell{tr("new"), QString()} : nameCell(row.bin),
                              nameCell(row.line), countCell(row.quantity), countCell(row.bought)});
    return table;
}

MadeTable PackingRows::checked(const PackAnswer& answer)
{
    MadeTable table{{tr("Way"), tr("Served"), tr("First come"), tr("Spends")}, {}};
    for (const auto& one : answer.held)
        table.rows.push_back({{wayWords(one.way), QString::fromStdString(one.way)},
                              percentCell(one.share),
                              percentCell(one.firstCome),
                              moneyCell(one.spend)});
    return table;
}

QString PackingRows::reason(const std::string& key)
{
    if (key == "ran_out")
        return tr("what would do has run out by then");
    if (key == "power_not_in_box")
        return tr("no such power on hand or on offer");
    for (const auto& info : criterionTable())
        if (key == info.name)
            return tr("nothing on offer keeps the limit: %1").arg(say(info.criterion));
    return QString::fromStdString(key);
}

MadeTable PackingRows::without(const PackAnswer& answer)
{
    MadeTable table{{tr("Who"), tr("Without"), tr("Of"), tr("Why")}, {}};
    for (const auto& row : answer.without) {
        const auto who =
            row.child ? tr("%1, children").arg(say(row.purpose)) : tr("%1, adults").arg(say(row.purpose));
        table.rows.push_back({{who, who},
                              oneDigit(row.needs),
                              oneDigit(row.of),
                              {reason(row.reason), QString::fromStdString(row.reason)}});
    }
    return table;
}

MadeTable PackingRows::runOuts(const PackAnswer& answer)
{
    MadeTable table{{tr("Line"), tr("Days in a hundred"), tr("By person")}, {}};
    for (const auto& one : answer.runOuts)
        table.rows.push_back({nameCell(one.line),
                              {QString::number(100.0 * one.chance, 'f', 0), one.chance},
                              {QString::number(one.atPerson, 'f', 0), one.atPerson}});
    return table;
}

MadeTable PackingRows::leftOut(const PackAnswer& answer)
{
    MadeTable table{{tr("Line"), tr("Why not")}, {}};
    for (const bool wanted : {true, false})
        for (const auto& one : answer.leftOut)
            if (one.wanted == wanted)
                table.rows.push_back(
                    {nameCell(one.line),
                     {wanted ? tr("others do as well for the money") : tr("nobody of this demand needs it"),
                      wanted}});
    return table;
}

MadeTable PackingRows::curve(const PackAnswer& answer)
{
    MadeTable table{{tr("Spent"), tr("Served, planned for"), tr("Remark")}, {}};
    for (std::size_t at = 0; at < answer.curve.size(); ++at) {
        const auto& point = answer.curve[at];
        const bool knee = at == answer.knee && at > 0;
        table.rows.push_back({moneyCell(static_cast<double>(point.spend)),
                              percentCell(point.share),
                              {knee ? tr("the curve bends here") : QString(), knee}});
    }
    return table;
}

std::optional<double> shareAt(const PackAnswer& answer, long budget, long drawnFor)
{
    if (budget > drawnFor)
        return std::nullopt;
    std::optional<double> share;
    for (const auto& point : answer.curve)
        if (point.spend <= budget)
            share = point.share;
    return share;
}

} // namespace quarterstep
