// SPDX-License-Identifier: GPL-3.0-or-later
//   bound = Σ pieces · price + Σ over people of the best gain left at these prices, 0 at least
// for any prices (Lagrange), so that it does not rest on the program being solved well.
#include "core/planning/mixed_problem.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr int rounds = 80;                  ///< of pricing, at most
constexpr std::size_t searchedWhole = 2500; ///< columns up to which the whole problem is searched
constexpr std::size_t oncePriced = 3;       ///< columns a person that come in at once

} // namespace

void MixedProblem::makeRows()
{
    for (const auto& member : members_) {
        personRow_.push_back(program_.addRow(1.0));
        isIn_.emplace_back(line_[member.entry].choices.size(), false);
    }
    for (const int pieces : available_)
        resourceRow_.push_back(program_.addRow(pieces));
    for (const auto& floor : floors_) { // -served - short <= -least; being short costs more than all else
        floorRow_.push_back(program_.addRow(-static_cast<double>(floor.least)));
        program_.addColumn(-(total_ + 1.0), std::nullopt, {{floorRow_.back(), -1.0}});
    }
}

void MixedProblem::addColumn(std::size_t member, std::size_t choice, bool wholeNumber)
{
    if (isIn_[member][choice])
        return;
    isIn_[member][choice] = true;
    const auto& taken = choicesOf(member)[choice];
    std::vector<RowEntry> entries{{personRow_[member], 1.0}};
    for (const auto resource : taken.used())
        if (entries.back().row == resourceRow_[resource] && entries.size() > 1)
            entries.back().factor += 1.0; // the same line right and left
        else
            entries.push_back({resourceRow_[resource], 1.0});
    if (const int floor = floorOf_[members_[member].entry]; floor >= 0)
        entries.push_back({floorRow_[static_cast<std::size_t>(floor)], -1.0});
    columns_.push_back(
        {member, choice,
         program_.addColumn(gainOf(members_[member], taken), std::nullopt, entries, wholeNumber)});
}

LinePrices MixedProblem::prices() const
{
    LinePrices prices;
    for (const auto row : resourceRow_)
        prices.resource.push_back(std::max(0.0, program_.price(row)));
    for (const auto row : floorRow_)
        prices.floor.push_back(std::max(0.0, program_.price(row)));
    return prices;
}

/// The pieces at their prices, and for each person what the best choice is worth above its price.
double MixedProblem::worthAt(const LinePrices& prices, bool withLoss) const
{
    double sum = 0.0;
    for (std::size_t i = 0; i < available_.size(); ++i)
        sum += available_[i] * prices.resource[i];
    for (std::size_t member = 0; member < members_.size(); ++member) {
        double best = 0.0;
        for (const auto& choice : choicesOf(member)) {
            const double gain = withLoss ? gainOf(members_[member], choice) : members_[member].weight;
            best = std::max(best, gain - priceOf(choice, prices));
        }
        sum += best;
    }
    return sum;
}

double MixedProblem::bound(const LinePrices& prices) const
{
    // All losses together are less than one person: weight - 1 < worth.
    const double slack = 1e-9 * (1.0 + total_);
    return std::min({std::floor(worthAt(prices, false) + slack),
                     std::ceil(worthAt(prices, true) + slack + 1.0) - 1.0, std::floor(total_ + slack)});
}

double MixedProblem::lossBound(const LinePrices& prices, double weight) const
{
    constexpr double unit = 1e-4;           // logMAR
    constexpr double mostOfScarcity = 0.45; // three parts of 15, a hundredth each
    const double units =
        (weight - worthAt(prices, true)) / lossUnit_ - mostOfScarcity * static_cast<double>(members_.size());
    return std::max(0.0, units * unit);
}

