// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/auditing/line_history.hpp"

#include "core/record/day.hpp"
#include "core/record/judgement.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

constexpr std::int64_t lately = 30 * dayMs; ///< ms: how far back a return is remembered

} // namespace

bool badLabel(const std::string& cause)
{
    return cause == "off-label" || cause == "mislabelled" || cause == "recalled";
}

void LineHistory::take(const Entry& entry)
{
    for (const auto& movement : entry.movements) {
        if (entry.kind == EntryKind::counted)
            counts_[movement.line].emplace(entry.atMs, movement.delta);
        if ((entry.kind == EntryKind::returned || entry.kind == EntryKind::exchanged) && movement.delta > 0)
            returns_[movement.line].emplace(entry.atMs, movement.delta);
        if ((entry.kind == EntryKind::quarantined || entry.kind == EntryKind::writtenOff) &&
            badLabel(fieldNamed(entry, "cause"))) {
            auto& last = lastAside_[movement.line];
            last = std::max(last, entry.atMs);
        }
    }
}

std::optional<int> LineHistory::nextDifference(const std::string& line, std::int64_t atMs) const
{
    const auto times = counts_.find(line);
    if (times == counts_.end())
        return std::nullopt;
    const auto next = times->second.upper_bound(atMs);
    return next == times->second.end() ? std::nullopt : std::optional(next->second);
}

bool LineHistory::cameBack(const std::string& line, std::int64_t atMs) const
{
    const auto times = returns_.find(line);
    if (times == returns_.end())
        return false;
    const auto first = times->second.lower_bound(atMs - lately);
    return first != times->second.end() && first->first <= atMs;
}

bool LineHistory::putAside(const std::string& line, std::int64_t atMs) const
{
    const auto last = lastAside_.find(line);
    return last != lastAside_.end() && last->second >= atMs;
}

} // namespace quarterstep
