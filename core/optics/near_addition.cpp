// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/optics/near_addition.hpp"

#include "core/optics/notation.hpp"
#include "core/optics/power_vector.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{
namespace
{

constexpr double millimetresInMetre = 1000.0;
/// Half width of the 95 % limits between any tentative method and the final addition: at least this.
constexpr double methodSpread = 0.50;
constexpr const char* methodSpreadSource = "Arq Bras Oftalmol 2013;76:218-220 (limits wider than ±0.50 D)";

double notBelowZero(double value)
{
    return value > 0.0 ? value : 0.0;
}

double demand(double workingMm)
{
    return millimetresInMetre / workingMm;
}

AdditionSuggestion fromAmplitude(const char* model, double amplitude, double workingMm, Reserve reserve,
                                 const std::string& source)
{
    const double addition = additionFor(amplitude, workingMm, reserve);
    return {model, addition, addition, methodSpread, source + "; spread: " + methodSpreadSource,
            false, false};
}

std::optional<AdditionSuggestion> fromTable(const AgeTable& table, double age, double workingMm)
{
    const AgeRow* row = table.at(age);
    if (row == nullptr)
        return std::nullopt;
    AdditionSuggestion suggestion;
    suggestion.model = table.name;
    suggestion.spread = table.spread;
    suggestion.source = table.source + "; " + table.population + "; spread: " + table.spreadSource;
    suggestion.commonPractice = table.confidence == AgeTable::Confidence::commonPractice ||
                                table.confidence == AgeTable::Confidence::fromMemory;
    if (table.holds == AgeTable::Holds::amplitude) { // the larger amplitude leaves the smaller addition
        suggestion.least = additionFor(row->most, workingMm, Reserve::half);
        suggestion.most = additionFor(row->least, workingMm, Reserve::half);
        return suggestion;
    }
    const double shift = demand(workingMm) - demand(table.workingMm);
    suggestion.otherDistance = std::fabs(workingMm - table.workingMm) > 0.5;
    suggestion.least = notBelowZero(row->least + (suggestion.otherDistance ? shift : 0.0));
    suggestion.most = notBelowZero(row->most + (suggestion.otherDistance ? shift : 0.0));
    return suggestion;
}

void addTables(std::vector<AdditionSuggestion>& suggestions, double age, double workingMm,
               const std::vector<AgeTable>& tables)
{
    for (const auto& table : tables)
        if (auto suggestion = fromTable(table, age, workingMm))
            suggestions.push_back(std::move(*suggestion));
}

constexpr double sameCylinder = 0.005; ///< D

} // namespace

Parsed<Dioptres> additionBetween(const SpheroCylinder& distance, const SpheroCylinder& near)
{
    const auto difference = toPowerVector(near) - toPowerVector(distance);
    if (std::fabs(difference.j0) > sameCylinder || std::fabs(difference.j45) > sameCylinder)
        return Complaint{
            "near-cylinder-other",
            {QS_SAY("core", "distance %1 and near %2 differ in cylinder; no addition joins them"),
             {writePower(distance), writePower(near)}},
            0};
    const Dioptres addition = minusCylinderForm(near).sphere - minusCylinderForm(distance).sphere;
    if (addition < Dioptres{})
        return Complaint{"near-weaker",
                         {QS_SAY("core", "near %2 has less plus than distance %1; were they exchanged?"),
                          {writePower(distance), writePower(near)}},
                         0};
    return addition;
}

Amplitude hofstetterAmplitude(double age)
{
    return {notBelowZero(15.0 - 0.25 * age), notBelowZero(18.5 - 0.30 * age),
            notBelowZero(25.0 - 0.40 * age)};
}

double additionFor(double amplitude, double workingMm, Reserve reserve)
{
    const double used = reserve == Reserve::half ? amplitude / 2.0 : amplitude * 2.0 / 3.0;
    return notBelowZero(demand(workingMm) - used);
}

double accommodationUsed(double addition, double workingMm)
{
    return notBelowZero(demand(workingMm) - addition);
}

double amplitudeThroughLens(double scale, double lens)
{
    return notBelowZero(scale - lens);
}

std::optional<double> nearPoint(double amplitude)
{
    if (!(amplitude > 0.0))
        return std::nullopt;
    return millimetresInMetre / amplitude;
}

const AgeRow* AgeTable::at(double age) const
{
    const auto row = std::find_if(rows.begin(), rows.end(), [age](const AgeRow& candidate) {
        return age >= candidate.from && age < candidate.to + 1.0;
    });
    return row == rows.end() ? nullptr : &*row;
}

std::vector<AdditionSuggestion> suggestAdditions(double age, double workingMm,
                                                 const std::vector<AgeTable>& tables)
{
    const auto amplitude = hofstetterAmplitude(age);
    const std::string source = "Hofstetter HW 1950 (second-hand)";
    std::vector<AdditionSuggestion> suggestions{
        fromAmplitude("hofstetter-mean-half-in-reserve", amplitude.mean, workingMm, Reserve::half, source),
        fromAmplitude("hofstetter-least-half-in-reserve", amplitude.least, workingMm, Reserve::half, source)};
    addTables(suggestions, age, workingMm, tables);
    return suggestions;
}

std::vector<AdditionSuggestion> suggestFromAmplitude(double amplitude, std::optional<double> age,
                                                     double workingMm, const std::vector<AgeTable>& tables)
{
    const std::string source = "Millodot M, Dictionary of Optometry and Visual Science, 7th ed. 2009";
    std::vector<AdditionSuggestion> suggestions{
        fromAmplitude("amplitude-half-in-reserve", amplitude, workingMm, Reserve::half, source),
        fromAmplitude("amplitude-two-thirds-used", amplitude, workingMm, Reserve::oneThird, source)};
    if (age)
        addTables(suggestions, *age, workingMm, tables);
    return suggestions;
}

double outsideBand(double addition, const AdditionSuggestion& suggestion)
{
    return std::max({0.0, suggestion.least - addition, addition - suggestion.most});
}

AdditionJudgement judgeAddition(double addition, const std::vector<AdditionSuggestion>& suggestions)
{
    constexpr double epsilon = 1e-6;
    if (suggestions.empty())
        return AdditionJudgement::usual;
    double nearest = outsideBand(addition, suggestions.front());
    for (const auto& suggestion : suggestions)
        nearest = std::min(nearest, outsideBand(addition, suggestion));
    if (nearest <= usualAddition + epsilon)
        return AdditionJudgement::usual;
    return nearest <= checkAddition + epsilon ? AdditionJudgement::unusual : AdditionJudgement::checkAgain;
}

} // namespace quarterstep
