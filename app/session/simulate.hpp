// SPDX-License-Identifier: GPL-3.0-or-later
// Camp days drawn from a demand: how many are served, when lines run out, how many boxes to carry.
#pragma once

#include "app/session/demand_needs.hpp"
#include "core/planning/camp_simulation.hpp"

namespace quarterstep
{

struct SimulateQuestion {
    Demand demand;
    MatchOptions match;
    int people = 100; ///< who come on a day
    int days = 200;
    int lineLength = 20; ///< people planned for together
    std::uint64_t seed = 1;
};

/// Shares of the needs in the line, over the days.
struct Spread {
    double mean = 0.0;
    double low = 0.0;    ///< 5 days in a hundred serve less
    double middle = 0.0; ///< median
    double high = 0.0;   ///< 5 days in a hundred serve more
};

struct SimulatedLine {
    std::string line;      ///< the first of those that are the same to the eye
    double chance = 0.0;   ///< of running out
    double atPerson = 0.0; ///< median, on the days on which it runs out
};

struct BoxCount {
    int boxes = 1; ///< times what is on hand
    double share = 0.0;
};

struct SimulateAnswer {
    double needs = 0.0; ///< in the line, mean of the days
    Spread firstCome;
    Spread replanned;
    Spread reachable;                   ///< if nothing ran out
    std::vector<SimulatedLine> runOuts; ///< under first come, soonest first
    std::vector<BoxCount> boxes;        ///< mean share served, planned again, by boxes carried
    std::optional<int> enough;          ///< boxes for 95 % of what is reachable
    Sentence nothing;                   ///< why nothing could be simulated
};

/// Days run on two threads; the same seed gives the same answer.
[[nodiscard]] SimulateAnswer simulateCamp(std::span<const StockLine> stock, const FittingRules& rules,
                                          const SimulateQuestion& question, const Job& job = {});

} // namespace quarterstep
