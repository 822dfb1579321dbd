// SPDX-License-Identifier: GPL-3.0-or-later
// dispense: hands over. The whole table is read first; with a bad row nothing is written unless rows may be
// skipped.
#include "app/command/dispense.hpp"

#include "app/command/answers.hpp"
#include "app/command/output.hpp"
#include "app/command/pin_entry.hpp"
#include "app/session/assign.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <numeric>

namespace quarterstep
{
namespace
{

int totalOf(const std::vector<std::pair<std::string, int>>& counts)
{
    return std::accumulate(counts.begin(), counts.end(), 0,
                           [](int sum, const auto& each) { return sum + each.second; });
}

int countOf(const DispenseReport& report, Verdict verdict)
{
    return static_cast<int>(std::count_if(
        report.result.answers.begin(), report.result.answers.end(), [verdict](const auto& answer) {
            return answer.lines.empty() && !answer.heldBack && !answer.givenBefore &&
                   answer.recommendation.verdict == verdict;
        }));
}

int handedOver(const DispenseReport& report)
{
    return static_cast<int>(std::count_if(report.result.answers.begin(), report.result.answers.end(),
                                          [](const auto& answer) { return !answer.lines.empty(); }));
}

int onTrial(const DispenseReport& report)
{
    return static_cast<int>(
        std::count_if(report.result.answers.begin(), report.result.answers.end(), [](const auto& answer) {
            return answer.lines.empty() && !answer.givenBefore &&
                   answer.recommendation.reasonKey == "on_trial";
        }));
}

int heldBack(const DispenseReport& report)
{
    return static_cast<int>(std::count_if(report.result.answers.begin(), report.result.answers.end(),
                                          [](const auto& answer) { return answer.heldBack; }));
}

int givenBefore(const DispenseReport& report)
{
    return static_cast<int>(std::count_if(report.result.answers.begin(), report.result.answers.end(),
                                          [](const auto& answer) { return answer.givenBefore; }));
}

QJsonValue fieldOf(const BatchAnswer& answer, const char* name)
{
    if (!answer.entry)
        return QJsonValue::Null;
    const auto found = answer.entry->fields.find(name);
    return found == answer.entry->fields.end() ? QJsonValue(QJsonValue::Null) : jsonText(found->second);
}

QJsonObject jsonEntry(const BatchAnswer& answer, const DispenseReport& report)
{
    QJsonArray lines;
    for (const auto& line : answer.lines)
        lines.append(jsonText(line));
    return {{"id", answer.entry ? jsonText(answer.entry->id) : QJsonValue(QJsonValue::Null)},
            {"person", jsonText(answer.recommendation.person)},
            {"purpose", jsonWord(answer.recommendation.purpose)},
            {"lines", lines},
            {"verdict", fieldOf(answer, "verdict")},
            {"profile", jsonText(answer.recommendation.profile)},
            {"rules_hash", jsonText(report.rulesHash)}};
}

QJsonObject jsonUnserved(const BatchAnswer& answer)
{
    return {{"person", jsonText(answer.recommendation.person)},
            {"purpose", jsonWord(answer.recommendation.purpose)},
            {"verdict", jsonWord(answer.recommendation.verdict)},
            {"referral", jsonWord(answer.recommendation.referral)},
            {"reason", say(answer.recommendation.reason)},
            {"entry", jsonTextOrNull(answer.wentWithout)},
            {"given_before", answer.givenBefore},
            {"held_back", answer.heldBack},
            {"ran_out", answer.ranOut}};
}

QJsonObject jsonReport(const DispenseReport& report)
{
    QJsonArray entries;
    QJsonArray others;
    for (const auto& answer : report.result.answers)
        if (answer.lines.empty())
            others.append(jsonUnserved(answer));
        else
            entries.append(jsonEntry(answer, report));
    return {{"handed_over", handedOver(report)},
            {"custom", countOf(report, Verdict::custom)},
            {"none", countOf(report, Verdict::none)},
            {"incomplete", countOf(report, Verdict::incomplete)},
            {"on_trial", onTrial(report)},
            {"refer", countOf(report, Verdict::refer)},
            {"held_back", heldBack(report)},
            {"given_before", givenBefore(report)},
            {"skipped_rows", report.skipped},
            {"dry_run", report.dryRun},
            {"entries", entries},
            {"not_handed_over", others},
            {"on_hand_before", totalOf(report.result.before)},
            {"on_hand_after", totalOf(report.result.after)}};
}

/// Whether the lines given are those of the first candidate.
bool isSuggested(const BatchAnswer& answer, const std::vector<StockLine>& stock)
{
    const auto& ranked = answer.recommendation.candidates.ranked;
    return !ranked.empty() && answer.recommendation.verdict == Verdict::stock &&
           std::equal(ranked.front().parts.begin(), ranked.front().parts.end(), answer.lines.begin(),
                      answer.lines.end(), [&](const Part& part, const std::string& name) {
                          return stock[part.line].name == name;
                      });
}

QString answerLine(const BatchAnswer& answer, const std::vector<StockLine>& stock)
{
    QString text = recommendationLine(answer.recommendation, stock);
    if (!answer.lines.empty() && !isSuggested(answer, stock)) {
        QStringList names;
        for (const auto& line : answer.lines)
            names << ltr(line);
        text += QStringLiteral("; ") + commandWords(QT_TRANSLATE_NOOP("command", "handed over as picked: %1"))
                                           .arg(names.join(QStringLiteral(", ")));
    }
    if (answer.heldBack)
        text +=
            QStringLiteral("; ") +
            commandWords(QT_TRANSLATE_NOOP("command", "second pair held back: somebody waits without any"));
    if (answer.givenBefore)
        text +=
            QStringLiteral("; ") +
            commandWords(QT_TRANSLATE_NOOP("command", "handed over today already: nothing is given twice"));
    if (answer.ranOut)
        text += QStringLiteral("; ") + commandWords(QT_TRANSLATE_NOOP("command", "ran out today"));
    return text;
}

/// Lines that were there in the morning and are not any more.
QStringList ranOut(const BatchResult& result)
{
    QStringList names;
    for (std::size_t i = 0; i < result.before.size() && i < result.after.size(); ++i)
        if (result.before[i].second > 0 && result.after[i].second == 0)
            names << ltr(result.before[i].first);
    return names;
}

void showReport(const DispenseReport& report, const std::vector<StockLine>& stock, Output& out)
{
    for (const auto& answer : report.result.answers)
        out.line(answerLine(answer, stock));
    const auto part = [](const char* text, int count) { return commandWords(text).arg(count); };
    QStringList parts{part(QT_TRANSLATE_NOOP("command", "from stock %1"), handedOver(report)),
                      part(QT_TRANSLATE_NOOP("command", "on trial %1"), onTrial(report)),
                      part(QT_TRANSLATE_NOOP("command", "custom %1"), countOf(report, Verdict::custom)),
                      part(QT_TRANSLATE_NOOP("command", "none needed %1"), countOf(report, Verdict::none)),
                      part(QT_TRANSLATE_NOOP("command", "incomplete %1"),
                           countOf(report, Verdict::incomplete) - onTrial(report)),
                      part(QT_TRANSLATE_NOOP("command", "refer %1"), countOf(report, Verdict::refer)),
                      part(QT_TRANSLATE_NOOP("command", "held back %1"), heldBack(report))};
    if (givenBefore(report) > 0)
        parts << part(QT_TRANSLATE_NOOP("command", "given before %1"), givenBefore(report));
    out.line(parts.join(QStringLiteral(", ")));
    if (const auto names = ranOut(report.result); !names.isEmpty())
        out.line(
            commandWords(QT_TRANSLATE_NOOP("command", "ran out: %1")).arg(names.join(QStringLiteral(", "))));
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "on hand %1 before, %2 after"))
                 .arg(totalOf(report.result.before))
                 .arg(totalOf(report.result.after)));
    if (report.dryRun)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "dry run: nothing was written")));
}

