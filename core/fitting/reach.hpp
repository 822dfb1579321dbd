// SPDX-License-Identifier: GPL-3.0-or-later
// What a search may rule out without judging: outer bounds of what can pass, and inner bounds of what cannot
// fail for the two eyes together, read from the limits of the profile. Bounds only propose and carry slack;
// judge decides.
#pragma once

#include "core/fitting/fit.hpp"

#include <limits>

namespace quarterstep
{
/// No bound: everything is within reach.
inline constexpr double noLimit = std::numeric_limits<double>::infinity();

/// Errors (supplied - needed) outside of this fail in their own eye, whatever the fellow eye gets.
struct EyeReach {
    double tooMinus = noLimit; ///< -M at most
    double tooPlus = noLimit;  ///< M at most
    double oblique = noLimit;  ///< |(J0, J45)| at most
    double blur = noLimit;     ///< b at most
};
/// The outer bounds of one eye under the limits of this profile.
[[nodiscard]] EyeReach eyeReach(const Need& need, Eye eye, const Profile& profile);

/// What two lenses in one frame do together. An error beyond a `can` limit fails; with every value within the
/// `must` limits, and each lens good in its own eye, nothing fails.
struct PairReach {
    bool hopeless = false; ///< nothing in this frame can pass
    bool unsure = false;   ///< a criterion without bounds here: only judge can tell that a pair does not fail
    double canBalance = noLimit, mustBalance = noLimit; ///< difference of the errors M
    double canDiffer = noLimit, mustDiffer = noLimit;   ///< difference of the supplied M
    double canTurnIn = noLimit, mustTurnIn = noLimit;   ///< horizontal prism
    double canTurnUp = noLimit, mustTurnUp = noLimit;   ///< vertical prism
};

/// `frame`: a supply with the centres, heights and size of the frame; its powers do not count.
[[nodiscard]] PairReach pairReach(const Need& need, const Supply& frame, const Profile& profile);

} // namespace quarterstep
