// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/coverage.hpp"

#include "core/fitting/stock_index.hpp"

namespace quarterstep
{

Coverage coverageOf(const std::vector<PersonRecord>& people, std::span<const StockLine> stock,
                    const FittingRules& rules, const MatchOptions& options)
{
    Coverage coverage;
    const StockIndex index(stock);
    MatchOptions indexed = options;
    indexed.candidates.index = &index;
    for (const auto& person : people)
        for (const auto& answer : recommend(person, stock, rules, indexed)) {
            ++coverage.people;
            if (answer.verdict == Verdict::stock) {
                ++coverage.served;
                coverage.caution += answer.reasonKey == "caution" ? 1 : 0;
                continue;
            }
            ++coverage.byReason[answer.reasonKey];
            coverage.none += answer.verdict == Verdict::none ? 1 : 0;
            coverage.onTrial += answer.reasonKey == "on_trial" ? 1 : 0;
            coverage.incomplete +=
                answer.verdict == Verdict::incomplete && answer.reasonKey != "on_trial" ? 1 : 0;
        }
    return coverage;
}

} // namespace quarterstep
