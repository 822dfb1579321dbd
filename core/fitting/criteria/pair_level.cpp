// SPDX-License-Identifier: GPL-3.0-or-later
// Criteria of the two eyes together: differences, prism, centres, frame.
#include "core/fitting/criteria/measure.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace quarterstep
{

namespace
{

const std::optional<EyeFit>& right(const Case& c)
{
    return c.fit.eyes.right;
}

const std::optional<EyeFit>& left(const Case& c)
{
    return c.fit.eyes.left;
}

bool bothJudged(const Case& c)
{
    return right(c) && left(c);
}

int sizeStep(std::string_view sizeClass)
{
    if (sizeClass == "small")
        return 1;
    if (sizeClass == "medium")
        return 2;
    return sizeClass == "large" ? 3 : 0;
}

/// One seeing eye: nothing between the eyes is judged, but what was prescribed is still to be made.
void tellPrismOfOneEye(const Case& c)
{
    if (c.profile.prismByDecentration || !c.supply.centres || !c.rule(Criterion::horizontalPrism).judged ||
        !prescribedPrism(c.need))
        return;
    const auto& prism = (right(c) ? c.need.eyes.right : c.need.eyes.left).prism;
    auto& result = tell(c, Criterion::horizontalPrism, {}, std::hypot(prism.in, prism.up), Bands{});
    result.band = Band::fails;
    result.note = QS_SAY("core", "prism by decentration is the prescriber's decision");
}

void failForPrescribedPrism(const Case& c, Measured& result)
{
    if (c.profile.prismByDecentration || result.band == Band::shown || !prescribedPrism(c.need))
        return;
    result.band = Band::fails;
    result.missing = Missing::nothing;
    result.note = QS_SAY("core", "prism by decentration is the prescriber's decision");
}

} // namespace

bool prescribedPrism(const Need& need)
{
    for (const Eye eye : bothEyes) {
        const auto& prism = need.eyes.of(eye).prism;
        if (std::max(std::abs(prism.in), std::abs(prism.up)) >= 0.25 - limitTolerance)
            return true;
    }
    return false;
}

void measureNeedDifference(const Case& c)
{
    if (bothJudged(c) && c.supply.equalPair)
        tell(c, Criterion::needDifference, {}, std::abs(right(c)->needed.m - left(c)->needed.m));
}

void measureSuppliedDifference(const Case& c)
{
    if (bothJudged(c) && !c.supply.equalPair)
        tell(c, Criterion::suppliedDifference, {}, std::abs(right(c)->supplied.m - left(c)->supplied.m));
}

void measureBalance(const Case& c)
{
    if (!bothJudged(c))
        return;
    const auto& rule = c.rule(Criterion::balance);
    const bool youngHyperope = rule.hyperopicChildUnder && c.need.age &&
                               *c.need.age < *rule.hyperopicChildUnder &&
                               std::max(right(c)->needed.m, left(c)->needed.m) > limitTolerance;
    const auto& bands = bandsAt(rule, c.need.age);
    tell(c, Criterion::balance, {}, std::abs(right(c)->error.m - left(c)->error.m),
         youngHyperope ? Bands{bands.fits, {}, {}} : bands);
}

void measureHorizontalPrism(const Case& c)
{
    if (!bothJudged(c))
        return tellPrismOfOneEye(c);
    if (!c.supply.centres) {
        auto& none = tell(c, Criterion::horizontalPrism, {}, std::abs(c.fit.prism.horizontal), Bands{});
        failForPrescribedPrism(c, none);
        return;
    }
    double worst = std::abs(c.fit.prism.horizontal);
    double best = worst;
    if (const auto& range = c.fit.horizontalPrismRange) {
        worst = std::max(std::abs(range->least), std::abs(range->most));
        best = range->least <= 0.0 && range->most >= 0.0
                   ? 0.0
                   : std::min(std::abs(range->least), std::abs(range->most));
    }
    auto& result = tell(c, Criterion::horizontalPrism, {}, worst);
    if (c.fit.horizontalPrismRange)
        result.worstOf = best;
    const auto& rule = c.rule(Criterion::horizontalPrism);
    const auto& bands = bandsAt(rule, c.need.age);
    if (result.band == Band::fails && !c.need.pdKnown) {
        const auto& loosest = bands.caution ? bands.caution : bands.fits;
        if (loosest && within(best, *loosest))
            result.missing = Missing::pd;
    }
    const double strongest = std::max(std::abs(right(c)->supplied.m), std::abs(left(c)->supplied.m));
    if (result.band == Band::fits && !c.need.pdKnown && worst > limitTolerance) {
        result.band = Band::caution;
        result.note = QS_SAY("core", "PD not taken: judged at the worst end of what is plausible");
    } else if (result.band == Band::fits && c.supply.centresAssumed && strongest >= 1.5 - limitTolerance) {
        result.band = Band::caution;
        result.note = QS_SAY("core", "the centres of this pair are assumed, not measured");
    }
    failForPrescribedPrism(c, result);
}

void measureVerticalPrism(const Case& c)
{
    if (!bothJudged(c) || !c.supply.centres)
        return;
    auto& result = tell(c, Criterion::verticalPrism, {}, std::abs(c.fit.prism.vertical));
    if (!c.supply.heightsDiffer && (result.band == Band::fits || result.band == Band::caution)) {
        result.band = Band::notMeasured;
        result.note = QS_SAY("core", "heights of the centres not measured");
    }
}

void measureCentres(const Case& c)
{
    if (!bothJudged(c) || !c.supply.centres)
        return;
    const auto& centres = *c.supply.centres;
    const double worst =
        std::max(std::abs(centres.least - c.need.pd.most), std::abs(centres.most - c.need.pd.least));
    const bool overlap = centres.least <= c.need.pd.most && centres.most >= c.need.pd.least;
    const double best = overlap ? 0.0
                                : std::min(std::abs(centres.least - c.need.pd.most),
                                           std::abs(centres.most - c.need.pd.least));
    auto& result = tell(c, Criterion::centres, {}, worst);
    const auto& rule = c.rule(Criterion::centres);
    if (result.band == Band::caution && rule.needsPrismUnder &&
        std::abs(c.fit.prism.horizontal) > *rule.needsPrismUnder + limitTolerance)
        result.band = Band::fails;
    const auto& bands = bandsAt(rule, c.need.age);
    const auto& loosest = bands.caution ? bands.caution : bands.fits;
    if (result.band == Band::fails && !c.need.pdKnown && loosest && within(best, *loosest))
        result.missing = Missing::pd;
}

void measureReadingLevel(const Case& c)
{
    if (!bothJudged(c) || c.need.nearWork())
        return;
    const auto& rule = c.rule(Criterion::readingLevel);
    const bool neverFails = rule.neverFails && c.need.purpose != Purpose::bifocal;
    tell(c, Criterion::readingLevel, {}, std::abs(c.fit.readingLevelPair), bandsAt(rule, c.need.age),
         neverFails);
}

void measureFrameSize(const Case& c)
{
    const int wanted = sizeStep(c.need.frameSize);
    const int given = sizeStep(c.supply.frameSize);
    if (wanted != 0 && given != 0)
        tell(c, Criterion::frameSize, {}, std::abs(wanted - given));
}

} // namespace quarterstep
