// SPDX-License-Identifier: GPL-3.0-or-later
// Plans by which a lot of hand-overs is judged: so many pairs are read again at the bench, so many may fail.
#pragma once

namespace quarterstep
{

/// Accept when at most `allowed` of `sample` fail.
struct SamplingPlan {
    int sample = 19;
    int allowed = 2;
};

struct PlanRisks {
    double provider = 0.0; ///< P(refused | as few fail as is fine)
    double consumer = 0.0; ///< P(accepted | as many fail as must not be)
};
/// Binomial, the lot taken as large. Shares of failures: `fine` < `bad`.
[[nodiscard]] PlanRisks risksOf(const SamplingPlan& plan, double fine, double bad);
/// P(accepted) at a share of failures: one point of the operating curve.
[[nodiscard]] double acceptedAt(const SamplingPlan& plan, double share);
/// The allowed number for this sample at which the larger of the two risks is smallest.
[[nodiscard]] SamplingPlan planFor(int sample, double fine, double bad);

} // namespace quarterstep
