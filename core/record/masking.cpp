// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/masking.hpp"

#include <algorithm>

namespace quarterstep
{

std::vector<MaskedCell> masked(const std::vector<CountCell>& cells)
{
    std::vector<MaskedCell> shown;
    for (const auto& cell : cells) {
        const bool few = cell.count > 0 && cell.count < leastShown;
        shown.push_back({cell.name, few ? std::nullopt : std::optional<int>(cell.count)});
    }
    const auto hidden =
        std::count_if(shown.begin(), shown.end(), [](const MaskedCell& cell) { return !cell.count; });
    if (hidden != 1)
        return shown;
    MaskedCell* smallest = nullptr;
    for (auto& cell : shown)
        if (cell.count && *cell.count > 0 && (smallest == nullptr || *cell.count < *smallest->count))
            smallest = &cell;
    if (smallest != nullptr)
        smallest->count.reset();
    return shown;
}

} // namespace quarterstep
