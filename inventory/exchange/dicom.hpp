// SPDX-License-Identifier: GPL-3.0-or-later
// DICOM ophthalmic refractive objects (PS3.3 A.60, C.8.25): what a focimeter, an autorefractor, a refraction
// and an acuity chart say, brought together by patient id; and a Subjective Refraction on the way out.
#pragma once

#include "inventory/exchange/exchange.hpp"

namespace quarterstep
{

/// A file by name and bytes.
struct NamedBytes {
    std::string name;
    std::string bytes;
};

/// One row a patient id. A subjective refraction is the final prescription; an autorefraction the objective
/// reading, and the final one with source objective where there is no other; a lensometry the own pair;
/// acuities by the meaning of their type. Errors of the files (nothing is taken): dicom-not, dicom-broken,
/// dicom-class, dicom-too-deep. Errors of rows: dicom-value, dicom-twice, dicom-eye-missing. Cautions and
/// notes: dicom-no-refraction, dicom-acuity, dicom-left-out (elements that are not used).
[[nodiscard]] ImportedRows readDicom(const std::vector<NamedBytes>& files, const ImportOptions& options);

/// A Subjective Refraction of one person, explicit VR little endian. What the object has no attribute for
/// goes, as JSON, into a private element of ours. Errors: dicom-text (a code of more than 64 characters or
/// with a backslash).
[[nodiscard]] Reading<std::string> writeDicom(const ExchangePerson& person, const std::string& today);

} // namespace quarterstep
