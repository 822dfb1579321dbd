// SPDX-License-Identifier: GPL-3.0-or-later
// One lensSpecification of a VisionPrescription.
#pragma once

#include "inventory/exchange/exchange.hpp"
#include "inventory/exchange/json_text.hpp"

namespace quarterstep
{

/// What is filled while a resource is read.
struct FhirDraft {
    PersonRecord record;
    PartPlaces places;
    TableRow row;
    std::vector<std::string> kept; ///< names of elements that were kept and not used

    void tell(Severity severity, const JsonValue& where, std::string code, Sentence sentence);
    /// Keeps an element as its JSON in a column of its own; `eye` "" for one of the resource.
    void keep(const std::string& eye, const JsonValue& element);
};

/// Whether a lens is a contact lens: its product says so, or it has an element that only contact lenses have.
[[nodiscard]] bool fhirContactLens(const JsonValue& lens);
/// Reads one lens into the eye it names.
void readFhirLens(const JsonValue& lens, FhirDraft& draft);

} // namespace quarterstep