/// The records of the table; rows with errors end the command or are named and left out.
std::vector<PersonRecord> recordsOf(const CommandLine& line, const PrescriptionTable& table, Output& out)
{
    std::vector<PersonRecord> people;
    for (const auto& row : table.rows) {
        if (row.record)
            people.push_back(*row.record);
        else if (line.has("--skip-bad-rows"))
            out.tell(Severity::caution, {line.arguments.front(), row.line, 0}, "row-skipped",
                     {QS_SAY("core", "row of %1 left out"), {row.person}});
    }
    if (table.anyBadRow() && !line.has("--skip-bad-rows")) {
        out.tell(
            Severity::error, Position{}, "nothing-written",
            {QS_SAY("core",
                    "nothing was handed over; mend the rows above or leave them out with --skip-bad-rows"),
             {}});
        throw FilesNotRead();
    }
    return people;
}

} // namespace

int runDispense(const CommandLine& line, Output& out)
{
    checkPick(line);
    const auto table = readTable(line, out);
    const auto people = recordsOf(line, table, out);
    const bool dryRun = line.has("--dry-run");
    auto camp = Camp::open(line.value("--camp"), dryRun ? Ledger::Mode::readOnly : Ledger::Mode::readWrite);
    out.tell(camp.findings());
    if (!dryRun)
        requirePin(line, camp);
    auto options = matchOptions(line, camp.rules());
    if (line.has("--keep-scarce"))
        options.candidates.scarcity = scarcityFor(people, camp.stock(), camp.rules(), options);
    DispenseReport report;
    report.dryRun = dryRun;
    report.rulesHash = camp.rules().hash;
    report.skipped = static_cast<int>(table.rows.size() - people.size());
    report.result = line.has("--person")
                        ? dispensePicked(line, camp, people, options, out)
                        : dispenseTable(camp, people, options, line.value("--actor"), dryRun);
    if (line.has("--json"))
        out.json(jsonReport(report));
    else
        showReport(report, camp.stock(), out);
    if (report.result.stopped)
        throw *report.result.stopped;
    const bool all =
        std::all_of(report.result.answers.begin(), report.result.answers.end(), [](const auto& answer) {
            return !answer.lines.empty() || answer.givenBefore ||
                   answer.recommendation.verdict == Verdict::none;
        });
    return all ? Exit::done : Exit::unserved;
}

} // namespace quarterstep
