// SPDX-License-Identifier: GPL-3.0-or-later
// What one row of the prescription table must hold together: needed cells, distances that agree, one addition
// an eye.
#pragma once

#include "core/fitting/prescription.hpp"
#include "inventory/text/survey_table.hpp"

namespace quarterstep
{

/// Errors: person-empty, empty-eye, addition-twice. Cautions: pd-monocular, pd-sum, near-pd-wider,
/// near-and-addition. Common practice: a binocular PD of 40 mm or less is probably a monocular one.
void checkRecord(const PersonRecord& record, const CellsByName& cells, std::vector<Finding>& findings);

/// monthsSinceWritten from an ISO date of today; date-future when it lies ahead. An empty `today` leaves it
/// out.
void setMonths(PersonRecord& record, const CellsByName& cells, const std::string& today,
               std::vector<Finding>& findings);

} // namespace quarterstep