/// The first columns: the best two of everybody, and the best three at the prices of a plan before.
void MixedProblem::beginWith(const std::vector<double>& pricesBefore)
{
    const LinePrices prices{pricesBefore, {}};
    const bool known = pricesBefore.size() == available_.size();
    for (std::size_t member = 0; member < members_.size(); ++member) {
        const auto& choices = choicesOf(member);
        if (known) {
            std::vector<std::pair<double, std::size_t>> worth;
            worth.reserve(choices.size());
            for (std::size_t i = 0; i < choices.size(); ++i)
                worth.emplace_back(priceOf(choices[i], prices) - gainOf(members_[member], choices[i]), i);
            const auto most = std::min(oncePriced, worth.size());
            std::partial_sort(worth.begin(), worth.begin() + static_cast<std::ptrdiff_t>(most), worth.end());
            for (std::size_t i = 0; i < most; ++i)
                addColumn(member, worth[i].second);
        }
        for (std::size_t i = 0; i < std::min<std::size_t>(2, choices.size()); ++i)
            addColumn(member, i);
    }
}

/// A plan to begin from: everybody in turn takes what seems best of what is left.
void MixedProblem::beginAtPlan()
{
    std::vector<std::size_t> columns;
    std::vector<std::size_t> rows;
    auto left = available_;
    std::vector<bool> placed(members_.size(), false);
    for (const auto& column : columns_) {
        const auto& choice = choicesOf(column.member)[column.choice];
        if (placed[column.member] || !isFree(choice, left))
            continue;
        placed[column.member] = true;
        take(choice, left);
        columns.push_back(column.column);
        rows.push_back(personRow_[column.member]);
    }
    program_.beginAt(columns, rows);
}

/// Lets columns in that are worth more than their price. False when there are none.
bool MixedProblem::priceIn()
{
    const auto prices = this->prices();
    bool any = false;
    for (std::size_t member = 0; member < members_.size(); ++member) {
        const double own = program_.price(personRow_[member]);
        const int floor = floorOf_[members_[member].entry];
        const double more = floor >= 0 ? prices.floor[static_cast<std::size_t>(floor)] : 0.0;
        std::vector<std::pair<double, std::size_t>> worth;
        const auto& choices = choicesOf(member);
        for (std::size_t i = 0; i < choices.size(); ++i)
            if (!isIn_[member][i]) {
                const double gain =
                    gainOf(members_[member], choices[i]) + more - priceOf(choices[i], prices) - own;
                if (gain > pricedIn)
                    worth.emplace_back(-gain, i);
            }
        const auto most = std::min(oncePriced, worth.size());
        std::partial_sort(worth.begin(), worth.begin() + static_cast<std::ptrdiff_t>(most), worth.end());
        for (std::size_t i = 0; i < most; ++i)
            addColumn(member, worth[i].second);
        any = any || most > 0;
    }
    return any;
}

MixedResult MixedProblem::solve(const PlanOptions& options)
{
    MixedResult result;
    result.choiceOf.assign(line_.size(), nothingGiven);
    makeRows();
    std::size_t all = 0;
    for (std::size_t member = 0; member < members_.size(); ++member)
        all += choicesOf(member).size();
    const bool small = all <= searchedWhole;
    if (small) {
        for (std::size_t member = 0; member < members_.size(); ++member)
            for (std::size_t i = 0; i < choicesOf(member).size(); ++i)
                addColumn(member, i, true);
    } else {
        beginWith(options.pricesBefore);
        if (floors_.empty()) // a promised part that is not reached yet would make it no plan
            beginAtPlan();
    }
    bool solved = program_.solve();
    for (int round = 0; solved && !small && round < rounds && priceIn(); ++round)
        solved = program_.solve();
    result.prices = solved ? prices() : LinePrices{std::vector<double>(available_.size(), 0.0), {}};
    if (solved && small)
        if (const auto found = program_.solveWhole(10 * options.nodes)) {
            for (const auto& column : columns_)
                if (found->values[column.column] > 0.5)
                    result.choiceOf[members_[column.member].entry] = static_cast<std::int32_t>(column.choice);
            result.proved = found->proved;
            return result;
        }
    if (solved) {
        roundPlan(options, result);
    } else {
        auto left = available_;
        fill(left, result);
    }
    return result;
}

} // namespace quarterstep
