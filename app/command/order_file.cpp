// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/order_file.hpp"

#include "app/command/exchange.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/command/picked.hpp"
#include "inventory/exchange/order_file.hpp"

#include <QCoreApplication>

#include <algorithm>

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
    if (!answer.need)
        throw errorSaying(
            "paper-not-for",
            {QS_SAY("core", "the prescription of %1 is not complete; there is no order to write"),
             {person.person}},
            Exit::badData);
    OrderFile file;
    file.order = laboratoryOrder(person, *answer.need, cylinderFormOf(line));
    file.job = line.has("--order") ? line.value("--order") : person.person;
    file.frame = frameOf(line);
    if (file.frame.lens > 0.0 && file.order.frame.empty()) {
        file.order.frame = line.value("--line");
        std::erase_if(file.order.missing, [](const Sentence& each) { return each.text == "the frame"; });
    }
    file.rules = stampedWith(rules, answer.profile, {person}).front().rules;
    return file;
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
    const bool incomplete =
        std::any_of(written.findings.begin(), written.findings.end(),
                    [](const Finding& finding) { return finding.code == "order-incomplete"; });
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
    return incomplete ? Exit::unserved : Exit::done;
}

} // namespace quarterstep
