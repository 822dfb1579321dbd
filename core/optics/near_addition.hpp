// SPDX-License-Identifier: GPL-3.0-or-later
// Amplitude of accommodation by age, and the addition for near work. Sources disagree by 0.25 to 0.50 D and
// more, so no suggestion comes alone: each names its model and its spread. Sources: Hofstetter HW 1950 (as
// quoted in several copies); Millodot M, Dictionary of Optometry and Visual Science, 7th ed. 2009, "near
// addition"; tables at each table.
#pragma once

#include "core/finding.hpp"
#include "core/optics/sphero_cylinder.hpp"

#include <optional>
#include <string>
#include <vector>

namespace quarterstep
{

/// Amplitude of accommodation, dioptres, >= 0.
struct Amplitude {
    double least = 0.0;
    double mean = 0.0;
    double most = 0.0;
};

/// Hofstetter: least 15 - 0.25 age, mean 18.5 - 0.30 age, most 25 - 0.40 age; below zero it is zero. Age in
/// years, 0 to 120. Measured amplitudes of children are lower than the mean line.
[[nodiscard]] Amplitude hofstetterAmplitude(double age);

/// Addition of a prescription written out in full for both distances: near sphere - distance sphere, after
/// bringing both to the same cylinder form; exact. Refused: near-cylinder-other (the cylinders differ by more
/// than 0.005 D of power vector, so that no addition joins them), near-weaker (it would be negative).
[[nodiscard]] Parsed<Dioptres> additionBetween(const SpheroCylinder& distance, const SpheroCylinder& near);

/// How much of the amplitude may be used for long.
enum class Reserve {
    half,    ///< half is kept in reserve
    oneThird ///< two thirds are used: younger presbyopes
};

/// Addition = 1/distance - used share of the amplitude, never below 0, dioptres. `workingMm` > 0, amplitude
/// >= 0.
[[nodiscard]] double additionFor(double amplitude, double workingMm, Reserve reserve);
/// Accommodation still used with an addition at a distance, dioptres, never below 0.
[[nodiscard]] double accommodationUsed(double addition, double workingMm);
/// Amplitude from a near point found through a plus lens: reading of the scale less the lens, never below 0.
[[nodiscard]] double amplitudeThroughLens(double scale, double lens);
/// Near point, mm, of an amplitude with nothing added; empty for no amplitude.
[[nodiscard]] std::optional<double> nearPoint(double amplitude);

/// One band of a table by age; `to` is the last whole year of the band.
struct AgeRow {
    double from = 0.0;
    double to = 0.0;
    double least = 0.0; ///< dioptres; equal to `most` where the source gives one number
    double most = 0.0;
};

/// A published or customary table by age, with whom it was measured on.
struct AgeTable {
    enum class Holds { addition, amplitude };
    enum class Confidence { seenInSource, secondHand, commonPractice, fromMemory };

    std::string name;
    Holds holds = Holds::addition;
    std::string population;
    std::string source;
    Confidence confidence = Confidence::commonPractice;
    double workingMm = 400.0; ///< distance the additions hold for
    double spread = 0.0;      ///< half width within which about 95 % are thought to lie, dioptres
    std::string spreadSource;
    std::vector<AgeRow> rows; ///< rising, without overlap

    /// The band of an age; empty outside the table.
    [[nodiscard]] const AgeRow* at(double age) const;
};

/// One suggested addition; never shown without another.
struct AdditionSuggestion {
    std::string model;
    double least = 0.0; ///< dioptres, >= 0
    double most = 0.0;
    double spread = 0.0; ///< half width about the band
    std::string source;
    bool commonPractice = false; ///< no study behind it
    bool otherDistance = false;  ///< moved from the distance of its table to the one asked for
};

/// Suggestions for an age and a distance: Hofstetter's mean and least with half in reserve, every amplitude
/// table, every addition table that covers the age. Always two or more. Age 0 to 120; workingMm > 0.
[[nodiscard]] std::vector<AdditionSuggestion> suggestAdditions(double age, double workingMm,
                                                               const std::vector<AgeTable>& tables);
/// As above from a measured amplitude (dioptres): half in reserve and two thirds used first, then the tables
/// by age when an age is given.
[[nodiscard]] std::vector<AdditionSuggestion> suggestFromAmplitude(double amplitude,
                                                                   std::optional<double> age,
                                                                   double workingMm,
                                                                   const std::vector<AgeTable>& tables);

/// How far an addition lies outside the band of a suggestion, dioptres; 0 inside.
[[nodiscard]] double outsideBand(double addition, const AdditionSuggestion& suggestion);

/// How far an addition found departs from the nearest of the suggestions. Limits from Arq Bras Oftalmol
/// 2013;76:218-220: 95 % limits of every tentative method wider than 0.50 D.
enum class AdditionJudgement { usual, unusual, checkAgain };
inline constexpr double usualAddition = 0.50; ///< dioptres
inline constexpr double checkAddition = 0.75;
[[nodiscard]] AdditionJudgement judgeAddition(double addition,
                                              const std::vector<AdditionSuggestion>& suggestions);

} // namespace quarterstep
