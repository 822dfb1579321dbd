// SPDX-License-Identifier: GPL-3.0-or-later
// assign: who of a line should get which pair, so that most are served. Nothing is handed over or written but
// the list asked for.
#include "app/command/answers.hpp"
#include "app/command/line_choices.hpp"
#include "app/command/output.hpp"
#include "app/command/watched_work.hpp"
#include "app/session/wording.hpp"
#include "core/joined.hpp"
#include "inventory/store/write_back.hpp"
#include "inventory/text/csv_writing.hpp"
#include "inventory/text/told_list.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

std::vector<Told> toldOf(const CommandLine& line, Output& out)
{
    std::vector<Told> told;
    if (!line.has("--told"))
        return told;
    const auto reading = readToldList(line.value("--told"));
    out.tell(reading.findings);
    if (!reading.usable())
        throw FilesNotRead();
    for (const auto& row : reading.value)
        told.push_back({row.person, row.purpose, row.lines, row.position});
    return told;
}

QJsonObject jsonAssignment(const Assignment& given, std::span<const StockLine> stock)
{
    QJsonArray lines;
    QJsonArray sides;
    QJsonArray bins;
    for (const auto& part : given.parts) {
        lines.append(jsonText(stock[part.line].name));
        sides.append(jsonWord(part.side));
        bins.append(jsonTextOrNull(stock[part.line].bin));
    }
    return {{"person", jsonText(given.person)},
            {"purpose", jsonWord(given.purpose)},
            {"lines", lines},
            {"sides", sides},
            {"bins", bins},
            {"caution", given.caution},
            {"loss_logmar", given.told ? QJsonValue() : jsonNumber(given.lossLogMar)},
            {"prism_h_pd", given.told ? QJsonValue() : jsonNumber(given.prism)},
            {"told", given.told}};
}

QJsonArray jsonPrices(const LineAnswer& answer)
{
    QJsonArray prices;
    for (const auto& price : answer.prices) {
        QJsonArray lines;
        for (const auto& name : price.lines)
            lines.append(jsonText(name));
        prices.append(QJsonObject{{"lines", lines},
                                  {"available", price.available},
                                  {"wanted_by", price.wantedBy},
                                  {"one_more_serves", jsonNumber(price.oneMore.served)},
                                  {"one_more_saves_logmar", jsonNumber(price.oneMore.lossLogMar)}});
    }
    return prices;
}

QJsonObject jsonAnswer(const LineAnswer& answer, const PlanOptions& plan, std::span<const StockLine> stock,
                       int badRows)
{
    QJsonArray assignments;
    for (const auto& given : answer.assignments)
        assignments.append(jsonAssignment(given, stock));
    QJsonArray unserved;
    for (const auto& one : answer.unserved)
        unserved.append(QJsonObject{{"person", jsonText(one.person)},
                                    {"purpose", jsonWord(one.purpose)},
                                    {"reason", jsonText(one.reasonKey)}});
    QJsonArray others;
    for (const auto& one : answer.others)
        others.append(QJsonObject{{"person", jsonText(one.person)},
                                  {"purpose", jsonWord(one.purpose)},
                                  {"verdict", jsonWord(one.verdict)},
                                  {"reason", jsonText(one.reasonKey)}});
    QJsonArray priorities;
    for (const auto priority : plan.priorities)
        priorities.append(jsonWord(priority));
    QJsonObject object{{"people", answer.people},
                       {"served", answer.served},
                       {"served_first_come", answer.servedFirstCome},
                       {"loss_logmar", jsonNumber(answer.lossLogMar)},
                       {"loss_first_come_logmar", jsonNumber(answer.lossFirstCome)},
                       {"assignments", assignments},
                       {"unserved", unserved},
                       {"not_in_line", others},
                       {"priorities", priorities},
                       {"proof", jsonProof(answer.proof)},
                       {"bad_rows", badRows}};
    if (plan.gains)
        object.insert("prices", jsonPrices(answer));
    return object;
}

std::string csvOf(const LineAnswer& answer, std::span<const StockLine> stock)
{
    std::string csv = csvRow({"person", "purpose", "lines", "bins"});
    for (const auto& given : answer.assignments) {
        std::vector<std::string> lines;
        std::vector<std::string> bins;
        for (const auto& part : given.parts) {
            lines.push_back(stock[part.line].name);
            bins.push_back(stock[part.line].bin);
        }
        csv += csvRow({given.person, jsonWord(given.purpose), joined(lines, " + "), joined(bins, " + ")});
    }
    return csv;
}

