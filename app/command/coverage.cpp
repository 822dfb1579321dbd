// SPDX-License-Identifier: GPL-3.0-or-later
// coverage: how much of a table the stock serves, each person judged alone; with --used-up also together.
#include "app/command/answers.hpp"
#include "app/command/assumed.hpp"
#include "app/command/inputs.hpp"
#include "app/command/line_choices.hpp"
#include "app/command/output.hpp"
#include "app/command/watched_work.hpp"
#include "app/session/assign.hpp"
#include "app/session/planning_demand.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

/// Served among all that were judged; unknown for nobody.
std::optional<double> shareOf(const Coverage& coverage)
{
    if (coverage.people == 0)
        return std::nullopt;
    return static_cast<double>(coverage.served) / coverage.people;
}

/// People whom one more piece must serve for its line to be short; below are prices of the loss alone.
constexpr double leastGain = 0.005;

/// The same people one after the other and planned for together, with the pieces that are there.
LineAnswer usedUp(const std::vector<PersonRecord>& people, const Box& box, const MatchOptions& options)
{
    LineQuestion question;
    question.match = options;
    question.plan.priorities = prioritiesOf(box.rules.settings, {});
    question.plan.gains = true;
    WatchedWork work;
    auto answer = assignLine(people, box.stock, box.rules, question, work.job());
    work.done();
    std::erase_if(answer.prices, [](const LinePrice& price) { return price.oneMore.served < leastGain; });
    return answer;
}

QJsonObject jsonUsedUp(const LineAnswer& answer)
{
    QJsonObject purposes;
    for (const auto& [purpose, count] : answer.byPurpose)
        purposes.insert(jsonWord(purpose), QJsonObject{{"people", count.people},
                                                       {"served", count.served},
                                                       {"served_first_come", count.firstCome}});
    QJsonArray lines;
    for (const auto& price : answer.prices) {
        QJsonArray names;
        for (const auto& name : price.lines)
            names.append(jsonText(name));
        lines.append(QJsonObject{{"lines", names},
                                 {"available", price.available},
                                 {"wanted_by", price.wantedBy},
                                 {"one_more_serves", jsonNumber(price.oneMore.served)}});
    }
    const auto share = [&](int served) {
        return jsonNumber(answer.people > 0 ? std::optional(static_cast<double>(served) / answer.people)
                                            : std::nullopt);
    };
    return {{"people", answer.people},
            {"served", answer.served},
            {"served_first_come", answer.servedFirstCome},
            {"share", share(answer.served)},
            {"share_first_come", share(answer.servedFirstCome)},
            {"by_purpose", purposes},
            {"short_lines", lines},
            {"proof", QJsonObject{{"bound", jsonNumber(answer.proof.bound)},
                                  {"gap", jsonNumber(answer.proof.gap())}}}};
}

void showUsedUp(const LineAnswer& answer, Output& out)
{
    out.line(commandWords(QT_TRANSLATE_NOOP(
                              "command", "with the pieces there: %1 in the line, planned %2, first come %3"))
                 .arg(answer.people)
                 .arg(answer.served)
                 .arg(answer.servedFirstCome));
    for (const auto& [purpose, count] : answer.byPurpose)
        out.line(QStringLiteral("  ") +
                 commandWords(QT_TRANSLATE_NOOP("command", "%1: %2 in the line, planned %3, first come %4"))
                     .arg(say(purpose))
                     .arg(count.people)
                     .arg(count.served)
                     .arg(count.firstCome));
    for (const auto& price : answer.prices) {
        QStringList names;
        for (const auto& name : price.lines)
            names << ltr(name);
        out.line(QStringLiteral("  ") +
                 commandWords(QT_TRANSLATE_NOOP("command",
                                                "short: %1, there are %2, wanted by %3; one more serves %4"))
                     .arg(names.join(QStringLiteral(", ")))
                     .arg(price.available)
                     .arg(price.wantedBy)
                     .arg(QString::number(price.oneMore.served, 'g', 3)));
    }
}

QJsonObject jsonCoverage(const Coverage& coverage, int badRows, const QStringList& aloud)
{
    QJsonArray assumed;
    for (const auto& words : aloud)
        assumed.append(words);
    QJsonObject reasons;
    for (const auto& [reason, count] : coverage.byReason)
        reasons.insert(QString::fromStdString(reason), count);
    QJsonObject answer{{"people", coverage.people},
                       {"served", coverage.served},
                       {"caution", coverage.caution},
                       {"on_trial", coverage.onTrial},
                       {"none", coverage.none},
                       {"incomplete", coverage.incomplete},
                       {"share", jsonNumber(shareOf(coverage))},
                       {"by_reason", reasons},
                       {"bad_rows", badRows}};
    if (!aloud.isEmpty())
        answer.insert("assumed", assumed);
    return answer;
}

void showCoverage(const Coverage& coverage, int badRows, Output& out)
{
    const auto row = [&out](const char* text, int count) { out.line(commandWords(text).arg(count)); };
    row(QT_TRANSLATE_NOOP("command", "needs judged     %1"), coverage.people);
    row(QT_TRANSLATE_NOOP("command", "served           %1"), coverage.served);
    row(QT_TRANSLATE_NOOP("command", "  with caution   %1"), coverage.caution);
    row(QT_TRANSLATE_NOOP("command", "on trial         %1"), coverage.onTrial);
    row(QT_TRANSLATE_NOOP("command", "none needed      %1"), coverage.none);
    row(QT_TRANSLATE_NOOP("command", "incomplete       %1"), coverage.incomplete);
    if (badRows > 0)
        row(QT_TRANSLATE_NOOP("command", "rows not read    %1"), badRows);
    if (const auto share = shareOf(coverage))
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "share served     %1 %"))
                     .arg(QString::number(100.0 * *share, 'f', 1)));
    for (const auto& [reason, count] : coverage.byReason)
        out.line(QStringLiteral("  %1  %2").arg(QString::fromStdString(reason), -22).arg(count));
}

} // namespace

int runCoverage(const CommandLine& line, Output& out)
{
    const auto box = openBox(line, out);
    const auto assumed = assumptionsOf(line);
    auto options = matchOptions(line, box.rules);
    options.assumeCentred = assumed.centred;
    const auto table = readTable(line, out);
    int badRows = 0;
    auto people = usableRows(table, badRows);
    people = withAssumptions(std::move(people), assumed, box.rules.settings);
    const auto coverage = coverageOf(people, box.stock, box.rules, options);
    const auto aloud = assumptionWords(assumed);
    std::optional<LineAnswer> together;
    if (line.has("--used-up"))
        together = usedUp(people, box, options);
    if (line.has("--json")) {
        auto json = jsonCoverage(coverage, badRows, aloud);
        if (together)
            json.insert("used_up", jsonUsedUp(*together));
        out.json(json);
    } else {
        for (const auto& words : aloud)
            out.line(words);
        showCoverage(coverage, badRows, out);
        if (together)
            showUsedUp(*together, out);
    }
    if (badRows > 0)
        return Exit::badData;
    return coverage.served + coverage.none < coverage.people ? Exit::unserved : Exit::done;
}

} // namespace quarterstep
