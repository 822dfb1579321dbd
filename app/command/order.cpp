// SPDX-License-Identifier: GPL-3.0-or-later
// order: custom spectacles from the order to the person: ordered, arrived, checked, delivered, remade or not
// collected; without a step, the orders that are open.
#include "app/command/exchange.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/order_file.hpp"
#include "app/command/output.hpp"
#include "app/command/picked.hpp"
#include "app/session/order_file_for.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace quarterstep
{
namespace
{

constexpr EntryKind steps[] = {EntryKind::ordered,   EntryKind::orderArrived, EntryKind::orderChecked,
                               EntryKind::delivered, EntryKind::remade,       EntryKind::notCollected};

EntryKind stepOf(const std::string& word)
{
    std::string words;
    for (const auto step : steps) {
        if (word == wordOf(step))
            return step;
        words += (words.empty() ? "" : ", ") + std::string(wordOf(step));
    }
    refuseUsage("option-value",
                {QS_SAY("core", "“%1” is no step of an order; write one of %2"), {word, words}});
}

QJsonObject jsonOrder(const Order& order)
{
    QJsonArray held;
    for (const auto& movement : order.held)
        held.append(jsonText(movement.line));
    return {{"id", jsonText(order.id)},     {"person", jsonText(order.person)},
            {"site", jsonText(order.site)}, {"state", wordOf(order.state)},
            {"remakes", order.remakes},     {"held", held},
            {"open", order.open()}};
}

QString orderWords(const Order& order)
{
    constexpr EntryKind kinds[] = {EntryKind::ordered, EntryKind::orderArrived, EntryKind::orderChecked,
                                   EntryKind::delivered, EntryKind::notCollected};
    auto text = QStringLiteral("%1  %2  ").arg(ltr(order.person), -12).arg(ltr(order.id)) +
                commandWords(QT_TRANSLATE_NOOP("command", "%1 since %2, ordered %3"))
                    .arg(kindWords(kinds[static_cast<std::size_t>(order.state)]),
                         momentWords(order.changedMs), momentWords(order.orderedMs));
    for (const auto& movement : order.held)
        text += QStringLiteral("; ") +
                commandWords(QT_TRANSLATE_NOOP("command", "frame held: %1")).arg(ltr(movement.line));
    if (order.remakes > 0)
        text += QStringLiteral("; ") +
                commandWords(QT_TRANSLATE_NOOP("command", "remade %1 times")).arg(order.remakes);
    return text;
}

int listOrders(const CommandLine& line, Output& out)
{
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    out.tell(camp.findings());
    auto orders = camp.hasLedger() ? ordersOf(camp.ledger()) : std::vector<Order>{};
    std::erase_if(orders, [&](const Order& order) {
        return (!order.open() && !line.has("--all")) ||
               (line.has("--person") && order.person != line.value("--person"));
    });
    QJsonArray array;
    for (const auto& order : orders) {
        array.append(jsonOrder(order));
        if (!line.has("--json"))
            out.line(orderWords(order));
    }
    if (line.has("--json"))
        out.json(QJsonObject{{"site", jsonText(camp.site())}, {"orders", array}});
    else
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "orders: %1")).arg(orders.size()));
    return Exit::done;
}

SingleWork wordsOf(const CommandLine& line)
{
    SingleWork words;
    words.kind = EntryKind::ordered;
    words.line = line.value("--line");
    words.actor = line.value("--actor");
    words.person = line.value("--person");
    words.reason = line.value("--reason");
    words.note = line.value("--note");
    return words;
}

/// With a TABLE, which was read to `person`, the prescription goes with the order.
Entry orderOf(const CommandLine& line, const Camp& camp, const SingleWork& words,
              const std::optional<PersonRecord>& person)
{
    if (!person)
        return singleEntry(words);
    auto answers = recommend(*person, {}, camp.rules(), matchOptions(line, camp.rules()));
    return orderEntry(camp, words, *person, chosenPurpose(line, std::move(answers)));
}

int placeOrder(const CommandLine& line, Output& out)
{
    if (line.value("--person").empty())
        refuseUsage("option-missing", {QS_SAY("core", "`order %1` needs --person CODE"), {"ordered"}});
    auto words = wordsOf(line);
    std::optional<PersonRecord> person; // read before the ledger is opened, and made where there is none
    if (line.arguments.size() > 1)
        person = personsToExport(tableOf(line), out).front();
    auto camp = openForWork(line, out);
    if (!words.line.empty()) {
        std::vector<QuantityRow> rows{{words.line, 1, {}, {}, {"--line", 0, 0}}};
        endOnErrors(takeNames(camp, rows), out);
        words.line = rows.front().line;
    }
    return carryOutAndShow(line, camp, {orderOf(line, camp, words, person)}, out);
}

} // namespace

int runOrder(const CommandLine& line, Output& out)
{
    if (!line.arguments.empty() && line.arguments.front() == "file")
        return writeOrder(line, out);
    needCamp(line);
    if (line.arguments.empty())
        return listOrders(line, out);
    const auto step = stepOf(line.arguments.front());
    if (step == EntryKind::ordered)
        return placeOrder(line, out);
    if (line.arguments.size() > 1)
        refuseUsage("arguments-too-many",
                    {QS_SAY("core", "a TABLE goes with `order file` and `order ordered`"), {}});
    if (line.has("--order") == line.has("--person"))
        refuseUsage("option-missing", {QS_SAY("core", "`order %1` needs --order ID, or --person CODE"),
                                       {line.arguments.front()}});
    if (step == EntryKind::remade && line.value("--reason").empty())
        refuseUsage("option-missing", {QS_SAY("core", "`order %1` needs %2"), {"remade", "--reason"}});
    auto camp = openForWork(line, out);
    const auto id =
        line.has("--order") ? line.value("--order") : openOrderOf(camp, line.value("--person")).id;
    return carryOutAndShow(line, camp, {orderStep(camp, id, step, wordsOf(line))}, out);
}

} // namespace quarterstep