void showPrices(const LineAnswer& answer, Output& out)
{
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "one more piece of these would help:")));
    constexpr std::size_t shown = 12;
    for (std::size_t i = 0; i < std::min(shown, answer.prices.size()); ++i) {
        const auto& price = answer.prices[i];
        out.line(
            QStringLiteral("  ") +
            commandWords(QT_TRANSLATE_NOOP("command",
                                           "%1: serves %2 more, saves %3 logMAR; wanted by %4, there are %5"))
                .arg(ltr(joined(price.lines, ", ")), QString::number(price.oneMore.served, 'g', 3),
                     QString::number(price.oneMore.lossLogMar, 'f', 2))
                .arg(price.wantedBy)
                .arg(price.available));
    }
    if (answer.prices.empty())
        out.line(QStringLiteral("  ") + commandWords(QT_TRANSLATE_NOOP("command", "of none")));
}

void show(const LineAnswer& answer, const PlanOptions& plan, std::span<const StockLine> stock, Output& out)
{
    for (const auto& given : answer.assignments) {
        QStringList pulls;
        for (const auto& part : given.parts)
            pulls << pullWords(part, stock);
        out.line(QStringLiteral("%1  %2  %3%4")
                     .arg(ltr(given.person), say(given.purpose), pulls.join(QStringLiteral(", ")),
                          given.told ? QStringLiteral("  ") +
                                           commandWords(QT_TRANSLATE_NOOP("command", "told before"))
                                     : QString()));
    }
    for (const auto& one : answer.unserved)
        out.line(
            QStringLiteral("%1  %2  %3")
                .arg(ltr(one.person), say(one.purpose),
                     one.reasonKey == "others_served"
                         ? commandWords(QT_TRANSLATE_NOOP("command", "no pair: what would do goes to others"))
                         : commandWords(QT_TRANSLATE_NOOP("command", "no pair: %1"))
                               .arg(QString::fromStdString(one.reasonKey))));
    out.line(
        commandWords(QT_TRANSLATE_NOOP("command",
                                       "in the line %1, served %2; first come, first served would serve %3"))
            .arg(answer.people)
            .arg(answer.served)
            .arg(answer.servedFirstCome));
    out.line(
        commandWords(QT_TRANSLATE_NOOP("command", "expected loss %1 logMAR over all served; first come %2"))
            .arg(QString::number(answer.lossLogMar, 'f', 2), QString::number(answer.lossFirstCome, 'f', 2)));
    for (const auto& words : choiceWords(plan))
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "chosen: %1")).arg(words));
    out.line(proofWords(answer.proof));
    if (!answer.others.empty())
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "not in the line %1: see `match`"))
                     .arg(answer.others.size()));
}

int exitCode(const LineAnswer& answer, int badRows, Output& out)
{
    if (answer.served == 0)
        out.tell(
            Severity::caution, {}, "nothing-servable",
            {QS_SAY("core", "nobody in this table can be given anything from this box; the plan is empty"),
             {}});
    if (badRows > 0)
        return Exit::badData;
    bool open = !answer.unserved.empty() || answer.served == 0;
    for (const auto& other : answer.others)
        open = open || other.verdict != Verdict::none;
    return open ? Exit::unserved : Exit::done;
}

} // namespace

int runAssign(const CommandLine& line, Output& out)
{
    if (line.has("--output") && line.has("--json"))
        throw errorSaying("option-value", {QS_SAY("core", "--output writes CSV; leave --json out"), {}},
                          Exit::usage);
    const auto box = openBox(line, out);
    LineQuestion question;
    question.match = matchOptions(line, box.rules);
    question.plan = planOptions(line, box.rules.settings);
    question.told = toldOf(line, out);
    int badRows = 0;
    const auto people = usableRows(readTable(line, out), badRows);
    WatchedWork work;
    const auto answer = assignLine(people, box.stock, box.rules, question, work.job());
    work.done();
    if (line.has("--json")) {
        out.json(jsonAnswer(answer, question.plan, box.stock, badRows));
    } else {
        show(answer, question.plan, box.stock, out);
        if (question.plan.gains)
            showPrices(answer, out);
    }
    if (line.has("--output"))
        replaceFile(line.value("--output"), csvOf(answer, box.stock), true);
    return exitCode(answer, badRows, out);
}

} // namespace quarterstep
