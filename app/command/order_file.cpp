// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/order_file.hpp"

#include "app/command/exchange.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/command/picked.hpp"
#include "app/session/order_file_for.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

/// The frame of --line, with its sizes, from the camp's stock.
void putFrame(const CommandLine& line, const Camp& camp, OrderWanted& wanted)
{
    const auto index = camp.lineNamed(line.value("--line"));
    if (!index)
        throw errorSaying("unknown-line",
                          {QS_SAY("core", "there is no line %1 in the stock"), {line.value("--line")}},
                          Exit::badData);
    wanted.lineName = line.value("--line");
    wanted.frame = camp.stock()[*index].frame;
}

OrderFile orderOfTable(const CommandLine& line, Output& out)
{
    if (!line.has("--person"))
        refuseUsage("option-missing", {QS_SAY("core", "`order %1` needs --person CODE"), {"file"}});
    const auto rules = rulesOfExchange(line, out);
    const auto person = personsToExport(tableOf(line), out).front();
    const auto answer = chosenPurpose(line, recommend(person, {}, rules, matchOptions(line, rules)));
    OrderWanted wanted;
    wanted.job = line.has("--order") ? line.value("--order") : person.person;
    wanted.form = cylinderFormOf(line);
    if (line.has("--line")) {
        needCamp(line);
        putFrame(line, Camp::open(line.value("--camp"), Ledger::Mode::readOnly), wanted);
    }
    return orderFileFor(person, answer, rules, wanted);
}

/// An order that was entered with its prescription.
OrderFile orderOfLedger(const CommandLine& line, Output& out)
{
    if (!line.has("--camp") || line.has("--order") == line.has("--person"))
        refuseUsage(
            "arguments-missing",
            {QS_SAY("core", "`order file` needs the prescription table, or --camp FOLDER with either --order "
                            "ID or --person CODE"),
             {}});
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    out.tell(camp.findings());
    const auto order = line.has("--order") ? orderNamed(camp, line.value("--order"))
                                           : openOrderOf(camp, line.value("--person"));
    const auto ordered = orderedFor(camp, order);
    if (!ordered)
        throw errorSaying(
            "order-no-prescription",
            {QS_SAY("core", "no prescription stands with the order %1; name the table that has it"),
             {order.id}},
            Exit::badData);
    auto wanted = wantedFor(camp, order);
    wanted.form = cylinderFormOf(line);
    if (line.has("--line"))
        putFrame(line, camp, wanted);
    return orderFileFor(ordered->person, ordered->answer, camp.rules(), wanted);
}

} // namespace

CommandLine tableOf(const CommandLine& line)
{
    auto people = line;
    people.arguments.erase(people.arguments.begin());
    return people;
}

int writeOrder(const CommandLine& line, Output& out)
{
    if (line.has("--json"))
        refuseUsage("option-value", {QS_SAY("core", "an order file has its own form; leave --json out"), {}});
    const auto file = line.arguments.size() == 2 ? orderOfTable(line, out) : orderOfLedger(line, out);
    const auto written = writeOrderFile(file);
    out.tell(written.findings);
    if (!written.usable())
        throw FilesNotRead();
    const bool dry = line.has("--dry-run");
    if (!line.has("--output") && !dry)
        out.text(QString::fromStdString(written.value));
    if (line.has("--output") && !dry)
        writeNewFile(line.value("--output"), written.value);
    if (line.has("--output") && !dry)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "order of %1 written"))
                     .arg(QString::fromStdString(file.order.person)));
    if (dry)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "dry run: nothing was written")));
    return isIncomplete(written) ? Exit::unserved : Exit::done;
}

} // namespace quarterstep
