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
FrameData frameOf(const CommandLine& line)
{
    if (!line.has("--line"))
        return {};
    needCamp(line);
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    const auto index = camp.lineNamed(line.value("--line"));
    if (!index)
        throw errorSaying("unknown-line",
                          {QS_SAY("core", "there is no line %1 in the stock"), {line.value("--line")}},
                          Exit::badData);
    return camp.stock()[*index].frame;
}

OrderFile orderOf(const CommandLine& line, const FittingRules& rules, const PersonRecord& person)
{
    const auto options = matchOptions(line, rules);
    const auto answer = chosenPurpose(line, recommend(person, {}, rules, options));
    return orderFileFor(person, answer, rules,
                        {line.has("--order") ? line.value("--order") : person.person, line.value("--line"),
                         frameOf(line), cylinderFormOf(line)});
}

} // namespace

int writeOrder(const CommandLine& line, Output& out)
{
    if (line.arguments.size() != 2)
        refuseUsage("arguments-missing", {QS_SAY("core", "`order file` needs the prescription table"), {}});
    if (!line.has("--person"))
        refuseUsage("option-missing", {QS_SAY("core", "`order %1` needs --person CODE"), {"file"}});
    if (line.has("--json"))
        refuseUsage("option-value", {QS_SAY("core", "an order file has its own form; leave --json out"), {}});
    CommandLine people = line;
    people.arguments.erase(people.arguments.begin()); // the word "file"
    const auto rules = rulesOfExchange(line, out);
    const auto person = personsToExport(people, out).front();
    const auto written = writeOrderFile(orderOf(line, rules, person));
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
                     .arg(QString::fromStdString(person.person)));
    if (dry)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "dry run: nothing was written")));
    return isIncomplete(written) ? Exit::unserved : Exit::done;
}

} // namespace quarterstep
