// SPDX-License-Identifier: GPL-3.0-or-later
// match: which stocked pair serves each person. Nothing is used up; a bad row is answered in its place.
#include "app/command/answers.hpp"
#include "app/command/inputs.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/stock_index.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace quarterstep
{
namespace
{

/// Counts for the closing line.
struct Tally {
    int stock = 0;
    int onTrial = 0;
    int custom = 0;
    int none = 0;
    int incomplete = 0;
    int refer = 0;
    int bad = 0;

    void add(const Recommendation& answer)
    {
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

QString closing(const Tally& tally)
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

} // namespace

int runMatch(const CommandLine& line, Output& out)
{
    const auto box = openBox(line, out);
    auto options = matchOptions(line, box.rules);
    const StockIndex index(box.stock);
    options.candidates.index = &index;
    const auto table = readTable(line, out);
    const bool json = line.has("--json");
    Tally tally;
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
    if (json)
        out.json(entries);
    else
        out.line(closing(tally));
    return tally.exitCode();
}

} // namespace quarterstep
