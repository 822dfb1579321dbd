// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/service_state.hpp"

#include <algorithm>
#include <set>

namespace quarterstep
{

namespace
{

constexpr std::size_t mostTried = 60; ///< choices of one who goes without
constexpr int mostHolders = 40;       ///< of a part that are asked to move, for one who lacks it

} // namespace

ServiceState::ServiceState(const std::vector<Waiting>& needs, const Scenario& scenario, std::size_t resources)
    : firstWay_(resources + 1, 0), bundled_(resources, false), left_(resources, 0), closed_(resources, false),
      visited_(resources, 0)
{
    needs_.reserve(scenario.size());
    for (const auto need : scenario) {
        needs_.push_back(&needs[need]);
        for (const auto& choice : needs[need].choices)
            for (const auto resource : choice.used()) {
                ++firstWay_[resource + 1];
                bundled_[resource] = bundled_[resource] || choice.parts > 1;
                bundles_ = bundles_ || choice.parts > 1;
            }
    }
    for (std::size_t i = 0; i < resources; ++i)
        firstWay_[i + 1] += firstWay_[i];
    ways_.resize(firstWay_.back());
    auto next = firstWay_;
    for (std::uint32_t need = 0; need < needs_.size(); ++need)
        for (std::uint32_t choice = 0; choice < needs_[need]->choices.size(); ++choice)
            for (const auto resource : needs_[need]->choices[choice].used())
                ways_[next[resource]++] = {need, choice};
    given_.assign(needs_.size(), -1);
}

void ServiceState::setLeft(std::uint32_t resource, int value)
{
    if (recording_)
        changes_.push_back({Change::Kind::left, resource, left_[resource]});
    left_[resource] = value;
}

void ServiceState::give(std::uint32_t need, std::int32_t choice)
{
    if (recording_)
        changes_.push_back({Change::Kind::given, need, given_[need]});
    given_[need] = choice;
}

bool ServiceState::partsFree(const Choice& choice) const
{
    if (choice.parts == 3 && choice.resources[1] == choice.resources[2])
        return left_[choice.resources[0]] > 0 && left_[choice.resources[1]] > 1;
    return std::all_of(choice.used().begin(), choice.used().end(),
                       [&](auto resource) { return left_[resource] > 0; });
}

/// Gives a free piece of the resource to somebody unserved, or to somebody whose own piece finds a taker.
bool ServiceState::reach(std::uint32_t resource)
{
    visited_[resource] = visit_;
    trail_.push_back(resource);
    for (auto i = firstWay_[resource]; i < firstWay_[resource + 1]; ++i) {
        const auto [need, place] = ways_[i];
        if (given_[need] != -1)
            continue;
        const auto& choice = choiceOf(need, place);
        if (!partsFree(choice))
            continue;
        for (const auto part : choice.used())
            setLeft(part, left_[part] - 1);
        give(need, static_cast<std::int32_t>(place));
        ++served_;
        return true;
    }
    for (auto i = firstWay_[resource]; i < firstWay_[resource + 1]; ++i) {
        const auto [need, place] = ways_[i];
        if (given_[need] == -1 || choiceOf(need, place).parts != 1)
            continue;
        const auto& held = choiceOf(need, static_cast<std::uint32_t>(given_[need]));
        if (held.parts != 1 || visited_[held.resources[0]] == visit_ || closed_[held.resources[0]])
            continue;
        // Hand it over on trial: the piece that comes free must find a taker.
        const auto before = given_[need];
        const auto freed = held.resources[0];
        setLeft(resource, left_[resource] - 1);
        setLeft(freed, left_[freed] + 1);
        give(need, static_cast<std::int32_t>(place));
        if (reach(freed))
            return true;
        give(need, before);
        setLeft(freed, left_[freed] - 1);
        setLeft(resource, left_[resource] + 1);
    }
    return false;
}

bool ServiceState::augment(std::uint32_t resource)
{
    if (closed_[resource])
        return false;
    ++visit_;
    trail_.clear();
    if (reach(resource))
        return true;
    // Nothing seen leads anywhere, and giving more away elsewhere opens nothing: closed for good.
    const bool final = std::none_of(trail_.begin(), trail_.end(), [&](auto one) { return bundled_[one]; });
    for (const auto one : trail_)
        if (final && !closed_[one]) {
            if (recording_)
                changes_.push_back({Change::Kind::closed, one, 0});
            closed_[one] = true;
        }
    return false;
}

int ServiceState::addAll(const std::vector<std::pair<std::uint32_t, int>>& pieces)
{
    const int before = served_;
    for (const auto& [resource, count] : pieces)
        setLeft(resource, left_[resource] + count);
    for (const auto& [resource, count] : pieces)
        while (left_[resource] > 0 && augment(resource)) {
        }
    return served_ - before;
}

void ServiceState::hold(std::uint32_t need, std::int32_t choice)
{
    for (const auto part : choiceOf(need, static_cast<std::uint32_t>(choice)).used())
        setLeft(part, left_[part] - 1);
    give(need, choice);
}

void ServiceState::drop(std::uint32_t need)
{
    for (const auto part : choiceOf(need, static_cast<std::uint32_t>(given_[need])).used())
        setLeft(part, left_[part] + 1);
    give(need, -1);
}

/// Somebody who holds the lacking part takes something else, so that `need` gets `choice`.
bool ServiceState::moveAway(std::uint32_t need, std::uint32_t choice, std::uint32_t lacking)
{
    int holders = 0;
    for (std::size_t i = 0; i < holders_[lacking].size() && holders < mostHolders; ++i) {
        const auto holder = holders_[lacking][i];
        const auto held = given_[holder];
        if (held == -1 || holder == need)
            continue;
        const auto used = choiceOf(holder, static_cast<std::uint32_t>(held)).used();
        if (std::find(used.begin(), used.end(), lacking) == used.end())
            continue; // has moved meanwhile
        ++holders;
        drop(holder);
        if (partsFree(choiceOf(need, choice))) {
            hold(need, static_cast<std::int32_t>(choice));
            const auto& others = needs_[holder]->choices;
            for (std::uint32_t other = 0; other < others.size(); ++other)
                if (partsFree(others[other])) {
                    hold(holder, static_cast<std::int32_t>(other));
                    ++served_;
                    return true;
                }
            drop(need);
        }
        hold(holder, held);
    }
    return false;
}

bool ServiceState::makeRoomFor(std::uint32_t need)
{
    const auto& choices = needs_[need]->choices;
    const auto tried = static_cast<std::uint32_t>(std::min<std::size_t>(choices.size(), mostTried));
    for (std::uint32_t choice = 0; choice < tried; ++choice) {
        std::uint32_t lacking = 0;
        int lacks = 0;
        for (const auto part : choices[choice].used())
            if (left_[part] <= 0 && (lacks == 0 || part != lacking)) {
                lacking = part;
                ++lacks;
            }
        if (lacks == 0 && partsFree(choices[choice])) {
            hold(need, static_cast<std::int32_t>(choice));
            ++served_;
            return true;
        }
        if (lacks == 1 && moveAway(need, choice, lacking))
            return true;
    }
    return false;
}

int ServiceState::makeRoom()
{
    const int before = served_;
    if (!bundles_)
        return 0;
    holders_.assign(left_.size(), {});
    for (std::uint32_t need = 0; need < needs_.size(); ++need)
        if (given_[need] != -1)
            for (const auto part : choiceOf(need, static_cast<std::uint32_t>(given_[need])).used())
                holders_[part].push_back(need);
    std::set<const Waiting*> inVain; // the same person may have been drawn many times
    for (std::uint32_t need = 0; need < needs_.size(); ++need)
        if (given_[need] == -1 && inVain.count(needs_[need]) == 0 && !makeRoomFor(need))
            inVain.insert(needs_[need]);
    return served_ - before;
}

void ServiceState::mark()
{
    recording_ = true;
    changes_.clear();
    servedAtMark_ = served_;
}

void ServiceState::undo()
{
    for (std::size_t i = changes_.size(); i-- > 0;) {
        const auto& change = changes_[i];
        switch (change.kind) {
        case Change::Kind::left:
            left_[change.place] = change.before;
            break;
        case Change::Kind::given:
            given_[change.place] = change.before;
            break;
        case Change::Kind::closed:
            closed_[change.place] = false;
            break;
        }
    }
    served_ = servedAtMark_;
    changes_.clear();
    recording_ = false;
}

} // namespace quarterstep
