// SPDX-License-Identifier: GPL-3.0-or-later
// Where the cost of a pair comes from: the part of each eye's mean sphere, astigmatism and strain, and the
// steps that lead from the cost of one pair to that of another. It explains Fit::cost and judges nothing.
//
// The loss of an eye, log10(1 + M² + J0² + J45²), is one logarithm; it is shared out in proportion to M² and
// J0² + J45², which are what adds up under it. So the parts sum to the cost, whatever their number.
#pragma once

#include "core/fitting/fit.hpp"

#include <vector>

namespace quarterstep
{

enum class CostKind {
    sphere,      ///< M after what accommodation takes up; of the near power for near pairs
    astigmatism, ///< J0 and J45
    strain,      ///< of too much minus that accommodation takes up
    nearSphere,  ///< bifocal alone: the same two at near
    nearAstigmatism
};

struct CostPart {
    Eye eye{};
    CostKind kind{};
    double cost = 0.0;  ///< logMAR, >= 0
    double error = 0.0; ///< D: M with its sign, length of (J0, J45), or what is accommodated
};

/// Parts of every eye judged, in the order of eyes and kinds, those at near only where the fit has them.
/// Their sum is Fit::cost to 1e-12 logMAR.
[[nodiscard]] std::vector<CostPart> costParts(const Need& need, const Fit& fit);

/// What one part does on the way from one pair to another.
struct CostStep {
    Eye eye{};
    CostKind kind{};
    double from = 0.0; ///< logMAR, where the step begins and ends
    double to = 0.0;
    double before = 0.0; ///< the part itself in the first pair and in the second
    double after = 0.0;
    double error = 0.0; ///< of the second pair, as CostPart::error
    [[nodiscard]] double change() const { return after - before; }
};

/// From the cost of `first` (or from nothing, when null) to that of `second`; both judged against this need.
/// Parts that are the same in both, to 1e-9 logMAR, are left out.
[[nodiscard]] std::vector<CostStep> costSteps(const Need& need, const Fit* first, const Fit& second);

} // namespace quarterstep
