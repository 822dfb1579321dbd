// SPDX-License-Identifier: GPL-3.0-or-later
// What the objects of one patient say together.
#pragma once

#include "inventory/exchange/dicom_object.hpp"
#include "inventory/exchange/exchange.hpp"

namespace quarterstep
{

struct DicomPatient {
    PersonRecord record;
    PartPlaces places;
    TableRow row;
    bool subjective = false;
    bool autorefraction = false;

    void tell(Severity severity, const std::string& file, const char* code, Sentence sentence);
};

/// Takes what an object of a file states.
void takeDicomObject(const DicomObject& object, const std::string& file, DicomPatient& patient);
/// Once all files are read: without a refraction the objective reading stands in for it, and says so.
void settleDicomPatient(DicomPatient& patient);

} // namespace quarterstep
