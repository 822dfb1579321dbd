// SPDX-License-Identifier: GPL-3.0-or-later
// One VisionPrescription, and the Observations of ours that go with it.
#pragma once

#include "inventory/exchange/fhir_lens.hpp"

namespace quarterstep
{

/// Reads a resource that is for spectacles and in force into the draft, with what it contains.
void readFhirPrescription(const JsonValue& resource, FhirDraft& draft);
/// Why an Observation cannot be read: entered in error, not of our code system, changed by what is not
/// understood; null when it can. The sentence takes its words and the person.
[[nodiscard]] const char* fhirMeasuresRefused(const JsonValue& observation);
/// The components of an Observation of our code system.
void readFhirMeasures(const JsonValue& observation, FhirDraft& draft);

} // namespace quarterstep
