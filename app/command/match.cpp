// SPDX-License-Identifier: GPL-3.0-or-later
// match: which stocked pair serves each person. Nothing is used up; a bad row is answered in its place.
#include "app/command/answers.hpp"
#include "app/command/explain.hpp"
#include "app/command/inputs.hpp"
#include "app/command/line_choices.hpp"
#include "app/command/output.hpp"
#include "app/session/assign.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/stock_index.hpp"
#include "core/optics/readings.hpp"
#include "inventory/text/age_table_file.hpp"
#include "inventory/text/readings_file.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace quarterstep
{
namespace
{

/// Counts for the closing line.
struct VerdictCounts {
    int stock = 0;
    int onTrial = 0;
    int custom = 0;
    int none = 0;
    int incomplete = 0;
    int refer = 0;
    int bad = 0;
    std::map<std::string, int> profiles; ///< by which rules how many needs were judged

    void add(const Recommendation& answer)
    {
        ++profiles[answer.profile];
        stock += answer.verdict == Verdict::stock ? 1 : 0;
        custom += answer.verdict == Verdict::custom ? 1 : 0;
        none += answer.verdict == Verdict::none ? 1 : 0;
        refer += answer.verdict == Verdict::refer ? 1 : 0;
        const bool trial = answer.reasonKey == "on_trial";
        onTrial += trial ? 1 : 0;
        incomplete += answer.verdict == Verdict::incomplete && !trial ? 1 : 0;
    }
    [[nodiscard]] int exitCode() const
    {
        if (bad > 0)
            return Exit::badData;
        return onTrial + custom + incomplete + refer > 0 ? Exit::unserved : Exit::done;
    }
};

const Finding* firstError(const TableRow& row)
{
    for (const auto& finding : row.findings)
        if (finding.severity == Severity::error)
            return &finding;
    return nullptr;
}

QJsonObject jsonBadRow(const TableRow& row)
{
    const auto* finding = firstError(row);
    return {{"person", jsonTextOrNull(row.person)},
            {"line", row.line},
            {"column", finding != nullptr ? finding->position.column : 0},
            {"error", finding != nullptr ? QJsonValue(say(finding->sentence)) : QJsonValue(QJsonValue::Null)},
            {"code", finding != nullptr ? jsonText(finding->code) : QJsonValue(QJsonValue::Null)}};
}

QString badRowLine(const TableRow& row)
{
    const auto* finding = firstError(row);
    return commandWords(QT_TRANSLATE_NOOP("command", "%1; row not read: %2"))
        .arg(ltr(row.person), finding != nullptr ? say(finding->sentence) : QString());
}

QString closing(const VerdictCounts& tally)
{
    const auto part = [](const char* text, int count) { return commandWords(text).arg(count); };
    QStringList parts{part(QT_TRANSLATE_NOOP("command", "from stock %1"), tally.stock),
                      part(QT_TRANSLATE_NOOP("command", "on trial %1"), tally.onTrial),
                      part(QT_TRANSLATE_NOOP("command", "custom %1"), tally.custom),
                      part(QT_TRANSLATE_NOOP("command", "none needed %1"), tally.none),
                      part(QT_TRANSLATE_NOOP("command", "incomplete %1"), tally.incomplete),
                      part(QT_TRANSLATE_NOOP("command", "refer %1"), tally.refer)};
    if (tally.bad > 0)
        parts << part(QT_TRANSLATE_NOOP("command", "rows not read %1"), tally.bad);
    return parts.join(QStringLiteral(", "));
}

/// Repeated readings go to the eyes they are of; readings of nobody in the table are told.
void takeReadings(const CommandLine& line, PrescriptionTable& table, Output& out)
{
    const auto readings = readReadingsFile(line.value("--readings"));
    out.tell(readings.findings);
    if (!readings.usable())
        throw FilesNotRead();
    for (const auto& eye : readings.value) {
        const auto summary = summariseReadings(eye.vectors());
        bool found = false;
        for (auto& row : table.rows)
            if (row.record && row.person == eye.person) {
                found = true;
                if (summary.covariance && !summary.published)
                    row.record->eyes.of(eye.eye).repeated =
                        RepeatedReadings{*summary.covariance, summary.used};
            }
        if (!found)
            out.tell(Severity::caution, eye.places.front(), "readings-unused",
                     {QS_SAY("core", "nobody in the table has the code %1; these readings are not used"),
                      {eye.person}});
    }
}

/// Options that speak of one explained pair.
void checkExplain(const CommandLine& line)
{
    for (const char* option : {"--above", "--purpose", "--acuity-right", "--acuity-left", "--near-acuity"})
        if (line.has(option) && !line.has("--explain"))
            throw errorSaying("option-missing",
                              {QS_SAY("core", "%1 goes with --explain PERSON LINE"), {option}}, Exit::usage);
}

/// Which rules were chosen by age and purpose, or by --profile.
QString rulesLine(const VerdictCounts& tally)
{
    QStringList parts;
    for (const auto& [profile, count] : tally.profiles)
        parts << ltr(profile) + QLatin1Char(' ') + QString::number(count);
    return commandWords(QT_TRANSLATE_NOOP("command", "judged by the rules: %1"))
        .arg(parts.join(QStringLiteral(", ")));
}

} // namespace

int runMatch(const CommandLine& line, Output& out)
{
    checkExplain(line);
    const auto box = openBox(line, out);
    auto options = matchOptions(line, box.rules);
    const StockIndex index(box.stock);
    options.candidates.index = &index;
    options.details = true;
    options.form = cylinderFormOf(line);
    options.ageTables = &defaultAgeTables();
    auto table = readTable(line, out);
    if (line.has("--readings"))
        takeReadings(line, table, out);
    int unreadable = 0; // told row by row below
    const auto people = usableRows(table, unreadable);
    if (line.has("--keep-scarce"))
        options.candidates.scarcity = scarcityFor(people, box.stock, box.rules, options);
    if (line.has("--explain"))
        return runExplain(line, box, options, people, out);
    const bool json = line.has("--json");
    VerdictCounts tally;
    QJsonArray entries;
    for (const auto& row : table.rows) {
        if (!row.record) {
            ++tally.bad;
            if (json)
                entries.append(jsonBadRow(row));
            else
                out.line(badRowLine(row));
            continue;
        }
        for (const auto& answer : recommend(*row.record, box.stock, box.rules, options)) {
            tally.add(answer);
            if (json)
                entries.append(jsonRecommendation(answer, box.stock));
            else
                out.line(recommendationLine(answer, box.stock));
        }
    }
    if (json) {
        out.json(entries);
    } else {
        out.line(closing(tally));
        if (!tally.profiles.empty())
            out.line(rulesLine(tally));
    }
    return tally.exitCode();
}

} // namespace quarterstep
