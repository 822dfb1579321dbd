// SPDX-License-Identifier: GPL-3.0-or-later
// The box and the hand-over of both ledger benches.
#pragma once

#include "inventory/store/ledger.hpp"

#include <string>
#include <vector>

namespace quarterstep::bench
{

inline constexpr int plenty = 2'000'000'000;
inline const std::vector<std::string> lineNames{"A", "B", "C", "D", "E", "F", "G", "H"};

inline Entry handOver(const std::string& line)
{
    Entry entry;
    entry.person = "P-1";
    entry.actor = "Dispenser";
    entry.fields = {
        {"profile", "adult-near"}, {"profile_version", "1"},     {"rules_hash", "0011223344556677"},
        {"purpose", "near"},       {"final", "R +2.00 L +2.00"}, {"referral", "no"},
        {"verdict", "fits"},       {"checks", "power fit"},      {"cost_thousandths", "125"}};
    entry.movements = {{line, -1, "pair"}};
    return entry;
}

inline std::vector<Balance> fullBox()
{
    std::vector<Balance> counts;
    for (const auto& line : lineNames)
        counts.push_back({line, plenty, 0, 0});
    return counts;
}

} // namespace quarterstep::bench
