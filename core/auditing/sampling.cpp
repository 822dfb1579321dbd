// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/auditing/sampling.hpp"

#include "core/auditing/rates.hpp"

#include <algorithm>

namespace quarterstep
{

double acceptedAt(const SamplingPlan& plan, double share)
{
    return binomialUpTo(plan.allowed, plan.sample, share);
}

PlanRisks risksOf(const SamplingPlan& plan, double fine, double bad)
{
    return {1.0 - acceptedAt(plan, fine), acceptedAt(plan, bad)};
}

SamplingPlan planFor(int sample, double fine, double bad)
{
    SamplingPlan best{sample, 0};
    double least = 2.0;
    for (int allowed = 0; allowed < sample; ++allowed) {
        const auto risks = risksOf({sample, allowed}, fine, bad);
        const double larger = std::max(risks.provider, risks.consumer);
        if (larger < least) {
            least = larger;
            best.allowed = allowed;
        }
    }
    return best;
}

} // namespace quarterstep
