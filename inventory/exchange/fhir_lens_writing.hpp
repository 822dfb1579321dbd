// SPDX-License-Identifier: GPL-3.0-or-later
// One lensSpecification on its way out.
#pragma once

#include "inventory/exchange/exchange.hpp"

namespace quarterstep
{

/// Elements that were kept at the import, by name, as JSON.
using FhirKept = std::vector<std::pair<std::string, std::string>>;
/// "" where it was not kept.
[[nodiscard]] std::string fhirKept(const FhirKept& kept, std::string_view element);
[[nodiscard]] std::string fhirCoding(const char* system, std::string_view code);

/// The lens of one eye as JSON. Findings: fhir-axis-rounded (caution).
[[nodiscard]] std::string writeFhirLens(const PersonRecord& person, Eye side, const FhirKept& kept,
                                        std::vector<Finding>& findings);

} // namespace quarterstep
