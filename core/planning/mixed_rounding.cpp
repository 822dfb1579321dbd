// SPDX-License-Identifier: GPL-3.0-or-later
// From the linear program to a plan: what it gives whole stays, the rest is searched, gaps are filled, and
// whoever fares worst is planned again.
#include "core/planning/mixed_problem.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

constexpr double whole = 1.0 - 1e-6;

} // namespace

/// Searches the people whom the linear program served in parts, with what is left.
void MixedProblem::searchRest(const std::vector<std::size_t>& rest, std::vector<int>& left,
                              const PlanOptions& options, MixedResult& result) const
{
    std::vector<MixedMember> members;
    members.reserve(rest.size());
    for (const auto member : rest)
        members.push_back(members_[member]);
    MixedProblem small(line_, left, aims_, std::move(members), {});
    small.makeRows();
    for (std::size_t member = 0; member < rest.size(); ++member) {
        const auto& choices = small.choicesOf(member);
        std::vector<std::pair<double, std::size_t>> worth;
        for (std::size_t i = 0; i < choices.size(); ++i)
            if (isFree(choices[i], left))
                worth.emplace_back(
                    priceOf(choices[i], result.prices) - gainOf(small.members_[member], choices[i]), i);
        std::sort(worth.begin(), worth.end());
        constexpr std::size_t most = 40;
        for (std::size_t i = 0; i < std::min(most, worth.size()); ++i)
            small.addColumn(member, worth[i].second, true);
    }
    if (!small.program_.solve())
        return;
    const auto found = small.program_.solveWhole(options.nodes);
    if (!found)
        return;
    for (const auto& column : small.columns_)
        if (found->values[column.column] > 0.5) {
            const auto entry = small.members_[column.member].entry;
            result.choiceOf[entry] = static_cast<std::int32_t>(column.choice);
            take(line_[entry].choices[column.choice], left);
        }
}

void MixedProblem::roundPlan(const PlanOptions& options, MixedResult& result)
{
    auto left = available_;
    std::vector<double> part(members_.size(), 0.0);
    for (const auto& column : columns_) {
        const double value = program_.value(column.column);
        part[column.member] += value;
        if (value < whole)
            continue;
        const auto entry = members_[column.member].entry;
        result.choiceOf[entry] = static_cast<std::int32_t>(column.choice);
        take(line_[entry].choices[column.choice], left);
    }
    std::vector<std::size_t> rest;
    for (std::size_t member = 0; member < members_.size(); ++member)
        if (part[member] > 1e-6 && result.choiceOf[members_[member].entry] == nothingGiven)
            rest.push_back(member);
    if (!rest.empty())
        searchRest(rest, left, options, result);
    fill(left, result);
    improve(left, options, result);
}

double MixedProblem::worthOf(const MixedResult& result) const
{
    double worth = 0.0;
    for (const auto& member : members_)
        if (const auto held = result.choiceOf[member.entry]; held != nothingGiven)
            worth += gainOf(member, line_[member.entry].choices[static_cast<std::size_t>(held)]);
    return worth;
}

/// Those who lose most against their best choice or have nothing, and whoever holds what these would rather
/// have.
std::vector<std::size_t> MixedProblem::worstPlaced(const MixedResult& result) const
{
    constexpr std::size_t worst = 20;
    constexpr std::size_t most = 60;
    constexpr std::size_t wanted = 4; // choices of each whose holders take part
    std::vector<std::pair<double, std::size_t>> regrets;
    for (std::size_t member = 0; member < members_.size(); ++member) {
        const auto& choices = choicesOf(member);
        const auto held = result.choiceOf[members_[member].entry];
        if (choices.empty())
            continue;
        double best = -1.0;
        for (const auto& choice : choices)
            best = std::max(best, gainOf(members_[member], choice) - priceOf(choice, result.prices));
        const double now = held == nothingGiven
                               ? 0.0
                               : gainOf(members_[member], choices[static_cast<std::size_t>(held)]) -
                                     priceOf(choices[static_cast<std::size_t>(held)], result.prices);
        if (best - now > pricedIn)
            regrets.emplace_back(now - best, member);
    }
    std::sort(regrets.begin(), regrets.end());
    std::vector<bool> in(members_.size(), false);
    std::vector<bool> sought(available_.size(), false);
    std::vector<std::size_t> group;
    for (std::size_t i = 0; i < std::min(worst, regrets.size()); ++i) {
        const auto member = regrets[i].second;
        group.push_back(member);
        in[member] = true;
        const auto& choices = choicesOf(member);
        for (std::size_t k = 0; k < std::min(wanted, choices.size()); ++k)
            for (const auto resource : choices[k].used())
                sought[resource] = true;
    }
    for (std::size_t member = 0; member < members_.size() && group.size() < most; ++member) {
        const auto held = result.choiceOf[members_[member].entry];
        if (in[member] || held == nothingGiven)
            continue;
        const auto& holding = choicesOf(member)[static_cast<std::size_t>(held)];
        if (std::any_of(holding.used().begin(), holding.used().end(),
                        [&](auto resource) { return sought[resource]; }))
            group.push_back(member);
    }
    return group;
}

