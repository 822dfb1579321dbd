// SPDX-License-Identifier: GPL-3.0-or-later
// Every pair and every frame with every two lenses, judged one by one and ordered: what the search must agree
// with.
#pragma once

#include "core/fitting/candidates.hpp"

namespace quarterstep
{

[[nodiscard]] CandidateLists exhaustiveSearch(const Need& need, const std::vector<StockLine>& stock,
                                              const Profile& profile, const Settings& settings,
                                              const CandidateOptions& options);

} // namespace quarterstep
