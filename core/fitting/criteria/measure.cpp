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

Banded bandOf(double size, const Bands& bands, bool neverFails)
{
    std::optional<double> last;
    for (const auto& [limit, band] :
         {std::pair{bands.fits, Band::fits}, std::pair{bands.caution, Band::caution},
          std::pair{bands.trial, Band::onTrial}}) {
        if (!limit)
            continue;
        if (within(size, *limit))
            return {band, limit->value};
        last = limit->value;
    }
    if (!last)
        return {};
    return {neverFails ? Band::caution : Band::fails, last};
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

CriterionResult& tell(const Case& c, Criterion criterion, std::optional<Eye> eye, double size,
                      const Bands& bands, bool neverFails)
{
    CriterionResult result;
    result.criterion = criterion;
    result.eye = eye;
    result.measured = size;
    if (c.rule(criterion).judged) {
        const auto [band, limit] = bandOf(size, bands, neverFails);
        result.band = band;
        result.limit = limit;
    }
    c.fit.criteria.push_back(std::move(result));
    return c.fit.criteria.back();
}

CriterionResult& tell(const Case& c, Criterion criterion, std::optional<Eye> eye, double size)
{
    const auto& rule = c.rule(criterion);
    return tell(c, criterion, eye, size, bandsAt(rule, c.need.age), rule.neverFails);
}

} // namespace quarterstep
