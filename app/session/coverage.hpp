// SPDX-License-Identifier: GPL-3.0-or-later
// How much of a table the stock can serve, nothing used up: each person judged alone.
#pragma once

#include "core/fitting/recommendation.hpp"

#include <map>

namespace quarterstep
{

struct Coverage {
    int people = 0;  ///< persons and purposes judged
    int served = 0;  ///< acceptable stock, cautions included
    int caution = 0; ///< of the served, with a caution in the fit
    int onTrial = 0;
    int none = 0;
    int incomplete = 0;
    std::map<std::string, int> byReason; ///< of those not served; sums to people - served
};

/// What a table leaves out and the keeper lets be taken as given, for coverage alone.
struct CoverageAssumptions {
    bool centred = false; ///< an unknown PD is the centres of each pair
    bool final = false;   ///< objective readings are final, the prescriber is named
    bool vertex = false;  ///< an unrecorded vertex distance is that of the stock
    bool operator==(const CoverageAssumptions&) const = default;
};

/// The people with what is assumed put in.
[[nodiscard]] std::vector<PersonRecord> withAssumptions(std::vector<PersonRecord> people,
                                                        const CoverageAssumptions& assumed,
                                                        const Settings& settings);

[[nodiscard]] Coverage coverageOf(const std::vector<PersonRecord>& people, std::span<const StockLine> stock,
                                  const FittingRules& rules, const MatchOptions& options);

} // namespace quarterstep
