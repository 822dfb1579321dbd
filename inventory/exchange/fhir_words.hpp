// SPDX-License-Identifier: GPL-3.0-or-later
// Names and addresses that the reader and the writer of FHIR share.
#pragma once

#include "inventory/exchange/json_text.hpp"

#include <array>
#include <string>
#include <string_view>

namespace quarterstep
{

inline constexpr const char* fhirProductSystem =
    "http://terminology.hl7.org/CodeSystem/ex-visionprescriptionproduct";
inline constexpr const char* fhirAbsentReason = "http://hl7.org/fhir/StructureDefinition/data-absent-reason";
inline constexpr const char* fhirPersonSystem = "urn:quarterstep:person";
inline constexpr const char* fhirMeasureSystem = "urn:quarterstep:measure"; ///< codes: columns of the table
inline constexpr const char* fhirRulesSystem = "urn:quarterstep:rules"; ///< code: profile, with its version
inline constexpr const char* fhirRulesHashSystem = "urn:quarterstep:rules-hash";
inline constexpr std::string_view fhirColumn = "fhir."; ///< how columns of kept elements begin

/// What the reader uses; anything else is kept.
inline constexpr std::array<std::string_view, 10> fhirUsed{
    "resourceType", "status",    "created",      "patient",           "dateWritten",
    "prescriber",   "contained", "_dateWritten", "lensSpecification", "meta"};
inline constexpr std::array<std::string_view, 8> fhirLensUsed{"product", "eye",   "sphere", "cylinder",
                                                              "axis",    "prism", "add",    "note"};
inline constexpr std::array<std::string_view, 5> fhirContactOnly{"power", "backCurve", "diameter", "duration",
                                                                 "color"};

/// The code by which a Reference to a patient names them: the value of its identifier, or the end of its
/// reference, or its words.
[[nodiscard]] std::string fhirPersonOf(const JsonValue& reference);
/// Who a Reference to a prescriber names: its words, or its reference, or the value of its identifier.
[[nodiscard]] std::string fhirPrescriberOf(const JsonValue& reference);

/// Column in which an element is kept: "dateWritten" of no eye is "fhir.date_written". Tables know no
/// capitals: a capital becomes _ and its small letter, an underscore two.
[[nodiscard]] std::string fhirColumnOf(const std::string& eye, const std::string& element);
/// The element behind what stands after "fhir." or "fhir.right.".
[[nodiscard]] std::string fhirElementOf(std::string_view kept);

/// Without the blanks between values.
[[nodiscard]] std::string jsonCompact(std::string_view raw);

} // namespace quarterstep
