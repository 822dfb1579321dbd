// SPDX-License-Identifier: GPL-3.0-or-later
// The box as it was at an earlier entry: what a hand-over could have been given from.
#pragma once

#include "app/session/audit.hpp"
#include "core/record/entry.hpp"

#include <string>
#include <unordered_map>
#include <vector>

namespace quarterstep
{

/// The lines of the camp with counts that follow the ledger.
class StockThen
{
  public:
    StockThen(const std::vector<StockLine>& lines, const StockIndex& index, std::string site)
        : lines_(lines), index_(&index), site_(std::move(site))
    {
        for (std::size_t i = 0; i < lines_.size(); ++i) {
            lines_[i].onHand = lines_[i].held = lines_[i].quarantined = 0;
            places_[lines_[i].name] = i;
        }
    }

    void move(const Entry& entry)
    {
        if (entry.site != site_)
            return;
        for (const auto& movement : entry.movements) {
            const auto found = places_.find(movement.line);
            if (found == places_.end())
                continue;
            auto& line = lines_[found->second];
            line.onHand += movement.delta;
            line.held += movement.held;
            line.quarantined += movement.quarantined;
        }
    }

    void takeCounts(const StockThen& other)
    {
        for (std::size_t i = 0; i < lines_.size(); ++i) {
            lines_[i].onHand = other.lines_[i].onHand;
            lines_[i].held = other.lines_[i].held;
            lines_[i].quarantined = other.lines_[i].quarantined;
        }
    }

    /// What is known of the box of a site; of another site nothing.
    [[nodiscard]] BoxThen box(const std::string& site) const
    {
        return site == site_ ? BoxThen{lines_, index_} : BoxThen{};
    }

  private:
    std::vector<StockLine> lines_;
    const StockIndex* index_;
    std::string site_;
    std::unordered_map<std::string, std::size_t> places_;
};

} // namespace quarterstep
