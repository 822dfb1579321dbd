// SPDX-License-Identifier: GPL-3.0-or-later
// Lot quality: draw a few hand-overs, read the pairs again at the bench, and decide by how many fail.
#pragma once

#include <cstdint>
#include <vector>

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

/// Places drawn from `lot` without repeating, rising; the same for the same seed on every machine
/// (SplitMix64, Steele, Lea, Flood, OOPSLA 2014:453-472; Floyd's sampling, Commun ACM 1987;30:754-757).
[[nodiscard]] std::vector<std::size_t> drawn(std::size_t lot, std::size_t sample, std::uint64_t seed);

} // namespace quarterstep
