// SPDX-License-Identifier: GPL-3.0-or-later
// Powers, cylinder, axis and addition of one lens. Prism is in lens_tolerance_prism.cpp, the words for each
// rule in lens_tolerance_words.cpp.
#include "core/optics/lens_tolerance_parts.hpp"

#include "core/optics/angle.hpp"
#include "core/optics/combined_power.hpp"
#include "core/optics/text_reader.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double inclusive = 1e-6;

/// 0.12 and 0.37 are eighths with the last digit dropped, as powers are written: they take in 0.125 and
/// 0.375.
double wholeEighth(double limit)
{
    const long hundredths = std::lround(limit * 100.0) % 100;
    const bool truncated = hundredths == 12 || hundredths == 37 || hundredths == 62 || hundredths == 87;
    return truncated && std::fabs(limit * 100.0 - std::round(limit * 100.0)) < inclusive ? limit + 0.005
                                                                                         : limit;
}

void judgeMeridians(const ToleranceSet& set, Eye eye, const LensValues& ordered, const LensValues& read,
                    std::vector<ToleranceResult>& results)
{
    const auto wanted = principalPowers(ordered.power);
    const auto found = principalPowers(read.power);
    const double cylinder = std::fabs(ordered.power.cylinder.value());
    if (set.meridians == MeridianRule::sphere) {
        const double size = std::fabs(wanted.higher);
        results.push_back(toleranceResult(ToleranceRule::sphereMeridian, eye, found.higher - wanted.higher,
                                          limitFor(set.meridian, size, cylinder, size)));
        return;
    }
    const double size = wanted.largestSize();
    results.push_back(toleranceResult(ToleranceRule::higherMeridian, eye, found.higher - wanted.higher,
                                      limitFor(set.meridian, size, cylinder, std::fabs(wanted.higher))));
    results.push_back(toleranceResult(ToleranceRule::lowerMeridian, eye, found.lower - wanted.lower,
                                      limitFor(set.meridian, size, cylinder, std::fabs(wanted.lower))));
}

void judgeCylinder(const ToleranceSet& set, Eye eye, const LensValues& ordered, const LensValues& read,
                   std::vector<ToleranceResult>& results)
{
    const double wanted = std::fabs(ordered.power.cylinder.value());
    const double found = std::fabs(read.power.cylinder.value());
    const double size = principalPowers(ordered.power).largestSize();
    results.push_back(toleranceResult(ToleranceRule::cylinder, eye, found - wanted,
                                      limitFor(set.cylinder, size, wanted, wanted)));
    if (ordered.power.cylinder == Dioptres{} || read.power.cylinder == Dioptres{})
        return;
    const double turn =
        turnBetween(minusCylinderForm(ordered.power).axis, minusCylinderForm(read.power).axis);
    results.push_back(toleranceResult(ToleranceRule::axis, eye, turn, limitFor(set.axis, size, wanted, 0.0)));
}

/// An addition left out is an addition of zero, when the other side has one.
void judgeAddition(const ToleranceSet& set, Eye eye, const LensValues& ordered, const LensValues& read,
                   std::vector<ToleranceResult>& results)
{
    if (!ordered.addition && !read.addition)
        return;
    const double wanted = ordered.addition.value_or(Dioptres{}).value();
    const double found = read.addition.value_or(Dioptres{}).value();
    results.push_back(toleranceResult(ToleranceRule::addition, eye, found - wanted,
                                      limitFor(set.addition, wanted, 0.0, wanted)));
}

void noteScope(const ToleranceSet& set, const LensValues& ordered, std::vector<Sentence>& notes)
{
    const double power = meanSphere(ordered.power).value();
    if ((set.leastPower && power < *set.leastPower - inclusive) ||
        (set.mostPower && power > *set.mostPower + inclusive))
        notes.push_back({QS_SAY("core", "%1 lies outside the powers the set %2 was made for"),
                         {writeShort(power, 2), set.name}});
}

void append(std::vector<ToleranceResult>& all, std::vector<ToleranceResult> more)
{
    all.insert(all.end(), more.begin(), more.end());
}

} // namespace

std::optional<double> limitFor(const std::vector<ToleranceRow>& rows, double power, double cylinder,
                               double ordered)
{
    const auto row = std::find_if(rows.begin(), rows.end(), [&](const ToleranceRow& candidate) {
        return power <= candidate.powerUpTo + inclusive && cylinder <= candidate.cylinderUpTo + inclusive;
    });
    if (row == rows.end() || !row->limit)
        return std::nullopt;
    return row->percent ? *row->limit / 100.0 * ordered : wholeEighth(*row->limit);
}

bool ToleranceJudgement::passes() const
{
    return std::all_of(results.begin(), results.end(), [](const auto& result) { return result.passes(); });
}

ToleranceJudgement judgeLens(const ToleranceSet& set, Eye eye, const LensValues& ordered,
                             const LensValues& read)
{
    ToleranceJudgement judgement;
    judgeMeridians(set, eye, ordered, read, judgement.results);
    judgeCylinder(set, eye, ordered, read, judgement.results);
    judgeAddition(set, eye, ordered, read, judgement.results);
    append(judgement.results, judgeLensPrism(set, eye, ordered, read));
    noteScope(set, ordered, judgement.notes);
    return judgement;
}

ToleranceJudgement judgePair(const ToleranceSet& set, const PerEye<LensValues>& ordered,
                             const PerEye<LensValues>& read, std::optional<double> centresOff)
{
    ToleranceJudgement judgement;
    for (const Eye eye : bothEyes) {
        auto one = judgeLens(set, eye, ordered.of(eye), read.of(eye));
        append(judgement.results, std::move(one.results));
        judgement.notes.insert(judgement.notes.end(), one.notes.begin(), one.notes.end());
    }
    append(judgement.results, judgePairPrism(set, ordered, read, centresOff));
    std::stable_sort(judgement.results.begin(), judgement.results.end(),
                     [](const auto& a, const auto& b) { return a.rule < b.rule; });
    return judgement;
}

} // namespace quarterstep
