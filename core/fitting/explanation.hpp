// SPDX-License-Identifier: GPL-3.0-or-later
// One pair for one need in full: optical crosses, every criterion with its source, chance, range of clear
// sight, the change that would help, and why it stands where it stands.
#pragma once

#include "core/fitting/comparison.hpp"
#include "core/fitting/recommendation.hpp"
#include "core/optics/combined_power.hpp"

namespace quarterstep
{

/// A power as an optical cross, with the written form beside it.
struct OpticalCross {
    SpheroCylinder power; ///< minus-cylinder form, unrounded
    PrincipalPowers principal;
};
[[nodiscard]] OpticalCross crossOf(const PowerVector& vector);

struct EyeCrosses {
    OpticalCross need;
    OpticalCross pair;
    OpticalCross error;
};

struct Explanation {
    Candidate candidate; ///< judged, sources named, chance filled
    PerEye<std::optional<EyeCrosses>> crosses;
    std::optional<Range> clear;         ///< near work, mm
    std::optional<SingleChange> change; ///< where the pair fails
    double readingLevelExcess = 0.0;    ///< beyond what the full correction would give, >= 0
};

/// Judges the parts as matching judges them. Empty where they do not make a pair. `parts` index the stock.
[[nodiscard]] std::optional<Explanation> explainPair(const Need& need, std::span<const Part> parts,
                                                     std::span<const StockLine> stock, const Profile& profile,
                                                     const Settings& settings, const TrialAcuity* trial);

} // namespace quarterstep
