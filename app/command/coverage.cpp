// SPDX-License-Identifier: GPL-3.0-or-later
// coverage: how much of a table the stock serves, each person judged alone.
#include "app/command/assumed.hpp"
#include "app/command/inputs.hpp"
#include "app/command/line_choices.hpp"
#include "app/command/output.hpp"

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
    if (line.has("--json")) {
        out.json(jsonCoverage(coverage, badRows, aloud));
    } else {
        for (const auto& words : aloud)
            out.line(words);
        showCoverage(coverage, badRows, out);
    }
    if (badRows > 0)
        return Exit::badData;
    return coverage.served + coverage.none < coverage.people ? Exit::unserved : Exit::done;
}

} // namespace quarterstep
