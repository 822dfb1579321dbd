// SPDX-License-Identifier: GPL-3.0-or-later
// simulate: camp days drawn from a demand, with what is in the box.
#include "app/session/simulate.hpp"
#include "app/command/answers.hpp"
#include "app/command/output.hpp"
#include "app/command/planning_inputs.hpp"
#include "app/command/watched_work.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>
#include <QJsonObject>

namespace quarterstep
{
namespace
{

QJsonObject jsonSpread(const Spread& spread)
{
    return {{"mean", jsonNumber(spread.mean)},
            {"low", jsonNumber(spread.low)},
            {"median", jsonNumber(spread.middle)},
            {"high", jsonNumber(spread.high)}};
}

QJsonObject jsonAnswer(const SimulateAnswer& answer, const SimulateQuestion& question,
                       const QStringList& told)
{
    QJsonArray runOuts;
    for (const auto& one : answer.runOuts)
        runOuts.append(QJsonObject{{"line", jsonText(one.line)},
                                   {"chance", jsonNumber(one.chance)},
                                   {"at_person", jsonNumber(one.atPerson)}});
    QJsonArray boxes;
    for (const auto& one : answer.boxes)
        boxes.append(QJsonObject{{"boxes", one.boxes}, {"share", jsonNumber(one.share)}});
    return {{"people", question.people},
            {"days", question.days},
            {"seed", static_cast<double>(question.seed)},
            {"needs", jsonNumber(answer.needs)},
            {"first_come", jsonSpread(answer.firstCome)},
            {"replanned", jsonSpread(answer.replanned)},
            {"reachable", jsonSpread(answer.reachable)},
            {"run_outs", runOuts},
            {"boxes", boxes},
            {"boxes_enough", answer.enough ? QJsonValue(*answer.enough) : QJsonValue()},
            {"demand", QJsonArray::fromStringList(told)}};
}

void show(const SimulateAnswer& answer, const SimulateQuestion& question, Output& out)
{
    out.line(commandWords(
                 QT_TRANSLATE_NOOP("command", "%1 days of %2 people, %3 needs in the line a day (seed %4)"))
                 .arg(question.days)
                 .arg(question.people)
                 .arg(QString::number(answer.needs, 'f', 1))
                 .arg(question.seed));
    const auto row = [&out](const char* words, const Spread& spread) {
        out.line(commandWords(words).arg(percent(spread.mean), percent(spread.low), percent(spread.high)));
    };
    row(QT_TRANSLATE_NOOP("command", "first come         %1 % (%2 to %3 on nine days in ten)"),
        answer.firstCome);
    row(QT_TRANSLATE_NOOP("command", "planned again      %1 % (%2 to %3)"), answer.replanned);
    row(QT_TRANSLATE_NOOP("command", "if nothing ran out %1 % (%2 to %3)"), answer.reachable);
    constexpr std::size_t shown = 10;
    for (std::size_t i = 0; i < std::min(shown, answer.runOuts.size()); ++i)
        out.line(
            commandWords(QT_TRANSLATE_NOOP("command", "%1 runs out on %2 days in a hundred, by person %3"))
                .arg(ltr(answer.runOuts[i].line), QString::number(100.0 * answer.runOuts[i].chance, 'f', 0),
                     QString::number(answer.runOuts[i].atPerson, 'f', 0)));
    for (const auto& one : answer.boxes)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "with %1 such boxes: %2 %"))
                     .arg(QString::number(one.boxes), percent(one.share)));
    if (answer.enough)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "carry %1 for 95 % of what they could serve"))
                     .arg(*answer.enough));
    else
        out.line(commandWords(QT_TRANSLATE_NOOP(
            "command", "no number of such boxes looked at serves 95 % of what they could")));
}

} // namespace

int runSimulate(const CommandLine& line, Output& out)
{
    const auto box = openBox(line, out);
    auto demand = readDemand(line, box, out);
    SimulateQuestion question;
    question.demand = std::move(demand.demand);
    question.match = matchOptions(line, box.rules);
    question.match.assumeCentred = demand.centred;
    question.people = static_cast<int>(wholeOption(line, "--people", 1, 100000).value_or(question.people));
    question.days = static_cast<int>(wholeOption(line, "--days", 1, 100000).value_or(question.days));
    question.lineLength =
        static_cast<int>(wholeOption(line, "--line-length", 1, 10000).value_or(question.lineLength));
    question.seed = static_cast<std::uint64_t>(wholeOption(line, "--seed", 0, 1000000000).value_or(1));
    WatchedWork work;
    const auto answer = simulateCamp(box.stock, box.rules, question, work.job());
    work.done();
    if (!answer.nothing.empty())
        out.tell(Severity::caution, {}, "nothing-servable", answer.nothing);
    if (line.has("--json")) {
        out.json(jsonAnswer(answer, question, demand.told));
    } else {
        for (const auto& words : demand.told)
            out.line(words);
        if (answer.nothing.empty())
            show(answer, question, out);
    }
    if (demand.badRows > 0)
        return Exit::badData;
    return answer.nothing.empty() ? Exit::done : Exit::unserved;
}

} // namespace quarterstep
