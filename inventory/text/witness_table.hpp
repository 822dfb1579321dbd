// SPDX-License-Identifier: GPL-3.0-or-later
// What was read again after hand-overs, by somebody who had not seen the record: CSV with the column entry
// (the id of the hand-over) and any of right, left, add, add_right, add_left, pd_mm (the card read again) and
// pair_right, pair_left (the pair by focimeter). Cells are written as in the prescription table.
#pragma once

#include "core/auditing/hand_over_facts.hpp"
#include "core/finding.hpp"

#include <map>
#include <memory>
#include <string>

namespace quarterstep
{

using LaterWitnesses = std::map<std::string, std::shared_ptr<const LaterWitness>>; ///< by entry

/// Everything found in one run. Findings beside those of bytes, CSV and cells: table-empty, column-missing,
/// column-twice, column-unknown, row-short, row-long, witness-entry, witness-twice.
[[nodiscard]] Reading<LaterWitnesses> readWitnessFile(const std::string& path);
[[nodiscard]] Reading<LaterWitnesses> readWitnessText(const std::string& bytes, const std::string& name);

} // namespace quarterstep
