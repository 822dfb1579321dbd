// SPDX-License-Identifier: GPL-3.0-or-later
// What a hand-over was judged by, as text kept with its entry: the columns of the person's row that bear on
// the judgement, and the pair as it sat on the face. Read back, both give the same fit to the last bit.
#pragma once

#include "core/fitting/fit.hpp"

namespace quarterstep
{

/// Every filled column of the prescription table with its cell, in one order; without the columns that the
/// table does not know.
[[nodiscard]] std::vector<std::pair<std::string, std::string>> recordCells(const PersonRecord& person);

/// One "column: cell" a line, in the notation of the prescription table. Free words stay out: a symptom, a
/// prescriber and a guardian are kept as "yes". Repeated readings are left out (they bear on the chance
/// alone).
[[nodiscard]] std::string recordText(const PersonRecord& person);
/// Empty when a line is not one of ours.
[[nodiscard]] std::optional<PersonRecord> readRecordText(const std::string& text);

/// "right S C A left S C A add A centres L M assumed no heights H equal yes size medium", "-" for none.
[[nodiscard]] std::string supplyText(const Supply& supply);
[[nodiscard]] std::optional<Supply> readSupplyText(const std::string& text);

} // namespace quarterstep
