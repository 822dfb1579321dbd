// SPDX-License-Identifier: GPL-3.0-or-later
// What counts, returns and quarantine say of a line around a moment: witnesses of a pair that was another one
// than the record says. Holds these entries only, never hand-overs.
#pragma once

#include "core/record/entry.hpp"

#include <map>
#include <optional>
#include <string>

namespace quarterstep
{

class LineHistory
{
  public:
    /// Entries in any order; of kinds that say nothing here nothing is kept.
    void take(const Entry& entry);

    /// Counted less the book at the first count of the line after a moment; 0 = agreed, empty = not counted
    /// since.
    [[nodiscard]] std::optional<int> nextDifference(const std::string& line, std::int64_t atMs) const;
    /// Whether a piece of the line came back in the 30 days before.
    [[nodiscard]] bool cameBack(const std::string& line, std::int64_t atMs) const;
    /// Whether the line was put aside later as off its label, mislabelled or recalled.
    [[nodiscard]] bool putAside(const std::string& line, std::int64_t atMs) const;

  private:
    using Times = std::multimap<std::int64_t, int>;
    std::map<std::string, Times, std::less<>> counts_;
    std::map<std::string, Times, std::less<>> returns_;
    std::map<std::string, std::int64_t, std::less<>> lastAside_;
};

/// Whether a cause of quarantine or loss speaks against the whole line.
[[nodiscard]] bool badLabel(const std::string& cause);

} // namespace quarterstep
