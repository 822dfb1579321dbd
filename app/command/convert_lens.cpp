// SPDX-License-Identifier: GPL-3.0-or-later
// convert --age, --amplitude, --box and --surfaces: near additions, centration of a frame, a thick lens.
#include "app/command/convert_extras.hpp"
#include "app/command/convert_modes.hpp"
#include "app/command/output.hpp"
#include "core/optics/boxing.hpp"
#include "core/optics/effectivity.hpp"
#include "core/optics/near_addition.hpp"
#include "inventory/text/age_table_file.hpp"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonObject>

namespace quarterstep
{
namespace
{

constexpr double usualWorking = 400.0; ///< mm

QString fixed(double value, int decimals)
{
    return QString::number(value + 0.0, 'f', decimals);
}

QJsonObject jsonSuggestion(const AdditionSuggestion& suggestion)
{
    return {{"model", jsonText(suggestion.model)},
            {"least", jsonNumber(suggestion.least)},
            {"most", jsonNumber(suggestion.most)},
            {"spread", jsonNumber(suggestion.spread)},
            {"common_practice", suggestion.commonPractice},
            {"moved_from_other_distance", suggestion.otherDistance},
            {"source", jsonText(suggestion.source)}};
}

QString suggestionWords(const AdditionSuggestion& suggestion)
{
    const QString least = fixed(suggestion.least, 2);
    const QString most = fixed(suggestion.most, 2);
    const QString band =
        least == most ? QLatin1Char('+') + least : QLatin1Char('+') + least + QStringLiteral(" … +") + most;
    return commandWords(QT_TRANSLATE_NOOP("command", "%1 ± %2  %3 (%4)"))
        .arg(band, fixed(suggestion.spread, 2), QString::fromStdString(suggestion.model),
             suggestion.commonPractice ? commandWords(QT_TRANSLATE_NOOP("command", "common practice"))
                                       : QString::fromStdString(suggestion.source));
}

std::vector<AdditionSuggestion> suggestions(const CommandLine& line, std::optional<double> age,
                                            double working)
{
    if (!line.has("--amplitude"))
        return suggestAdditions(age.value(), working, defaultAgeTables());
    const double amplitude =
        optionNumber(line, "--amplitude", 0, 0.0, 25.0, "amplitude",
                     QS_SAY("core", "“%1” is no amplitude of accommodation; write 0 to 25 D"));
    return suggestFromAmplitude(amplitude, age, working, defaultAgeTables());
}

} // namespace

double workingDistance(const CommandLine& line)
{
    if (!line.has("--working"))
        return usualWorking;
    return optionNumber(line, "--working", 0, 100.0, 2000.0, "working-distance",
                        QS_SAY("core", "“%1” is no working distance; write 100 to 2000 mm"));
}

int convertNearAdditions(const CommandLine& line, Output& out)
{
    const double working = workingDistance(line);
    std::optional<double> age;
    if (line.has("--age"))
        age = optionNumber(line, "--age", 0, 0.0, 120.0, "age-option",
                           QS_SAY("core", "“%1” is no age; write years from 0 to 120"));
    const auto found = suggestions(line, age, working);
    if (line.has("--json")) {
        QJsonArray models;
        for (const auto& suggestion : found)
            models.append(jsonSuggestion(suggestion));
        QJsonObject answer{
            {"working_mm", jsonNumber(working)}, {"age", jsonNumber(age)}, {"suggestions", models}};
        if (age) {
            const auto amplitude = hofstetterAmplitude(*age);
            answer.insert("amplitude", QJsonObject{{"least", jsonNumber(amplitude.least)},
                                                   {"mean", jsonNumber(amplitude.mean)},
                                                   {"most", jsonNumber(amplitude.most)}});
        }
        out.json(answer);
        return Exit::done;
    }
    for (const auto& suggestion : found)
        out.line(suggestionWords(suggestion));
    out.line(commandWords(
        QT_TRANSLATE_NOOP("command", "Starting points that disagree: the addition is found by trial.")));
    return Exit::done;
}

int convertBox(const CommandLine& line, Output& out)
{
    const auto size = [&](std::size_t index) {
        return optionNumber(line, "--box", index, 0.0, 100.0, "box-size",
                            QS_SAY("core", "“%1” is no size of a frame; write the boxed lens width, the "
                                           "distance between lenses and the PD in mm, as --box 48 18 62"));
    };
    const double working = workingDistance(line);
    const double lens = size(0);
    const double between = size(1);
    const double pd = size(2);
    const double near = centrationAt(pd, working);
    const double each = decentrationFromBox(lens, between, pd);
    if (line.has("--json")) {
        out.json(QJsonObject{{"centres_mm", jsonNumber(lens + between)},
                             {"decentration_each_mm", jsonNumber(each)},
                             {"near_pd_mm", jsonNumber(near)},
                             {"near_inset_each_mm", jsonNumber(nearInset(pd, near))},
                             {"least_blank_mm", jsonNumber(leastBlank(lens, each, 2.0))}});
        return Exit::done;
    }
    out.line(
        commandWords(QT_TRANSLATE_NOOP("command", "%1 mm between the boxed centres; each centre %2 mm in"))
            .arg(fixed(lens + between, 1), fixed(each, 1)));
    out.line(commandWords(QT_TRANSLATE_NOOP("command", "at %1 mm: PD %2 mm, each centre %3 mm farther in"))
                 .arg(fixed(working, 0), fixed(near, 1), fixed(nearInset(pd, near), 1)));
    out.line(
        commandWords(QT_TRANSLATE_NOOP(
                         "command", "least uncut diameter %1 mm for a round lens, 2 mm for edging included"))
            .arg(fixed(leastBlank(lens, each, 2.0), 1)));
    return Exit::done;
}

int convertSurfaces(const CommandLine& line, Output& out)
{
    const char* refusal =
        QS_SAY("core", "“%1” is out of range; write front and back surface in D (-40 to 40), "
                       "thickness in mm (0 to 30) and index (1.3 to 2.0)");
    ThickLens lens;
    lens.front = optionNumber(line, "--surfaces", 0, -40.0, 40.0, "surface", refusal);
    lens.back = optionNumber(line, "--surfaces", 1, -40.0, 40.0, "surface", refusal);
    lens.thickness = Millimetres{optionNumber(line, "--surfaces", 2, 0.0, 30.0, "surface", refusal)};
    lens.index = optionNumber(line, "--surfaces", 3, 1.3, 2.0, "surface", refusal);
    const auto back = backVertexPower(lens);
    const auto front = frontVertexPower(lens);
    if (line.has("--json")) {
        out.json(QJsonObject{{"back_vertex_power", jsonNumber(back)},
                             {"front_vertex_power", jsonNumber(front)},
                             {"nominal_power", jsonNumber(nominalPower(lens))}});
        return Exit::done;
    }
    const auto words = [](const std::optional<double>& power) {
        return power ? QString::number(*power + 0.0, 'f', 3)
                     : commandWords(QT_TRANSLATE_NOOP("command", "none"));
    };
    out.line(
        commandWords(QT_TRANSLATE_NOOP("command", "back vertex power %1, front vertex power %2, nominal %3"))
            .arg(words(back), words(front), words(nominalPower(lens))));
    return Exit::done;
}

} // namespace quarterstep
