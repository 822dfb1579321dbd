// SPDX-License-Identifier: GPL-3.0-or-later
// Repeated objective readings of one eye: mean, scatter, outliers, how steady they are, and agreement with
// the final prescription. Readings are averaged as power vectors; axes and cylinders are never averaged.
// Sources: Kusel R, Oechsner U, DOG 2000 (averaging); repeatability at each value. The rule for outliers and
// the limit of steadiness are our own from those figures: no published rule was found.
#pragma once

#include "core/finding.hpp"
#include "core/optics/covariance.hpp"

#include <span>
#include <string>

namespace quarterstep
{

/// Fewest readings that say something about scatter (from memory: three is the usual minimum).
inline constexpr std::size_t fewestReadings = 3;
/// A reading farther than this (D) from the component-wise median is an outlier: the 95 % repeatability of
/// autorefraction in the field (Padhy et al., Transl Vis Sci Technol 2021;10(1):2). Rule: common practice.
inline constexpr double outlierDistance = 0.75;
inline constexpr const char* outlierSource =
    "common practice; 0.75 D is the 95 % repeatability of Padhy et al., Transl Vis Sci Technol 2021;10(1):2";

/// Published scatter of a single reading: standard deviations, dioptres.
struct Repeatability {
    const char* method; ///< stable, for machines: "subjective", "autorefractor"
    double m;
    double j; ///< J0 and J45 alike
    const char* source;
    [[nodiscard]] Covariance covariance() const { return {m * m, 0.0, 0.0, j * j, 0.0, j * j}; }
    /// Root mean square distance of a reading from the mean, dioptres: sqrt(m² + 2 j²).
    [[nodiscard]] double distance() const;
};

enum class Method { subjective, autorefractor };
[[nodiscard]] const Repeatability& publishedRepeatability(Method method); ///< see Repeatability

enum class Steadiness { steady, scattered, tooFew };

/// What repeated readings of one eye say.
struct ReadingsSummary {
    std::size_t count = 0;
    PowerVector median;                ///< by components, of all readings
    std::vector<std::size_t> outliers; ///< indexes left out of everything below
    std::size_t used = 0;
    PowerVector mean;                      ///< of the readings used
    std::optional<Covariance> covariance;  ///< of the readings used, n - 1; from two readings on
    Covariance assumed;                    ///< that, or from fewer than three readings the published one
    bool published = false;                ///< `assumed` is published, not measured
    std::optional<Ellipsoid> distribution; ///< 95 %; from three readings on
    std::optional<Ellipsoid> ofMean;       ///< 95 %; from four readings on
    Steadiness steadiness = Steadiness::tooFew;
    double figure = 0.0; ///< root mean square distance of a reading from the mean, D; 0 when too few
    double limit = 0.0;  ///< largest figure called steady, D
    Sentence statement;  ///< how steady, with figure and limit
    Sentence advice;     ///< what to do
};

/// Sums up readings of one eye. An outlier is left out only while three or more remain; otherwise none is
/// left out and the answer is `scattered`. `repeated`: these readings were already taken a second time, so
/// that scatter asks for a look at the eye. Any number of readings; none gives `tooFew` and the zero vector.
[[nodiscard]] ReadingsSummary summariseReadings(const std::vector<PowerVector>& readings,
                                                Method method = Method::autorefractor, bool repeated = false);

/// Standard deviation of the mean along each component, D: of the readings where they say it, else published.
[[nodiscard]] PowerVector uncertaintyOfMean(const ReadingsSummary& summary);

/// Objective against final.
struct Agreement {
    enum class Verdict { agrees, note, apart };
    Verdict verdict = Verdict::agrees;
    PowerVector difference;   ///< final - objective, D
    double obliqueSize = 0.0; ///< length of its (J0, J45), D
    PowerVector expected;     ///< 95 % of differences between two good measurements lie within these, D
    Sentence statement;       ///< which limit was passed, with the figure
    std::string source;
};

/// Limits: note above 0.50 D in M, confirm above 1.00 D in M or 0.50 D in J (Pesudovs, Weisinger 2004; Optom
/// Vis Sci 2019, doi 10.1097/OPX.0000000000001427). `expected` is 1.96 sqrt(published² + scatter of the
/// mean²).
[[nodiscard]] Agreement agreementWithFinal(const ReadingsSummary& objective, const PowerVector& final);

/// Limits of reproducibility of two measurements with standard deviation `deviation`: 1.96 sqrt(2) times it
/// (Mathebula SD, Rubin A, BMJ Open Ophthalmol 2022;7:e000954).
[[nodiscard]] double reproducibilityLimit(double deviation);

} // namespace quarterstep
