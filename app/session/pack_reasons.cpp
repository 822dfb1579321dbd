// SPDX-License-Identifier: GPL-3.0-or-later
// Why each pack of an order is bought, and who goes without all the same.
#include "app/session/pack_told.hpp"

#include "core/planning/camp_simulation.hpp"

#include <algorithm>
#include <tuple>

namespace quarterstep
{

namespace
{

/// So many draws tell what leaving a pack out costs; more take time and change little.
constexpr std::size_t drawsForReasons = 20;

/// Shares of the weight of all needs to which a piece of the offer would do, or without which nothing would.
struct Usefulness {
    double at = 0.0;
    double only = 0.0;
};
Usefulness usefulnessOf(const JudgedDemand& judged, const Offer& offer)
{
    std::vector<bool> holds(judged.onHand.size(), false);
    for (const auto& [resource, pieces] : offer.holds)
        holds[resource] = true;
    Usefulness wanted;
    double all = 0.0;
    for (std::size_t person = 0; person < judged.needsOf.size(); ++person)
        for (const auto need : judged.needsOf[person]) {
            const double weight = judged.weightOf[person];
            all += weight;
            bool any = false;
            bool other = false;
            for (const auto& choice : judged.needs[need].choices) {
                const auto used = choice.used();
                const bool with = std::any_of(used.begin(), used.end(),
                                              [&](std::uint32_t resource) { return holds[resource]; });
                any = any || with;
                other = other || !with;
            }
            wanted.at += any ? weight : 0.0;
            wanted.only += any && !other ? weight : 0.0;
        }
    wanted.at /= std::max(1e-12, all);
    wanted.only /= std::max(1e-12, all);
    return wanted;
}

std::vector<RunOut> runOutsOf(const JudgedDemand& judged, const std::vector<Scenario>& scenarios,
                              const std::vector<DayResult>& days, int people)
{
    std::vector<std::vector<double>> at(judged.onHand.size());
    for (std::size_t day = 0; day < days.size(); ++day)
        for (std::size_t i = 0; i < at.size(); ++i)
            if (days[day].ranOutAt[i] > 0) // needs are counted; persons bring one or two
                at[i].push_back(static_cast<double>(days[day].ranOutAt[i]) * people /
                                static_cast<double>(std::max<std::size_t>(1, scenarios[day].size())));
    std::vector<RunOut> runOuts;
    for (std::size_t i = 0; i < at.size(); ++i)
        if (!at[i].empty())
            runOuts.push_back({judged.shelf[judged.resources->all()[i].lines.front()].name,
                               static_cast<double>(at[i].size()) / static_cast<double>(days.size()),
                               quantileOf(at[i], 0.5)});
    std::stable_sort(runOuts.begin(), runOuts.end(),
                     [](const RunOut& a, const RunOut& b) { return a.atPerson < b.atPerson; });
    return runOuts;
}

std::vector<Without> withoutOf(const std::vector<Waiting>& needs, const std::vector<Scenario>& scenarios,
                               const std::vector<DayResult>& days)
{
    std::map<std::tuple<Purpose, bool>, int> come;
    std::map<std::tuple<Purpose, bool, std::string>, int> without;
    for (std::size_t day = 0; day < days.size(); ++day)
        for (std::size_t i = 0; i < scenarios[day].size(); ++i) {
            const auto& need = needs[scenarios[day][i]];
            ++come[{need.purpose, need.child}];
            if (!days[day].given[i])
                ++without[{need.purpose, need.child,
                           need.choices.empty() ? need.reasonKey : std::string("ran_out")}];
        }
    const auto many = static_cast<double>(std::max<std::size_t>(1, days.size()));
    std::vector<Without> rows;
    for (const auto& [who, count] : without) {
        const auto& [purpose, child, reason] = who;
        rows.push_back({purpose, child, reason, count / many, come.at({purpose, child}) / many});
    }
    std::stable_sort(rows.begin(), rows.end(),
                     [](const Without& a, const Without& b) { return a.needs > b.needs; });
    return rows;
}

} // namespace

void tellReasons(const JudgedDemand& judged, const PackingProblem& problem,
                 const std::vector<Scenario>& draws, const std::vector<int>& packs, const Job& job,
                 PackAnswer& answer)
{
    const std::vector<Scenario> few(
        draws.begin(), draws.begin() + static_cast<std::ptrdiff_t>(std::min(draws.size(), drawsForReasons)));
    const double whole = serviceOf(problem, few, piecesWith(problem, packs)).served;
    std::vector<std::size_t> bought;
    for (std::size_t offer = 0; offer < packs.size(); ++offer)
        if (packs[offer] > 0)
            bought.push_back(offer);
    Job quiet;
    quiet.cancelled = job.cancelled;
    inParallel(bought.size(), quiet, [&](std::size_t i) {
        const auto& offer = problem.offers[bought[i]];
        auto& row = answer.order[i];
        const auto wanted = usefulnessOf(judged, offer);
        row.wanted = wanted.at;
        row.only = wanted.only;
        for (const auto& [resource, pieces] : offer.holds)
            row.onHand += problem.onHand[resource];
        auto without = packs;
        without[bought[i]] = 0;
        row.servedMore = std::max(0.0, whole - serviceOf(problem, few, piecesWith(problem, without)).served);
    });
}

void tellDays(const JudgedDemand& judged, const PackingProblem& problem, const std::vector<Scenario>& draws,
              const std::vector<int>& pieces, int people, PackAnswer& answer)
{
    DayQuestion question;
    question.needs = &problem.needs;
    question.pieces = pieces;
    std::vector<DayResult> days;
    days.reserve(draws.size());
    for (const auto& draw : draws)
        days.push_back(simulateDay(question, draw, Draw(0)));
    answer.runOuts = runOutsOf(judged, draws, days, people);
    answer.without = withoutOf(problem.needs, draws, days);
}

} // namespace quarterstep
