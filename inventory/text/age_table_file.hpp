// SPDX-License-Identifier: GPL-3.0-or-later
// age_tables.yaml: additions and amplitudes of accommodation by age, each with its population, source and
// spread.
#pragma once

#include "core/optics/near_addition.hpp"

namespace quarterstep
{

/// The tables compiled in, parsed once; a broken default is a programming error (assert).
[[nodiscard]] const std::vector<AgeTable>& defaultAgeTables();

/// Defaults with the tables of the text over them (same name replaces); errors located, all in one run.
[[nodiscard]] Reading<std::vector<AgeTable>> readAgeTableText(std::string bytes, const std::string& name);

} // namespace quarterstep
