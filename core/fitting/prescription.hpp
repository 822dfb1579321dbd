// SPDX-License-Identifier: GPL-3.0-or-later
// One person's record on the day: the final prescription and what was measured beside it.
// Columns of the prescription table carry the same names (see app/help/matching.md).
#pragma once

#include "core/finding.hpp"
#include "core/optics/acuity.hpp"
#include "core/optics/covariance.hpp"
#include "core/optics/notation.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace quarterstep
{

enum class Purpose { unstated, distance, near, intermediate, bifocal, both };

/// Signs that decide a referral; each is asked for by name, never inferred.
enum class Sign {
    suddenLoss,
    pain,
    redEye,
    flashesOrFloaters,
    doubleVision,
    whitePupil,
    squint,
    cycloplegiaWanted,
    distortion,
    fieldLoss,
    halos
};

/// What one eye's chart said, by what was worn. Empty = not taken.
struct EyeAcuities {
    std::optional<Acuity> unaided;
    std::optional<Acuity> habitual; ///< with the person's own pair
    std::optional<Acuity> pinhole;
    std::optional<Acuity> best;       ///< with the final prescription
    std::optional<Acuity> meanSphere; ///< with the mean sphere in the trial frame
};

/// What repeated readings of one eye say about their scatter.
struct RepeatedReadings {
    Covariance ofOne;      ///< of a single reading, D²
    std::size_t count = 0; ///< readings used
};

/// Everything recorded for one eye.
struct EyeRecord {
    WrittenEye final;
    std::optional<Dioptres> addition;        ///< of this eye, distance to near
    std::optional<SpheroCylinder> nearPower; ///< whole near power found by trial, instead of an addition
    std::optional<double> monocularPd;       ///< mm, distance
    EyeAcuities acuity;
    std::optional<SpheroCylinder> worn; ///< own pair, focimeter reading
    std::optional<SpheroCylinder> objective;
    std::optional<RepeatedReadings> repeated; ///< from a readings file, when there is one
    std::optional<double> heightMm;           ///< above the lowest point of the lens, in the frame chosen
    bool lensImplant = false;

    [[nodiscard]] bool seeing() const { return final.state == EyeState::measured; }
};

/// One row of the prescription table.
struct PersonRecord {
    std::string person;
    std::optional<double> age; ///< years
    std::string sex;
    Purpose purpose = Purpose::unstated;
    PerEye<EyeRecord> eyes;
    std::optional<double> distancePd;     ///< mm
    std::optional<double> nearPd;         ///< mm, measured
    std::optional<double> workingMm;      ///< from the spectacle plane; 400 when absent
    std::optional<double> intermediateMm; ///< stated distance for intermediate work
    std::optional<double> vertexMm;
    std::optional<NearAcuity> nearUnaided;
    std::optional<NearAcuity> nearBest;
    std::vector<Sign> signs;
    std::string symptoms;
    std::optional<Dioptres> wornAddition;
    std::optional<bool> cycloplegia;
    bool objectiveOnly = false; ///< source = objective
    std::string prescriber;
    std::string writtenOn;                 ///< ISO date or empty
    std::optional<int> monthsSinceWritten; ///< worked out by whoever knows today's date
    std::string frameSize;                 ///< small | medium | large or empty
    std::string frame;                     ///< chosen for a custom order, in words
    std::string guardian;
    std::vector<std::pair<std::string, std::string>> otherColumns; ///< unknown columns, kept
    Position position;

    [[nodiscard]] bool child() const { return age && *age < 16.0; }
    [[nodiscard]] double working() const { return workingMm.value_or(400.0); }
    [[nodiscard]] bool oneSeeingEye() const { return eyes.right.seeing() != eyes.left.seeing(); }
};

} // namespace quarterstep
