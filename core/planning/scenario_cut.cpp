// SPDX-License-Identifier: GPL-3.0-or-later
// Ready-made pairs alone: a smallest cut of the scenario's network, prices 0 and 1. With lenses in frames:
// the prices of its linear program, whose columns are priced in.
#include "core/planning/scenario_cut.hpp"

#include "core/planning/flow.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double units = 1e6; ///< of capacity for a whole piece, so that parts of packs keep six digits
constexpr double enough = 1e-6;

} // namespace

ScenarioService::ScenarioService(const PackingProblem& problem, const Scenario& scenario)
{
    std::map<std::vector<std::uint32_t>, std::size_t> known;
    for (const auto need : scenario) {
        const auto& choices = problem.needs[need].choices;
        if (choices.empty())
            continue;
        ++servable_;
        std::vector<std::vector<std::uint32_t>> uses;
        for (const auto& choice : choices) {
            bundles_ = bundles_ || choice.parts > 1;
            uses.emplace_back(choice.used().begin(), choice.used().end());
        }
        std::sort(uses.begin(), uses.end());
        std::vector<std::uint32_t> key;
        std::map<std::uint32_t, int> most; // of one need
        for (const auto& use : uses) {
            key.push_back(static_cast<std::uint32_t>(use.size()));
            key.insert(key.end(), use.begin(), use.end());
            for (const auto resource : use)
                most[resource] =
                    std::max(most[resource], static_cast<int>(std::count(use.begin(), use.end(), resource)));
        }
        const auto [found, isNew] = known.emplace(std::move(key), groups_.size());
        if (isNew)
            groups_.push_back({&choices, 0, std::vector<bool>(choices.size(), false)});
        ++groups_[found->second].needs;
        for (const auto& [resource, pieces] : most)
            wanted_[resource] += pieces;
    }
    for (const auto& [resource, pieces] : wanted_) {
        placeOf_.emplace(resource, resources_.size());
        resources_.push_back(resource);
    }
    if (bundles_)
        makeProgram();
}

ScenarioCut ScenarioService::cutAt(const std::vector<double>& pieces)
{
    return bundles_ ? cutOfProgram(pieces) : cutOfNetwork(pieces);
}

ScenarioCut ScenarioService::cutOfNetwork(const std::vector<double>& pieces) const
{
    std::vector<CapacityArc> arcs;
    const auto groups = static_cast<std::uint32_t>(groups_.size());
    const auto nodeOf = [&](std::size_t place) { return static_cast<std::uint32_t>(2 + groups + place); };
    const auto most = static_cast<std::int64_t>(units) * (servable_ + 1);
    for (std::uint32_t group = 0; group < groups; ++group) {
        arcs.push_back({0, 2 + group, static_cast<std::int64_t>(units) * groups_[group].needs});
        for (const auto& choice : *groups_[group].choices)
            arcs.push_back({2 + group, nodeOf(placeOf_.at(choice.resources[0])), most});
    }
    for (std::size_t place = 0; place < resources_.size(); ++place)
        arcs.push_back(
            {nodeOf(place), 1, static_cast<std::int64_t>(std::llround(units * pieces[resources_[place]]))});
    const auto flow = maximumFlow(2 + groups + resources_.size(), arcs);
    ScenarioCut cut;
    cut.flow = static_cast<double>(flow.value) / units;
    for (std::uint32_t group = 0; group < groups; ++group)
        if (!flow.onSourceSide[2 + group])
            cut.fixed += groups_[group].needs;
    for (std::size_t place = 0; place < resources_.size(); ++place)
        if (flow.onSourceSide[nodeOf(place)])
            cut.prices.emplace_back(resources_[place], 1.0);
    return cut;
}

void ScenarioService::makeProgram()
{
    constexpr std::size_t first = 2; // columns of everybody
    for (std::size_t place = 0; place < resources_.size(); ++place)
        resourceRow_.push_back(program_.addRow(0.0));
    for (std::size_t group = 0; group < groups_.size(); ++group) {
        groupRow_.push_back(program_.addRow(groups_[group].needs));
        for (std::size_t i = 0; i < std::min(first, groups_[group].choices->size()); ++i)
            addColumn(group, i);
    }
}

void ScenarioService::addColumn(std::size_t group, std::size_t choice)
{
    groups_[group].isIn[choice] = true;
    std::vector<RowEntry> entries{{groupRow_[group], 1.0}};
    for (const auto resource : (*groups_[group].choices)[choice].used()) {
        const auto row = resourceRow_[placeOf_.at(resource)];
        const auto twice = std::find_if(entries.begin() + 1, entries.end(),
                                        [&](const RowEntry& entry) { return entry.row == row; });
        if (twice != entries.end())
            twice->factor += 1.0;
        else
            entries.push_back({row, 1.0});
    }
    program_.addColumn(1.0, std::nullopt, entries);
}

bool ScenarioService::priceIn(const std::vector<double>& prices)
{
    constexpr std::size_t atOnce = 3;
    bool any = false;
    for (std::size_t group = 0; group < groups_.size(); ++group) {
        const double own = program_.price(groupRow_[group]);
        std::vector<std::pair<double, std::size_t>> worth;
        const auto& choices = *groups_[group].choices;
        for (std::size_t i = 0; i < choices.size(); ++i) {
            if (groups_[group].isIn[i])
                continue;
            double gain = 1.0 - own;
            for (const auto resource : choices[i].used())
                gain -= prices[placeOf_.at(resource)];
            if (gain > enough)
                worth.emplace_back(-gain, i);
        }
        std::sort(worth.begin(), worth.end());
        for (std::size_t i = 0; i < std::min(atOnce, worth.size()); ++i)
            addColumn(group, worth[i].second);
        any = any || !worth.empty();
    }
    return any;
}

ScenarioCut ScenarioService::cutOfProgram(const std::vector<double>& pieces)
{
    constexpr int rounds = 40;
    for (std::size_t place = 0; place < resources_.size(); ++place)
        program_.setMost(resourceRow_[place], pieces[resources_[place]]);
    std::vector<double> prices(resources_.size(), 0.0);
    ScenarioCut cut;
    for (int round = 0; round < rounds && program_.solve(); ++round) {
        cut.flow = program_.best();
        for (std::size_t place = 0; place < prices.size(); ++place)
            prices[place] = std::max(0.0, program_.price(resourceRow_[place]));
        if (!priceIn(prices))
            break;
    }
    // Whatever the program did: the prices alone prove the cut.
    for (const auto& group : groups_) {
        double best = 0.0;
        for (const auto& choice : *group.choices) {
            double gain = 1.0;
            for (const auto resource : choice.used())
                gain -= prices[placeOf_.at(resource)];
            best = std::max(best, gain);
        }
        cut.fixed += best * group.needs;
    }
    for (std::size_t place = 0; place < prices.size(); ++place)
        if (prices[place] > 1e-12)
            cut.prices.emplace_back(resources_[place], prices[place]);
    return cut;
}

} // namespace quarterstep
