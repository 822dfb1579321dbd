// SPDX-License-Identifier: GPL-3.0-or-later
// HL7 FHIR VisionPrescription, R4 (4.0.1) and R5 (5.0.0), whose elements are the same: JSON, alone, in a
// Bundle, or one resource a line. What VisionPrescription has no element for (distances of the pupils,
// acuities …) goes into Observations of our own code system. Units are implied by the standard: dioptres,
// degrees, prism dioptres.
#pragma once

#include "inventory/exchange/exchange.hpp"

#include <span>

namespace quarterstep
{

/// Rows of all prescriptions for spectacles. Left out with a caution: contact lenses (fhir-contact-lens),
/// what is entered in error, cancelled or a draft (fhir-not-active), Observations of others (fhir-left-out);
/// other resources with a note. An element that is not used is kept in a column "fhir.NAME" (of an eye:
/// "fhir.right.NAME") as its JSON, with a note (fhir-kept). Errors of a row: fhir-modifier, fhir-status,
/// fhir-eye-missing, fhir-eye-twice, fhir-element and those of the prescription table. Errors of the file:
/// json-*, fhir-none, fhir-xml.
[[nodiscard]] ImportedRows readFhir(const std::string& bytes, const std::string& name,
                                    const ImportOptions& options);

/// A Bundle of type collection: a VisionPrescription each, and their Observations. `today` is the date of
/// what has none. Findings: fhir-axis-rounded (caution), not-carried (note: symptoms, guardian and
/// empty-eyed rows).
[[nodiscard]] Reading<std::string> writeFhirBundle(std::span<const ExchangePerson> persons,
                                                   const std::string& today);
/// The VisionPrescription alone, its Observations contained.
[[nodiscard]] Reading<std::string> writeFhirAlone(const ExchangePerson& person, const std::string& today);

} // namespace quarterstep
