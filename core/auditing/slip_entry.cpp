// SPDX-License-Identifier: GPL-3.0-or-later
// Entry slips: which truths could have become this record, and how well each goes with the witnesses.
#include "core/auditing/slip_parts.hpp"

#include "core/optics/notation.hpp"
#include "core/optics/power_vector.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace quarterstep
{

namespace
{

using S = SlipKind;

constexpr double largestPower = 20.0; ///< D: nothing beyond is proposed as a truth
constexpr double smallest = 1e-6;

AxisDegrees axisOf(double degrees)
{
    double turned = std::fmod(degrees, 180.0);
    if (turned <= 0.0)
        turned += 180.0;
    return AxisDegrees{turned};
}

SpheroCylinder with(double sphere, double cylinder, double axis)
{
    return {Dioptres{sphere}, Dioptres{cylinder}, axisOf(axis)};
}

/// Axes that become this one when two neighbouring digits change places or a nought is lost or added.
std::vector<double> axesByDigits(double axis)
{
    const long whole = std::lround(axis);
    std::set<long> found;
    const long hundreds = whole / 100;
    const long tens = whole / 10 % 10;
    const long ones = whole % 10;
    found.insert(tens * 100 + hundreds * 10 + ones);
    found.insert(hundreds * 100 + ones * 10 + tens);
    found.insert(whole * 10);
    if (ones == 0)
        found.insert(whole / 10);
    std::vector<double> axes;
    for (const long each : found)
        if (each >= 1 && each <= 180 && each != whole)
            axes.push_back(static_cast<double>(each));
    return axes;
}

/// What one eye may have been, with the share of the slip's prior that falls to each.
struct Original {
    SlipKind kind;
    SpheroCylinder power;
    double share;
};

void addMany(std::vector<Original>& all, SlipKind kind, const std::vector<SpheroCylinder>& powers)
{
    for (const auto& power : powers)
        all.push_back({kind, power, 1.0 / static_cast<double>(powers.size())});
}

std::vector<Original> originalsOf(const SpheroCylinder& written)
{
    const double s = written.sphere.value();
    const double c = written.cylinder.value();
    const double a = written.axis.value();
    std::vector<Original> all;
    all.push_back({S::sphereSign, with(-s, c, a), 1.0});
    std::vector<SpheroCylinder> shifted;
    for (const double times : {10.0, 0.1})
        if (std::abs(s * times) >= 0.2 && std::abs(s * times) <= largestPower)
            shifted.push_back(with(std::round(s * times * 4.0) / 4.0, c, a));
    addMany(all, S::decimalShift, shifted);
    std::vector<SpheroCylinder> misread;
    for (const double step : {-1.0, -0.5, -0.25, 0.25, 0.5, 1.0}) {
        misread.push_back(with(s + step, c, a));
        if (c != 0.0 && (c + step) * c > 0.0)
            misread.push_back(with(s, c + step, a));
    }
    addMany(all, S::powerMisread, misread);
    if (std::abs(c) < smallest)
        return all;
    all.push_back({S::cylinderSign, with(s, -c, a), 1.0});
    all.push_back({S::halfTranspositionUnturned, with(s + c, -c, a), 1.0});
    all.push_back({S::halfTranspositionTurned, with(s, -c, a + 90.0), 1.0});
    all.push_back({S::axisTurned90, with(s, c, a + 90.0), 1.0});
    all.push_back({S::axisMirrored, with(s, c, 180.0 - a), 1.0});
    all.push_back({S::columnsExchanged, with(c, s, a), 1.0});
    std::vector<SpheroCylinder> turned;
    for (const double axis : axesByDigits(a))
        turned.push_back(with(s, c, axis));
    addMany(all, S::axisDigits, turned);
    return all;
}

bool plausible(const SpheroCylinder& power)
{
    return std::abs(power.sphere.value()) <= largestPower && std::abs(power.cylinder.value()) <= 10.0;
}

class Hypotheses
{
  public:
    Hypotheses(const PersonRecord& record, const SlipModel& model)
        : record_(record), model_(model), recorded_(truthOf(record)), written_(recorded_.finals)
    {
    }

    void add(SlipKind kind, std::optional<Eye> eye, double share, const Finals& truth)
    {
        if (sameFinals(truth, written_) || !plausible(truth.right) || !plausible(truth.left))
            return;
        EntryHypothesis hypothesis;
        hypothesis.member = {kind, eye, model_.priorOf(kind) * share, 1.0, 1.0};
        hypothesis.truths.emplace_back(1.0, recorded_);
        hypothesis.truths.back().second.finals = truth;
        all_.push_back(std::move(hypothesis));
    }

    /// Nothing is known of the truth of an eye but that it lies around something: the density is worked out
    /// here.
    void addUnknown(SlipKind kind, std::optional<Eye> eye, double prior, double logDensity,
                    std::string other = {})
    {
        EntryHypothesis hypothesis;
        hypothesis.member = {kind, eye, prior, logDensity, 1.0};
        hypothesis.other = std::move(other);
        all_.push_back(std::move(hypothesis));
    }

    void oneEyeAtATime()
    {
        for (const Eye eye : bothEyes) {
            if (!record_.eyes.of(eye).seeing())
                continue;
            for (const auto& original : originalsOf(written_.of(eye))) {
                Finals truth = written_;
                truth.of(eye) = original.power;
                add(original.kind, eye, original.share * oneEyeShare, truth);
            }
        }
    }

    void bothTogether()
    {
        add(S::eyesSwapped, {}, 1.0, {written_.left, written_.right});
        for (const auto& right : originalsOf(written_.right))
            for (const auto& left : originalsOf(written_.left))
                if (right.kind == left.kind && right.share == 1.0 && left.share == 1.0)
                    add(right.kind, {}, bothEyesShare, {right.power, left.power});
        const auto add1 = record_.eyes.right.addition.value_or(Dioptres{});
        const auto add2 = record_.eyes.left.addition.value_or(add1);
        if (add1.value() > smallest)
            add(S::additionOnDistance, {}, 1.0,
                {withSphereAdded(written_.right, -add1), withSphereAdded(written_.left, -add2)});
    }

    [[nodiscard]] const Finals& written() const { return written_; }
    [[nodiscard]] std::vector<EntryHypothesis> take() { return std::move(all_); }

  private:
    static constexpr double oneEyeShare = 0.4; ///< each eye alone; the rest is both at once
    static constexpr double bothEyesShare = 0.2;

    const PersonRecord& record_;
    const SlipModel& model_;
    Truth recorded_;
    Finals written_;
    std::vector<EntryHypothesis> all_;
};

/// How often two finals agree by chance: with a cylinder and its axis seldom, with small spheres often
/// (common practice).
double agreesByChance(const SpheroCylinder& power)
{
    return std::abs(power.cylinder.value()) > smallest ? 0.03 : 0.2;
}

/// Spreads around what an unknown truth is near, D (from memory of population spreads; wide on purpose).
constexpr double betweenEyesM = 1.0;
constexpr double betweenEyesJ = 0.4;
constexpr double betweenPeopleM = 2.5;
constexpr double betweenPeopleJ = 0.6;
constexpr double anySlipM = 2.0;
constexpr double anySlipJ = 0.7;

} // namespace

std::vector<EntryHypothesis> entryHypotheses(const JudgedHandOver& judged, const SlipScene& scene,
                                             const SlipModel& model)
{
    const auto& record = *judged.facts.record;
    Hypotheses all(record, model);
    all.oneEyeAtATime();
    all.bothTogether();
    const auto& written = all.written();
    const auto right = toPowerVector(written.right);
    const auto left = toPowerVector(written.left);
    const auto kept = [&](Eye eye) { // the density of an eye that is as recorded
        return logDensityOfEye(judged, eye, toPowerVector(written.of(eye)), model);
    };
    const auto around = [&](Eye eye, const PowerVector& centre, double m, double j) {
        return logDensityAround(judged, eye, centre, m, j, model);
    };
    if (written.right == written.left)
        all.addUnknown(S::rightIntoLeft, Eye::left,
                       model.priorOf(S::rightIntoLeft) / agreesByChance(written.left),
                       kept(Eye::right) + around(Eye::left, right, betweenEyesM, betweenEyesJ));
    if (scene.before != nullptr && scene.before->facts.record) {
        const auto earlier = truthOf(*scene.before->facts.record).finals;
        if (earlier == written)
            all.addUnknown(S::previousPerson, {},
                           model.priorOf(S::previousPerson) /
                               (agreesByChance(written.right) * agreesByChance(written.left)),
                           around(Eye::right, {}, betweenPeopleM, betweenPeopleJ) +
                               around(Eye::left, {}, betweenPeopleM, betweenPeopleJ),
                           scene.before->facts.entry);
    }
    const double half = model.priorOf(S::otherEntry) / 2.0;
    all.addUnknown(S::otherEntry, Eye::right, half,
                   around(Eye::right, right, anySlipM, anySlipJ) + kept(Eye::left));
    all.addUnknown(S::otherEntry, Eye::left, half,
                   kept(Eye::right) + around(Eye::left, left, anySlipM, anySlipJ));
    auto found = all.take();
    addNearHypotheses(judged, scene, model, found);
    return found;
}

} // namespace quarterstep
