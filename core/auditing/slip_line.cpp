// SPDX-License-Identifier: GPL-3.0-or-later
// What is known of the line a pair came from: whether it is off its label, what counts say of it.
#include "core/auditing/slip_parts.hpp"

#include "core/optics/power_vector.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double offLabelM = 0.5; ///< D: SD of a piece that is off its label (common practice)
constexpr double offLabelJ = 0.2;
constexpr double asideWhenOff = 0.3;  ///< P(line put aside later | it was off), (common practice)
constexpr double asideAnyway = 0.002; ///< P(line put aside later | the piece was right), (common practice)
constexpr double lotOff = 0.5;    ///< P(another piece of the line is off | this one is), (common practice)
constexpr double pieceOff = 0.02; ///< P(another piece is off | this one is right), (common practice)

/// Density of J0 and J45 of a piece that is off: its cylinder is right or not, as likely.
double offCylinder(const PowerVector& off, const SlipModel& model)
{
    const auto both = [&](double spread) { return gauss(off.j0, spread) * gauss(off.j45, spread); };
    return 0.5 * both(model.focimeterJ) + 0.5 * both(offLabelJ);
}

/// Density of M of both lenses of a pair that is off: both by as much, or each by its own, as likely.
double offPair(double right, double left, const SlipModel& model)
{
    const double scatter = model.focimeterM;
    const double alike = gauss((right + left) / 2.0, std::hypot(scatter / std::sqrt(2.0), offLabelM)) *
                         gauss(right - left, scatter * std::sqrt(2.0));
    const double each = std::hypot(scatter, offLabelM);
    return 0.5 * alike + 0.5 * gauss(right, each) * gauss(left, each);
}

} // namespace

double logOffLabel(const JudgedHandOver& judged, const Truth& recorded, PerEye<bool> off,
                   const SlipModel& model)
{
    const auto& supply = judged.facts.supply->power;
    auto onFace = supply;
    double density = 0.0;
    PerEye<std::optional<double>> spheres;
    for (const Eye eye : bothEyes) {
        const auto& reading = judged.facts.later->pair.of(eye);
        if (!reading)
            continue;
        const auto apart = toPowerVector(*reading) - toPowerVector(supply.of(eye));
        if (!off.of(eye)) {
            density += logScatter(apart, model.focimeterM, model.focimeterJ, model.farShare);
            continue;
        }
        density += std::log(offCylinder(apart, model));
        spheres.of(eye) = apart.m;
        onFace.of(eye) = *reading;
    }
    if (spheres.right && spheres.left)
        density += std::log(offPair(*spheres.right, *spheres.left, model));
    else if (spheres.right || spheres.left)
        density += std::log(
            gauss(spheres.right ? *spheres.right : *spheres.left, std::hypot(model.focimeterM, offLabelM)));
    return density + acuitiesOf(judged, recorded, onFace, model).logDensity;
}

double lineOffFactor(const JudgedHandOver& judged, const SlipScene& scene, const std::string& line,
                     const SlipModel& model)
{
    double factor = 1.0;
    if (scene.lines != nullptr)
        factor = scene.lines->putAside(line, judged.facts.atMs) ? asideWhenOff / asideAnyway
                                                                : (1.0 - asideWhenOff) / (1.0 - asideAnyway);
    for (const auto* other : scene.near) {
        const auto& facts = other->facts;
        if (!facts.later || !facts.supply || facts.movements.size() != 1 ||
            facts.movements.front().line != line || !facts.later->pair.right)
            continue;
        const auto off = toPowerVector(*facts.later->pair.right) - toPowerVector(facts.supply->power.right);
        const bool far = squaredDistance(off, model.focimeterM, model.focimeterJ) > 3.0 * worthAsking;
        factor *= far ? lotOff / pieceOff : (1.0 - lotOff) / (1.0 - pieceOff);
    }
    return factor;
}

double countFactor(const SlipScene& scene, const std::string& line, std::int64_t atMs, int expected,
                   const SlipModel& model)
{
    constexpr double seen = 0.85; ///< P(the count shows it), (common practice: other slips, other errors)
    const auto difference =
        scene.lines != nullptr ? scene.lines->nextDifference(line, atMs) : std::optional<int>{};
    if (!difference)
        return 1.0;
    if (*difference == 0)
        return (1.0 - seen) / (1.0 - model.countDiffers);
    return *difference * expected > 0 ? seen / (model.countDiffers / 2.0)
                                      : (1.0 - seen) / 2.0 / (model.countDiffers / 2.0);
}

bool scanWitnessed(const JudgedHandOver& judged, const SlipScene& scene)
{
    if (judged.facts.later && (judged.facts.later->pair.right || judged.facts.later->pair.left))
        return true;
    if (judged.facts.acuity)
        return true;
    const auto counted = [&](const std::string& line) {
        return scene.lines != nullptr && scene.lines->nextDifference(line, judged.facts.atMs);
    };
    return std::any_of(judged.bestLines.begin(), judged.bestLines.end(), counted) ||
           std::any_of(judged.facts.movements.begin(), judged.facts.movements.end(),
                       [&](const Movement& movement) { return counted(movement.line); });
}

} // namespace quarterstep
