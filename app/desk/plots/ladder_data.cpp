// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/ladder_data.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace quarterstep
{

LadderData ladderOf(std::span<const StockLine> stock, LineKind kind)
{
    std::map<long, Rung> byQuarter;
    for (const auto& line : stock) {
        if (line.kind != kind)
            continue;
        const double mean =
            (meanSphere(line.power.right).value() + meanSphere(line.power.left).value()) / 2.0;
        const long quarter = std::lround(mean * 4.0);
        auto& rung = byQuarter[quarter];
        rung.power = static_cast<double>(quarter) / 4.0;
        rung.available += std::max(0, line.available());
        rung.aside += line.held + line.quarantined;
        rung.least += line.keepLeast.value_or(0);
    }
    LadderData ladder;
    for (const auto& [quarter, rung] : byQuarter) {
        ladder.rungs.push_back(rung);
        ladder.tallest = std::max({ladder.tallest, rung.available + rung.aside, rung.least});
    }
    return ladder;
}

double rungStep(double span, int across, int word)
{
    constexpr double widest = 16.0; // no stock reaches further
    double step = 1.0;
    while (across > 0 && step < widest && across * step < span * word)
        step *= 2.0;
    return step;
}

} // namespace quarterstep
