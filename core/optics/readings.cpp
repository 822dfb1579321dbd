// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/optics/readings.hpp"

#include "core/optics/text_reader.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace quarterstep
{
namespace
{

constexpr double share = 0.95;
constexpr double normal95 = 1.96;
constexpr double epsilon = 1e-6; ///< dioptres: quarter steps lie exactly on limits

constexpr std::array methods{
    Repeatability{
        "subjective", 0.20, 0.10,
        "Rosenfield M, Chiu NN, Optom Vis Sci 1995;72:577-579 (0.14); Photonics 2024;11:634 (95 % within "
        "0.70); derived"},
    Repeatability{
        "autorefractor", 0.27, 0.14,
        "Sheedy J, Schanz P, Bullimore M, Optom Vis Sci 2004;81:334-340 (-0.51 to +0.45); Padhy et al., "
        "Transl Vis Sci Technol 2021;10(1):2 (0.75, 0.40); derived"}};

double medianOf(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    const std::size_t middle = values.size() / 2;
    return values.size() % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2.0;
}

PowerVector medianVector(const std::vector<PowerVector>& vectors)
{
    if (vectors.empty())
        return {};
    const auto of = [&vectors](double PowerVector::*component) {
        std::vector<double> values;
        values.reserve(vectors.size());
        for (const auto& vector : vectors)
            values.push_back(vector.*component);
        return medianOf(std::move(values));
    };
    return {of(&PowerVector::m), of(&PowerVector::j0), of(&PowerVector::j45)};
}

Sentence steadyStatement(const ReadingsSummary& s)
{
    const std::string figure = writeShort(s.figure, 2);
    const std::string limit = writeShort(s.limit, 2);
    switch (s.steadiness) {
    case Steadiness::tooFew:
        return {QS_SAY("core", "too few (%1 read): three or more tell how steady they are"),
                {std::to_string(s.count)}};
    case Steadiness::scattered:
        return {QS_SAY("core",
                       "scattered: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out"),
                {figure, limit, std::to_string(s.outliers.size()), std::to_string(s.count)}};
    case Steadiness::steady:
        break;
    }
    return {QS_SAY("core", "steady: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out"),
            {figure, limit, std::to_string(s.outliers.size()), std::to_string(s.count)}};
}

Sentence adviceFor(const ReadingsSummary& s, bool repeated)
{
    switch (s.steadiness) {
    case Steadiness::tooFew:
        return {QS_SAY("core",
                       "take readings until there are three or more; until then a published scatter is used"),
                {}};
    case Steadiness::scattered:
        if (repeated)
            return {QS_SAY("core",
                           "scattered again: look at the eye's health (cornea, lens, tears, fixation) before "
                           "prescribing"),
                    {}};
        return {QS_SAY("core", "repeat the readings, with blinks and steady fixation"), {}};
    case Steadiness::steady:
        break;
    }
    if (!s.outliers.empty())
        return {QS_SAY("core", "use the mean of the readings kept; the ones left out are shown"), {}};
    return {QS_SAY("core", "use the mean as the start of the subjective refraction"), {}};
}

/// Indexes far from the median; none where fewer than three would remain.
std::vector<std::size_t> outliersOf(const std::vector<PowerVector>& readings, const PowerVector& median,
                                    bool& tooMany)
{
    std::vector<std::size_t> far;
    for (std::size_t i = 0; i < readings.size(); ++i)
        if (blurStrength(readings[i] - median) > outlierDistance + epsilon)
            far.push_back(i);
    tooMany = !far.empty() && readings.size() - far.size() < fewestReadings;
    return tooMany ? std::vector<std::size_t>{} : far;
}

std::vector<PowerVector> without(const std::vector<PowerVector>& readings,
                                 const std::vector<std::size_t>& left)
{
    std::vector<PowerVector> kept;
    for (std::size_t i = 0; i < readings.size(); ++i)
        if (std::find(left.begin(), left.end(), i) == left.end())
            kept.push_back(readings[i]);
    return kept;
}

void measureScatter(ReadingsSummary& s, bool tooMany)
{
    s.distribution = ellipsoidOfDistribution(s.mean, *s.covariance, share);
    s.ofMean = ellipsoidOfMean(s.mean, *s.covariance, static_cast<int>(s.used), share);
    s.figure = std::sqrt(s.covariance->total());
    s.steadiness = tooMany || s.figure > s.limit + epsilon ? Steadiness::scattered : Steadiness::steady;
}

} // namespace

double Repeatability::distance() const
{
    return std::sqrt(m * m + 2.0 * j * j);
}

const Repeatability& publishedRepeatability(Method method)
{
    return method == Method::subjective ? methods[0] : methods[1];
}

ReadingsSummary summariseReadings(const std::vector<PowerVector>& readings, Method method, bool repeated)
{
    const auto& published = publishedRepeatability(method);
    ReadingsSummary s;
    s.count = readings.size();
    s.median = medianVector(readings);
    s.limit = published.distance();
    bool tooMany = false;
    s.outliers =
        s.count >= fewestReadings ? outliersOf(readings, s.median, tooMany) : std::vector<std::size_t>{};
    const auto kept = without(readings, s.outliers);
    s.used = kept.size();
    s.mean = meanVector(kept);
    s.covariance = covarianceOf(kept);
    s.published = s.used < fewestReadings;
    s.assumed = s.published ? published.covariance() : *s.covariance;
    if (!s.published)
        measureScatter(s, tooMany);
    s.statement = steadyStatement(s);
    s.advice = adviceFor(s, repeated);
    return s;
}

PowerVector uncertaintyOfMean(const ReadingsSummary& summary)
{
    const double count = summary.used == 0 ? 1.0 : static_cast<double>(summary.used);
    return {std::sqrt(summary.assumed.mm / count), std::sqrt(summary.assumed.j00 / count),
            std::sqrt(summary.assumed.j4545 / count)};
}

Agreement agreementWithFinal(const ReadingsSummary& objective, const PowerVector& final)
{
    constexpr double noteMean = 0.50;
    constexpr double apartMean = 1.00;
    constexpr double apartOblique = 0.50;
    Agreement result;
    result.difference = final - objective.mean;
    result.obliqueSize = std::hypot(result.difference.j0, result.difference.j45);
    const auto spread = uncertaintyOfMean(objective);
    const auto& subjective = publishedRepeatability(Method::subjective);
    result.expected = {normal95 * std::hypot(subjective.m, spread.m),
                       normal95 * std::hypot(subjective.j, spread.j0),
                       normal95 * std::hypot(subjective.j, spread.j45)};
    result.source = "Pesudovs K, Weisinger HS 2004; Optom Vis Sci 2019, doi 10.1097/OPX.0000000000001427";
    const double mean = std::fabs(result.difference.m);
    const std::string meanText = writeShort(mean, 2);
    const std::string obliqueText = writeShort(result.obliqueSize, 2);
    if (mean > apartMean + epsilon || result.obliqueSize > apartOblique + epsilon) {
        result.verdict = Agreement::Verdict::apart;
        result.statement = {QS_SAY("core",
                                   "objective and final are %1 D apart in mean sphere (limit 1) and %2 D in "
                                   "astigmatism (limit 0.5): confirm the final"),
                            {meanText, obliqueText}};
    } else if (mean > noteMean + epsilon) {
        result.verdict = Agreement::Verdict::note;
        result.statement = {
            QS_SAY("core", "objective and final are %1 D apart in mean sphere; up to 0.5 is usual"),
            {meanText}};
    } else {
        result.statement = {
            QS_SAY("core", "objective and final agree: %1 D apart in mean sphere, %2 D in astigmatism"),
            {meanText, obliqueText}};
    }
    return result;
}

double reproducibilityLimit(double deviation)
{
    return normal95 * std::numbers::sqrt2 * deviation;
}

} // namespace quarterstep