/// Plans some people again, exactly, with what they hold and what is left; kept while it helps.
void MixedProblem::improve(std::vector<int>& left, const PlanOptions& options, MixedResult& result) const
{
    constexpr int improvements = 6;
    for (int i = 0; i < improvements; ++i) {
        const auto group = worstPlaced(result);
        if (group.empty())
            return;
        const auto before = result.choiceOf;
        const auto leftBefore = left;
        const double worth = worthOf(result);
        for (const auto member : group)
            if (auto& held = result.choiceOf[members_[member].entry]; held != nothingGiven) {
                take(choicesOf(member)[static_cast<std::size_t>(held)], left, -1);
                held = nothingGiven;
            }
        searchRest(group, left, options, result);
        if (worthOf(result) > worth + 1e-12)
            continue;
        result.choiceOf = before;
        left = leftBefore;
        return;
    }
}

/// Somebody who holds what is missing moves to something else that is free.
bool MixedProblem::makeRoom(std::size_t member, std::vector<int>& left, MixedResult& result) const
{
    const auto& choices = choicesOf(member);
    for (std::size_t i = 0; i < choices.size(); ++i)
        for (std::size_t other = 0; other < members_.size(); ++other) {
            const auto holder = members_[other].entry;
            const auto held = result.choiceOf[holder];
            if (held == nothingGiven)
                continue;
            const auto& holding = line_[holder].choices[static_cast<std::size_t>(held)];
            const bool touches =
                std::any_of(holding.used().begin(), holding.used().end(), [&](auto resource) {
                    return left[resource] <= 1 &&
                           std::find(choices[i].used().begin(), choices[i].used().end(), resource) !=
                               choices[i].used().end();
                });
            if (!touches)
                continue;
            take(holding, left, -1);
            if (isFree(choices[i], left)) {
                take(choices[i], left);
                const auto& others = line_[holder].choices;
                const auto moved = std::find_if(others.begin(), others.end(),
                                                [&](const Choice& choice) { return isFree(choice, left); });
                if (moved != others.end()) {
                    take(*moved, left);
                    result.choiceOf[holder] = static_cast<std::int32_t>(moved - others.begin());
                    result.choiceOf[members_[member].entry] = static_cast<std::int32_t>(i);
                    return true;
                }
                take(choices[i], left, -1);
            }
            take(holding, left);
        }
    return false;
}

void MixedProblem::fill(std::vector<int>& left, MixedResult& result) const
{
    std::vector<std::size_t> waiting;
    for (std::size_t member = 0; member < members_.size(); ++member)
        if (result.choiceOf[members_[member].entry] == nothingGiven)
            waiting.push_back(member);
    for (const auto member : waiting) {
        const auto& choices = choicesOf(member);
        const auto found = std::find_if(choices.begin(), choices.end(),
                                        [&](const Choice& choice) { return isFree(choice, left); });
        if (found == choices.end())
            continue;
        take(*found, left);
        result.choiceOf[members_[member].entry] = static_cast<std::int32_t>(found - choices.begin());
    }
    double open = bound(result.prices);
    for (const auto& member : members_)
        open -= result.choiceOf[member.entry] == nothingGiven ? 0.0 : member.weight;
    for (const auto member : waiting) {
        if (open < 1.0)
            return;
        if (result.choiceOf[members_[member].entry] == nothingGiven && makeRoom(member, left, result))
            open -= members_[member].weight;
    }
}

} // namespace quarterstep
