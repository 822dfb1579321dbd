// SPDX-License-Identifier: GPL-3.0-or-later
// The one table of criteria: JSON name, key in rules.yaml, unit, words for people.
#pragma once

#include "core/fitting/fitting_rules.hpp"

#include <string_view>

namespace quarterstep
{

struct Case; // criteria/measure.hpp

struct CriterionInfo {
    Criterion criterion;
    const char* name;    ///< JSON, snake_case
    const char* key;     ///< rules.yaml
    const char* unit;    ///< "D", "pd" (prism dioptres), "mm", "degrees", "logmar", ""
    const char* words;   ///< QS_SAY("core", …)
    const char* failing; ///< why a pair is not acceptable, QS_SAY("core", …), short
    const char* caution; ///< what a caution says, QS_SAY("core", …), short
    void (*measure)(const Case&);
};
/// The rows, in the order of the enumerators; one of them.
[[nodiscard]] const std::array<CriterionInfo, criterionCount>& criterionTable();
[[nodiscard]] const CriterionInfo& infoOf(Criterion criterion);

} // namespace quarterstep
