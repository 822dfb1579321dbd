// SPDX-License-Identifier: GPL-3.0-or-later
// Bands: from a measured size to fits, caution, on trial or fails.
#include "core/fitting/criteria/measure.hpp"

namespace quarterstep
{

namespace
{

struct Banded {
    Band band = Band::shown;
    std::optional<double> limit;
};

/// Asked some twenty times for every pair judged, so without a loop over copies.
Banded bandOf(double size, const Bands& bands, bool neverFails)
{
    if (bands.fits && within(size, *bands.fits))
        return {Band::fits, bands.fits->value};
    if (bands.caution && within(size, *bands.caution))
        return {Band::caution, bands.caution->value};
    if (bands.trial && within(size, *bands.trial))
        return {Band::onTrial, bands.trial->value};
    const auto& last = bands.trial ? bands.trial : bands.caution ? bands.caution : bands.fits;
    if (!last)
        return {};
    return {neverFails ? Band::caution : Band::fails, last->value};
}

} // namespace

bool within(double size, const Limit& limit)
{
    return limit.open ? size < limit.value - limitTolerance : size <= limit.value + limitTolerance;
}

const Bands& bandsAt(const CriterionRule& rule, std::optional<double> age)
{
    const bool older = rule.olderFrom && (!age || *age >= *rule.olderFrom);
    return older ? rule.older : rule.bands;
}

Measured& tell(const Case& c, Criterion criterion, std::optional<Eye> eye, double size, const Bands& bands,
               bool neverFails)
{
    auto& result = c.results.add();
    result.criterion = criterion;
    result.eye = eye;
    result.measured = size;
    if (c.rule(criterion).judged) {
        const auto [band, limit] = bandOf(size, bands, neverFails);
        result.band = band;
        result.limit = limit;
    }
    return result;
}

Measured& tell(const Case& c, Criterion criterion, std::optional<Eye> eye, double size)
{
    const auto& rule = c.rule(criterion);
    return tell(c, criterion, eye, size, bandsAt(rule, c.need.age), rule.neverFails);
}

} // namespace quarterstep
