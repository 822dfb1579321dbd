// SPDX-License-Identifier: GPL-3.0-or-later
// verify: what a focimeter reads against what was ordered, by a tolerance set; one lens or a pair.
#include "app/command/command_line.hpp"
#include "app/command/inputs.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"
#include "core/optics/notation.hpp"
#include "inventory/text/tolerance_file.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

/// The sets compiled in, or with those of --tolerances over them.
ToleranceSets setsOf(const CommandLine& line, Output& out)
{
    if (!line.has("--tolerances"))
        return defaultTolerances();
    auto reading = readToleranceFile(line.value("--tolerances"));
    out.tell(reading.findings);
    if (!reading.usable())
        throw FilesNotRead();
    return std::move(reading.value);
}

const ToleranceSet& chosenSet(const ToleranceSets& sets, const std::string& name)
{
    const auto chosen = chooseTolerances(sets, name);
    if (!chosen)
        throw errorSaying(chosen.complaint().code, chosen.complaint().sentence, Exit::usage);
    return *chosen.value();
}

std::optional<LensValues> lensOf(const CommandLine& line, std::size_t index, Eye eye, Output& out)
{
    const auto& text = line.arguments.at(index);
    const Position place{"argument " + std::to_string(index + 1), 1, 1};
    const auto read = parseEye(text, eye);
    if (!read) {
        Position at = place;
        at.column += read.complaint().offset;
        out.tell(Severity::error, at, read.complaint().code, read.complaint().sentence);
        return std::nullopt;
    }
    if (read.value().state != EyeState::measured) {
        out.tell(Severity::error, place, "verify-no-power",
                 {QS_SAY("core", "“%1” is no power that could be compared; write sphere, cylinder and axis"),
                  {read.value().asWritten}});
        return std::nullopt;
    }
    return LensValues{read.value().power, read.value().addition, read.value().prism.value_or(EyePrism{})};
}

/// Judges the lenses named; empty when one could not be read, which is told.
std::optional<ToleranceJudgement> judge(const CommandLine& line, const ToleranceSet& set, Output& out)
{
    const auto ordered = lensOf(line, 0, Eye::right, out);
    const auto read = lensOf(line, 1, Eye::right, out);
    if (line.arguments.size() == 2) {
        if (!ordered || !read)
            return std::nullopt;
        auto judgement = judgeLens(set, Eye::right, *ordered, *read);
        const bool prism = ordered->prism != EyePrism{} || read->prism != EyePrism{};
        const bool ofPair = set.horizontal.of == PrismOf::pair && !set.horizontal.rows.empty();
        if (prism && ofPair)
            judgement.notes.push_back(
                {QS_SAY("core",
                        "this set judges prism between both lenses; give order and reading of the left one "
                        "too"),
                 {}});
        return judgement;
    }
    const auto orderedLeft = lensOf(line, 2, Eye::left, out);
    const auto readLeft = lensOf(line, 3, Eye::left, out);
    if (!ordered || !read || !orderedLeft || !readLeft)
        return std::nullopt;
    return judgePair(set, {*ordered, *orderedLeft}, {*read, *readLeft});
}

const char* eyeWord(const std::optional<Eye>& eye)
{
    if (!eye)
        return "pair";
    return *eye == Eye::right ? "right" : "left";
}

const char* confidenceWord(Confidence confidence)
{
    switch (confidence) {
    case Confidence::seenInSource:
        return "seen in source";
    case Confidence::secondHand:
        return "second-hand";
    case Confidence::fromMemory:
        break;
    }
    return "from memory";
}

QJsonObject jsonJudgement(const ToleranceSet& set, const ToleranceJudgement& judgement, bool pair)
{
    QJsonArray results;
    for (const auto& result : judgement.results)
        results.append(
            QJsonObject{{"rule", ruleName(result.rule)},
                        {"lens", pair ? QJsonValue(eyeWord(result.eye)) : QJsonValue(QJsonValue::Null)},
                        {"error", jsonNumber(result.error)},
                        {"limit", jsonNumber(result.limit)},
                        {"excess", jsonNumber(result.excess)},
                        {"unit", ruleUnit(result.rule)},
                        {"passes", result.passes()},
                        {"words", say(result.sentence)}});
    QJsonArray notes;
    for (const auto& note : judgement.notes)
        notes.append(say(note));
    return {{"set", jsonText(set.name)},
            {"standard", jsonText(set.standard)},
            {"edition", jsonText(set.edition)},
            {"confidence", confidenceWord(set.confidence)},
            {"provenance", jsonText(set.provenance)},
            {"passes", judgement.passes()},
            {"results", results},
            {"notes", notes}};
}

QString lensWords(const std::optional<Eye>& eye)
{
    if (!eye)
        return commandWords(QT_TRANSLATE_NOOP("command", "pair"));
    return *eye == Eye::right ? commandWords(QT_TRANSLATE_NOOP("command", "right"))
                              : commandWords(QT_TRANSLATE_NOOP("command", "left"));
}

QString markWords(const ToleranceResult& result)
{
    if (!result.limit)
        return commandWords(QT_TRANSLATE_NOOP("command", "shown"));
    return result.passes() ? commandWords(QT_TRANSLATE_NOOP("command", "passes"))
                           : commandWords(QT_TRANSLATE_NOOP("command", "FAILS"));
}

void showJudgement(const ToleranceSet& set, const ToleranceJudgement& judgement, bool pair, Output& out)
{
    out.line((judgement.passes()
                  ? commandWords(QT_TRANSLATE_NOOP("command", "Within tolerance by %1 (%2 %3)"))
                  : commandWords(QT_TRANSLATE_NOOP("command", "Out of tolerance by %1 (%2 %3)")))
                 .arg(QString::fromStdString(set.name), QString::fromStdString(set.standard),
                      QString::fromStdString(set.edition)));
    for (const auto& result : judgement.results) {
        const QString mark = markWords(result);
        const QString lens = pair ? lensWords(result.eye) + QStringLiteral(", ") : QString();
        out.line(QStringLiteral("  ") + mark + QStringLiteral("  ") + lens + say(result.sentence));
    }
    for (const auto& note : judgement.notes)
        out.line(QStringLiteral("  ") + say(note));
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "Figures: %1"))
                 .arg(QString::fromStdString(set.provenance)));
}

} // namespace

int runVerify(const CommandLine& line, Output& out)
{
    if (line.arguments.size() == 3)
        throw errorSaying(
            "verify-three-texts",
            {QS_SAY("core", "write order and reading of one lens, or order and reading of the right lens "
                            "and then of the left"),
             {}},
            Exit::usage);
    const auto sets = setsOf(line, out);
    const auto& set = chosenSet(sets, line.value("--set"));
    const auto judgement = judge(line, set, out);
    if (!judgement)
        return Exit::badData;
    const bool pair = line.arguments.size() == 4;
    if (line.has("--json"))
        out.json(jsonJudgement(set, *judgement, pair));
    else
        showJudgement(set, *judgement, pair, out);
    return judgement->passes() ? Exit::done : Exit::unserved;
}

} // namespace quarterstep
