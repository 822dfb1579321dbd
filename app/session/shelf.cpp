// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/shelf.hpp"

#include <algorithm>

namespace quarterstep
{

Shelf::Shelf(std::span<const StockLine> stock, const Resources& resources) : resources_(resources)
{
    ofLine_.reserve(stock.size());
    for (const auto& line : stock)
        ofLine_.push_back(std::max(0, line.available()));
    ofResource_.assign(resources.all().size(), 0);
    for (std::size_t line = 0; line < ofLine_.size(); ++line)
        ofResource_[resources.of(line)] += ofLine_[line];
}

std::size_t Shelf::takeOne(std::uint32_t resource)
{
    const auto& lines = resources_.all()[resource].lines;
    const auto line = *std::find_if(lines.begin(), lines.end(), [&](auto one) { return ofLine_[one] > 0; });
    take(line);
    return line;
}

bool Shelf::take(std::size_t line)
{
    if (ofLine_[line] <= 0)
        return false;
    --ofLine_[line];
    --ofResource_[resources_.of(line)];
    return true;
}

PartSide sideOf(std::size_t place, std::size_t parts)
{
    if (parts == 1)
        return PartSide::pair;
    if (place == 0)
        return PartSide::frame;
    return place == 1 ? PartSide::right : PartSide::left;
}

} // namespace quarterstep
