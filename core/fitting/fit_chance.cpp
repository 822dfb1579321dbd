// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/fit_chance.hpp"

#include "core/fitting/criteria/measure.hpp"
#include "core/optics/chance_within.hpp"
#include "core/optics/readings.hpp"

#include <algorithm>
#include <numbers>

namespace quarterstep
{

namespace
{

/// The end of what is acceptable without acuity tried.
std::optional<double> blurLimit(const Profile& profile, Criterion criterion, std::optional<double> age)
{
    const auto& rule = profile.of(criterion);
    if (!rule.judged)
        return {};
    const auto& bands = bandsAt(rule, age);
    const auto& last = bands.caution ? bands.caution : bands.fits;
    return last ? std::optional(last->value) : std::nullopt;
}

Covariance scaled(const Covariance& c, double by)
{
    return {c.mm * by, c.m0 * by, c.m45 * by, c.j00 * by, c.j045 * by, c.j4545 * by};
}

Covariance sum(const Covariance& a, const Covariance& b)
{
    return {a.mm + b.mm, a.m0 + b.m0, a.m45 + b.m45, a.j00 + b.j00, a.j045 + b.j045, a.j4545 + b.j4545};
}

} // namespace

NeedScatter scatterOf(const EyeRecord& eye, bool objectiveOnly)
{
    if (eye.repeated && eye.repeated->count >= fewestReadings)
        return {objectiveOnly ? scaled(eye.repeated->ofOne, 1.0 / static_cast<double>(eye.repeated->count))
                              : eye.repeated->ofOne,
                "repeated readings of this eye"};
    const auto& published =
        publishedRepeatability(objectiveOnly ? Method::autorefractor : Method::subjective);
    return {published.covariance(), published.source};
}

Covariance axisScatter(const PowerVector& supplied, double degrees)
{
    // Turning the axis by a turns (J0, J45) by 2a: a step of 2a at right angles to it.
    const double turn = 2.0 * degrees * std::numbers::pi / 180.0;
    const double j0 = 0.0 - turn * supplied.j45;
    const double j45 = turn * supplied.j0;
    return {0.0, 0.0, 0.0, j0 * j0, j0 * j45, j45 * j45};
}

PerEye<std::optional<double>> chancesOf(const Need& need, const Candidate& candidate, const Profile& profile)
{
    PerEye<std::optional<double>> chances;
    const auto limit = blurLimit(profile, Criterion::blur, need.age);
    const auto nearLimit = blurLimit(profile, Criterion::nearBlur, need.age);
    if (!limit)
        return chances;
    for (const Eye eye : bothEyes) {
        const auto& fit = candidate.fit.eyes.of(eye);
        if (!fit)
            continue;
        auto scatter = need.eyes.of(eye).scatter;
        if (candidate.mountedAxis.of(eye) > 0.0)
            scatter = sum(scatter, axisScatter(fit->supplied));
        auto& chance = chances.of(eye);
        chance = chanceWithin(fit->error, scatter, *limit);
        if (fit->nearError && nearLimit)
            chance = std::min(*chance, chanceWithin(*fit->nearError, scatter, *nearLimit));
    }
    return chances;
}

std::optional<double> leastChance(const PerEye<std::optional<double>>& chances)
{
    if (chances.right && chances.left)
        return std::min(*chances.right, *chances.left);
    return chances.right ? chances.right : chances.left;
}

} // namespace quarterstep
