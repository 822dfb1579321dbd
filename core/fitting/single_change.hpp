// SPDX-License-Identifier: GPL-3.0-or-later
// A pair that misses: the one change that alone would bring it within the limits, for the person who orders.
#pragma once

#include "core/fitting/candidates.hpp"

namespace quarterstep
{

/// What is changed. Tried in this order; what costs nothing comes first.
enum class ChangeKind {
    typedAcuity,  ///< the acuity with it is short; better acuity would do
    recordVertex, ///< a measurement that was not taken
    measurePd,
    prescriber,     ///< prism by decentration, if the prescriber allows it
    centres,        ///< other centres in the same pair
    heights,        ///< heights of the centres alike
    sphere,         ///< another power step, the same in both lenses
    oneSphere,      ///< another power step in one lens
    nearAddition,   ///< bifocal: another addition
    separateLenses, ///< a spherical lens of its own for each eye
    prescription    ///< lenses made to the prescription, cylinder included
};

struct SingleChange {
    ChangeKind kind = ChangeKind::prescription;
    Sentence sentence;
    bool onTrial = false; ///< even then acuity with the pair would have to decide
};

/// The first change of the list that makes the pair acceptable, smallest step first; else the first that puts
/// it on trial; empty when no single change does. Every change is judged by the same fit. The pair itself is
/// one that fails.
[[nodiscard]] std::optional<SingleChange> singleChangeFor(const Need& need, const Candidate& miss,
                                                          const Profile& profile);

} // namespace quarterstep
