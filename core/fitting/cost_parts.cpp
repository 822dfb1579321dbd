// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/cost_parts.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{
namespace
{

/// One error of an eye as two or three parts.
void addParts(std::vector<CostPart>& parts, Eye eye, const PowerVector& error, double forgiven, bool atNear)
{
    const double taken = error.m < 0.0 ? std::min(forgiven, 0.0 - error.m) : 0.0;
    const double m = error.m + taken;
    const double astigmatism = std::hypot(error.j0, error.j45);
    const double sum = m * m + astigmatism * astigmatism;
    const double loss = sum > 0.0 ? std::log10(1.0 + sum) / sum : 0.0; // per D²
    parts.push_back({eye, atNear ? CostKind::nearSphere : CostKind::sphere, loss * m * m, error.m});
    parts.push_back({eye, atNear ? CostKind::nearAstigmatism : CostKind::astigmatism,
                     loss * astigmatism * astigmatism, astigmatism});
    if (!atNear)
        parts.push_back({eye, CostKind::strain, costOfError({-taken, 0.0, 0.0}, taken), taken});
}

const CostPart* partIn(const std::vector<CostPart>& parts, const CostPart& like)
{
    const auto found = std::find_if(parts.begin(), parts.end(), [&like](const CostPart& part) {
        return part.eye == like.eye && part.kind == like.kind;
    });
    return found == parts.end() ? nullptr : &*found;
}

} // namespace

std::vector<CostPart> costParts(const Need& need, const Fit& fit)
{
    std::vector<CostPart> parts;
    for (const Eye eye : bothEyes) {
        const auto& here = fit.eyes.of(eye);
        if (!here)
            continue;
        addParts(parts, eye, here->error, forgivenMinus(need), false);
        if (here->nearError)
            addParts(parts, eye, *here->nearError, 0.0, true);
    }
    return parts;
}

std::vector<CostStep> costSteps(const Need& need, const Fit* first, const Fit& second)
{
    constexpr double nothing = 1e-9;
    const auto before = first != nullptr ? costParts(need, *first) : std::vector<CostPart>();
    std::vector<CostStep> steps;
    double at = first != nullptr ? first->cost : 0.0;
    for (const auto& part : costParts(need, second)) { // the need decides which parts there are
        const auto* was = partIn(before, part);
        CostStep step{part.eye, part.kind, at, at, was != nullptr ? was->cost : 0.0, part.cost, part.error};
        if (std::abs(step.change()) < nothing)
            continue;
        step.to = at += step.change();
        steps.push_back(step);
    }
    return steps;
}

} // namespace quarterstep
