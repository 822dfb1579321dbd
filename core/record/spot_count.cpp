// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/spot_count.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace quarterstep
{

std::vector<ReachedBin> binsToCount(std::span<const Entry> entries, const std::string& site,
                                    std::span<const StockLine> stock, int least)
{
    std::map<std::string, int> reached;
    for (const auto& entry : entries) {
        if (entry.site != site)
            continue;
        const bool counts = entry.kind == EntryKind::counted || entry.kind == EntryKind::opened;
        std::set<std::string> lines; // both lenses of a pair come out of a bin at once
        for (const auto& movement : entry.movements)
            lines.insert(movement.line);
        for (const auto& line : lines)
            reached[line] = counts ? 0 : reached[line] + 1;
    }
    std::map<std::string, std::size_t> placeOf;
    std::vector<ReachedBin> bins;
    for (const auto& line : stock) {
        if (line.bin.empty())
            continue;
        const auto [place, fresh] = placeOf.emplace(line.bin, bins.size());
        if (fresh)
            bins.push_back({line.bin, {}, 0});
        auto& bin = bins[place->second];
        bin.lines.push_back(line.name);
        if (const auto found = reached.find(line.name); found != reached.end())
            bin.times += found->second;
    }
    std::erase_if(bins, [least](const ReachedBin& bin) { return bin.times < least; });
    std::stable_sort(bins.begin(), bins.end(),
                     [](const ReachedBin& a, const ReachedBin& b) { return a.times > b.times; });
    return bins;
}

} // namespace quarterstep
