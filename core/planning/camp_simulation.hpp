// SPDX-License-Identifier: GPL-3.0-or-later
// One camp day as it might go: people arrive one after the other, the stock runs down.
#pragma once

#include "core/planning/packing.hpp"

namespace quarterstep
{

enum class DayRule {
    firstCome, ///< each takes the best that is left
    replanned  ///< whoever waits is planned for together, with a guess of who is still to come
};

struct DayResult {
    int needs = 0; ///< that arrived
    int served = 0;
    std::vector<bool> given; ///< of each arrival
    std::vector<int>
        ranOutAt; ///< of each resource: number of the arrival that took the last piece, 0 = never
};

struct DayQuestion {
    const std::vector<Waiting>* needs = nullptr;
    std::vector<int> pieces; ///< of each resource, in the morning
    DayRule rule = DayRule::firstCome;
    int lineLength = 20; ///< people planned for together
    std::vector<double>
        likely; ///< replanned: weight of each need, for the guess of who comes; empty = no guess
};

/// `arrivals` in their order. `draw` serves the guess alone: days under both rules have the same people.
/// Pure.
[[nodiscard]] DayResult simulateDay(const DayQuestion& question, const Scenario& arrivals, Draw draw);

/// Value at a share of sorted values (0 the smallest, 1 the largest), between neighbours in proportion.
[[nodiscard]] double quantileOf(std::vector<double> values, double share);

} // namespace quarterstep
