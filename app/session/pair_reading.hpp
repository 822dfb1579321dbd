// SPDX-License-Identifier: GPL-3.0-or-later
// What a focimeter reads of the pair in hand, beside what the pair should be.
#pragma once

#include "core/finding.hpp"
#include "core/fitting/fit.hpp"

#include <map>
#include <vector>

namespace quarterstep
{

/// Of each lens that was read: sphere, cylinder and axis as the focimeter shows them.
using PairReading = PerEye<std::optional<SpheroCylinder>>;

/// A lens that is not what it should be, by the usual tolerance set.
struct ReadingOff {
    Eye eye = Eye::right;
    Sentence sentence;
};
[[nodiscard]] std::vector<ReadingOff> offLabel(const Supply& supply, const PairReading& reading);
/// Both lenses were read and agree with the pair.
[[nodiscard]] bool agrees(const Supply& supply, const PairReading& reading);

/// Fields read_right and read_left of an entry.
void putReading(const PairReading& reading, std::map<std::string, std::string>& fields);
[[nodiscard]] PairReading readingIn(const std::map<std::string, std::string>& fields);

} // namespace quarterstep
