// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/plot_data.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace quarterstep
{

namespace
{
constexpr double around = 2.0;      ///< D shown on either side of the needs
constexpr double letterShare = 0.1; ///< of the width shown: as far apart as two letters stand clear
constexpr double sameEyes = 0.0625; ///< D: nearer than this the two eyes share a mark

double astigmatism(const PowerVector& vector)
{
    return std::hypot(vector.j0, vector.j45);
}

PlanePoint pointOf(const PowerVector& vector)
{
    return {vector.m, astigmatism(vector)};
}

std::vector<PlaneMark> marksOf(std::span<const StockLine> stock)
{
    std::map<std::tuple<PlaneMarkKind, long, long>, PlaneMark> byPlace;
    const auto add = [&byPlace](const StockLine& line, const SpheroCylinder& power, PlaneMarkKind kind) {
        const auto at = pointOf(toPowerVector(power));
        auto& mark = byPlace[{kind, std::lround(at.mean * 1000.0), std::lround(at.astigmatism * 1000.0)}];
        mark.at = at;
        mark.kind = kind;
        mark.available += std::max(0, line.available());
        ++mark.lines;
    };
    for (const auto& line : stock) {
        if (line.kind != LineKind::readyMade && line.kind != LineKind::lens)
            continue;
        const auto kind = line.kind == LineKind::lens ? PlaneMarkKind::lens : PlaneMarkKind::readyMade;
        add(line, line.power.right, kind);
        if (!line.equalPowers())
            add(line, line.power.left, kind);
    }
    std::vector<PlaneMark> marks;
    marks.reserve(byPlace.size());
    for (const auto& [place, mark] : byPlace)
        marks.push_back(mark);
    return marks;
}

std::vector<PlaneEye> eyesOf(const Need& need)
{
    std::vector<PlaneEye> eyes;
    for (const auto eye : bothEyes)
        if (need.eyes.of(eye).seeing)
            eyes.push_back(
                {pointOf(toPowerVector(need.eyes.of(eye).power)), {}, eye == Eye::right, eye == Eye::left});
    const bool together =
        eyes.size() == 2 && std::hypot(eyes[0].at.mean - eyes[1].at.mean,
                                       eyes[0].at.astigmatism - eyes[1].at.astigmatism) < sameEyes;
    if (together) {
        eyes.pop_back();
        eyes.front().left = true;
    }
    return eyes;
}

/// Below the eye by the astigmatism left, or above it where the pair supplies more than is needed.
PlaneChoice choiceOf(Eye eye, const EyeFit& fit)
{
    const double along = fit.error.j0 * fit.needed.j0 + fit.error.j45 * fit.needed.j45;
    const double left = astigmatism(fit.error);
    return {eye, {fit.supplied.m, astigmatism(fit.needed) + (along > 0 ? left : -left)}, fit.blur};
}

std::optional<double> valueOf(const std::optional<Limit>& limit)
{
    return limit ? std::optional(limit->value) : std::nullopt;
}

/// Letters stand at their eyes, or are pushed apart to `apart` (D) along the line through both.
void placeLetters(std::vector<PlaneEye>& eyes, double apart)
{
    for (auto& eye : eyes)
        eye.letter = eye.at;
    if (eyes.size() != 2)
        return;
    auto& first = eyes[0];
    auto& second = eyes[1];
    const double across = second.at.mean - first.at.mean;
    const double up = second.at.astigmatism - first.at.astigmatism;
    const double distance = std::hypot(across, up);
    if (distance >= apart || distance == 0.0)
        return;
    const double push = (apart - distance) / 2.0 / distance;
    first.letter = {first.at.mean - across * push, first.at.astigmatism - up * push};
    second.letter = {second.at.mean + across * push, second.at.astigmatism + up * push};
}

void addPairs(const Recommendation& recommendation, PlotData& data)
{
    const auto add = [&data](const Candidate& candidate, bool ranked) {
        PlanePair pair{static_cast<int>(data.pairs.size()), ranked, {}};
        for (const auto eye : bothEyes)
            if (const auto& fit = candidate.fit.eyes.of(eye))
                pair.eyes.push_back(choiceOf(eye, *fit));
        data.pairs.push_back(std::move(pair));
    };
    for (const auto& candidate : recommendation.candidates.ranked)
        add(candidate, true);
    for (const auto& candidate : recommendation.candidates.misses)
        add(candidate, false);
}

void zoomTo(PlotData& data)
{
    if (data.eyes.empty())
        return;
    Range mean{data.eyes.front().at.mean, data.eyes.front().at.mean};
    double top = 0.0;
    for (const auto& eye : data.eyes) {
        mean.least = std::min(mean.least, eye.at.mean);
        mean.most = std::max(mean.most, eye.at.mean);
        top = std::max(top, eye.at.astigmatism);
    }
    placeLetters(data.eyes, (mean.most - mean.least + 2.0 * around) * letterShare);
    data.mean = {mean.least - around, mean.most + around};
    data.astigmatism = {data.eyes.size() > 1 ? -1.6 : -1.25, top + 1.0}; // two eyes have two lines of words
}
} // namespace

PlotData planeOf(const Recommendation& recommendation, std::span<const StockLine> stock,
                 const Profile* profile, const Candidate* chosen)
{
    auto data = planeOfStock(stock);
    if (recommendation.need)
        data.eyes = eyesOf(*recommendation.need);
    if (profile) {
        const auto& bands = profile->of(Criterion::blur).bands;
        data.fitsRing = valueOf(bands.fits);
        data.trialRing = valueOf(bands.trial);
    }
    if (chosen)
        for (const auto eye : bothEyes)
            if (const auto& fit = chosen->fit.eyes.of(eye))
                data.choice.push_back(choiceOf(eye, *fit));
    addPairs(recommendation, data);
    zoomTo(data);
    return data;
}

int pairNear(const PlotData& data, const PlanePoint& point, double reach)
{
    int row = -1;
    double nearest = reach;
    for (const auto& pair : data.pairs)
        for (const auto& eye : pair.eyes) {
            const double distance =
                std::hypot(eye.at.mean - point.mean, eye.at.astigmatism - point.astigmatism);
            if (distance < nearest || (row < 0 && distance <= nearest)) {
                nearest = distance;
                row = pair.row;
            }
        }
    return row;
}

PlotData planeOfStock(std::span<const StockLine> stock)
{
    PlotData data;
    data.stock = marksOf(stock);
    return data;
}

} // namespace quarterstep
