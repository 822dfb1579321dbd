// SPDX-License-Identifier: GPL-3.0-or-later
// What an entry keeps of the judgement at hand-over, so that an audit can hold its own against it.
#pragma once

#include "core/fitting/fit.hpp"
#include "core/record/entry.hpp"

namespace quarterstep
{

/// "fits" "caution" "on-trial" "outside": stable, in ledgers and JSON.
[[nodiscard]] const char* verdictWord(const Fit& fit);

/// Fields verdict, cost_thousandths (logMAR) and prism_h_thousandths (prism dioptres).
void putJudgement(Entry& entry, const Fit& fit);

/// A field of an entry, empty when it is not there.
[[nodiscard]] std::string fieldNamed(const Entry& entry, const char* name);

} // namespace quarterstep
