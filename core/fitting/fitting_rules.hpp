// SPDX-License-Identifier: GPL-3.0-or-later
// Rules of fit as data: named, versioned profiles; each limit with the words of its source.
// Bands: fits | caution | on trial | fails. Limits are inclusive unless open ("< 1.00"); tolerance 1e-6.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace quarterstep
{

/// The criteria, in the order in which reasons are told. criteria/table.cpp holds names, units and words.
enum class Criterion {
    residualCylinder,
    needDifference,
    powerSize,
    blur,
    tooPlus,
    tooMinus,
    suppliedDifference,
    balance,
    suppliedCylinder,
    axisTurn,
    horizontalPrism,
    verticalPrism,
    centres,
    readingLevel,
    frameSize,
    nearBlur,
    nearTooPlus,
    nearTooMinus, // near portion of a bifocal
    sphereError,
    cylinderError,
    axisError, // audit indicator
    meanSphereAcuity,
    trialAcuity
};
inline constexpr std::size_t criterionCount = static_cast<std::size_t>(Criterion::trialAcuity) + 1;

/// A limit on a size >= 0. `open`: the limit itself is already outside.
struct Limit {
    double value = 0.0;
    bool open = false;
    bool operator==(const Limit&) const = default;
};

/// Upper ends of the bands; an absent band is empty. No limit at all: shown, never judged.
struct Bands {
    std::optional<Limit> fits;
    std::optional<Limit> caution;
    std::optional<Limit> trial;
    bool operator==(const Bands&) const = default;
};

/// A limit that depends on the size of the needed cylinder: up to `cylinder` (inclusive) `fits` applies.
struct CylinderStep {
    double cylinder = 0.0;
    double fits = 0.0;
    bool operator==(const CylinderStep&) const = default;
};

struct CriterionRule {
    bool judged = false; ///< false: measured value is shown without a verdict
    Bands bands;
    std::optional<Bands> minus;      ///< power size at near: limits for a supplied minus power
    bool neverFails = false;         ///< beyond the last band is still a caution (bifocals excepted)
    std::optional<double> olderFrom; ///< from this age `older` applies instead of `bands`
    Bands older;
    std::optional<double>
        hyperopicChildUnder; ///< balance: for hyperopes under this age only the fits band counts
    std::optional<double>
        needsPrismUnder; ///< centres: the caution band counts only with horizontal prism up to this
    std::optional<double> vertexAbove;    ///< power size: above this the vertex distance must be recorded
    std::vector<CylinderStep> byCylinder; ///< axis error
    std::string source;                   ///< words of the source, shown to people
    bool operator==(const CriterionRule&) const = default;
};

struct Profile {
    std::string name;
    std::string version;
    bool prismByDecentration = false; ///< stock may supply prescribed prism
    std::array<CriterionRule, criterionCount> criteria;

    [[nodiscard]] const CriterionRule& of(Criterion c) const { return criteria[static_cast<std::size_t>(c)]; }
    [[nodiscard]] CriterionRule& of(Criterion c) { return criteria[static_cast<std::size_t>(c)]; }
};

struct Range {
    double least = 0.0;
    double most = 0.0;
    [[nodiscard]] double middle() const { return (least + most) / 2.0; }
    bool operator==(const Range&) const = default;
};

/// What is not a limit of a profile. Defaults are those of app/help/matching.md, each named with its source
/// there.
struct Settings {
    double stockVertex = 12.0;         ///< mm at which stock is worn
    Range adultDistancePd{54.0, 74.0}; ///< plausible when unknown
    Range adultNearPd{53.0, 68.0};
    Range unknownCentres{55.0, 70.0}; ///< when a line gives neither centres nor frame
    bool useUsedPairs = true;
    bool holdBackSecondPair = true;
    bool operator==(const Settings&) const = default;
};

struct FittingRules {
    std::vector<Profile> profiles;
    Settings settings;
    std::string hash; ///< of the canonical text of profiles and settings, hex, first 16 digits

    [[nodiscard]] const Profile* find(const std::string& name) const
    {
        for (const auto& profile : profiles)
            if (profile.name == name)
                return &profile;
        return nullptr;
    }
};

} // namespace quarterstep
