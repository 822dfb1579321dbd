// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/coverage.hpp"

#include "core/fitting/stock_index.hpp"

namespace quarterstep
{

std::vector<PersonRecord> withAssumptions(std::vector<PersonRecord> people,
                                          const CoverageAssumptions& assumed, const Settings& settings)
{
    for (auto& person : people) {
        if (assumed.final && person.objectiveOnly) {
            person.objectiveOnly = false;
            for (const Eye eye : bothEyes)
                person.eyes.of(eye).objective.reset();
        }
        if (assumed.final && person.prescriber.empty())
            person.prescriber = "assumed";
        if (assumed.vertex && !person.vertexMm)
            person.vertexMm = settings.stockVertex;
    }
    return people;
}

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
