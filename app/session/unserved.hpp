// SPDX-License-Identifier: GPL-3.0-or-later
// What the ledger says already about a person and a purpose, so that a table dispensed twice doubles nothing.
#pragma once

#include "app/session/hand_over.hpp"

namespace quarterstep
{

/// Both finals as written, for the record.
[[nodiscard]] std::string finalsAsWritten(const PersonRecord& person);

/// What planning asks of an entry that holds no record any more: age in years, additions, the PD of the
/// purpose. What is not known stays out.
void putDemandFields(const PersonRecord& person, const Recommendation& answer,
                     std::map<std::string, std::string>& fields);

/// What an entry about a need says of it: purpose, rules, finals, what planning asks; beside the chain, so
/// that it can be forgotten, the prescription itself.
void putNeed(const Camp& camp, const PersonRecord& person, const Recommendation& answer, Entry& entry);

/// A standing hand-over of today at this site to this person, for this purpose and these finals.
[[nodiscard]] bool handedOverToday(const Camp& camp, const PersonRecord& person, Purpose purpose);

/// The id of a standing entry that says the same as this one; empty when there is none.
[[nodiscard]] std::string saidBefore(const Camp& camp, const Entry& entry);

} // namespace quarterstep
