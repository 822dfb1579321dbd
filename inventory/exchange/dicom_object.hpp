// SPDX-License-Identifier: GPL-3.0-or-later
// One refractive object as plain values: all that the rest sees of the DICOM library.
#pragma once

#include "core/finding.hpp"
#include "core/optics/prism.hpp"
#include "core/optics/units.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace quarterstep
{

/// Our private elements (PS3.5, 7.8): group, and the name under which they stand.
inline constexpr std::uint16_t dicomPrivateGroup = 0x0047;
inline constexpr const char* dicomPrivateCreator = "QUARTERSTEP";

enum class DicomKind { lensometry, autorefraction, subjective, acuity };

/// One eye or lens. Numbers as they stand: dioptres, degrees, prism dioptres, mm.
struct DicomEye {
    std::optional<double> sphere;
    std::optional<double> cylinder;
    std::optional<double> axis;
    std::optional<EyePrism> prism;
    std::optional<double> addition;
    std::optional<double> decimalAcuity;
    std::string wrong; ///< the name of an attribute that could not be used; "" when all is well
};

struct DicomObject {
    DicomKind kind = DicomKind::subjective;
    std::string patientId;
    std::string contentDate; ///< YYYYMMDD
    PerEye<std::optional<DicomEye>> eyes;
    std::optional<double> distancePd;
    std::optional<double> nearPd;
    std::optional<double> vertexMm;
    std::string viewingDistance; ///< DISTANCE, NEAR …
    std::string acuityType;      ///< meaning of its code
    std::string record;          ///< our private element: columns of the table as JSON
    std::string profile;
    std::string profileVersion;
    std::string rulesHash;
    std::vector<std::string> unused; ///< names of elements
};

/// Errors: dicom-not, dicom-broken, dicom-class, dicom-too-deep.
[[nodiscard]] Reading<DicomObject> readDicomObject(const std::string& bytes, const std::string& name);
/// A Subjective Refraction; `uids` three of them: instance, series, study.
[[nodiscard]] std::string writeDicomObject(const DicomObject& object, const std::vector<std::string>& uids);

} // namespace quarterstep
