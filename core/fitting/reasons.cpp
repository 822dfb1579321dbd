// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/reasons.hpp"

#include "core/fitting/criteria/table.hpp"

#include <cmath>
#include <cstdio>

namespace quarterstep
{

std::string twoDecimals(double value)
{
    char text[32];
    const long hundredths = std::lround(value * 100.0);
    std::snprintf(text, sizeof text, "%s%ld.%02ld", hundredths < 0 ? "-" : "", std::labs(hundredths) / 100,
                  std::labs(hundredths) % 100);
    return text;
}

namespace
{

/// Size classes are counted, everything else is measured.
std::string numberFor(Criterion criterion, double value)
{
    return criterion == Criterion::frameSize ? std::to_string(std::lround(value)) : twoDecimals(value);
}

} // namespace

Sentence failingSentence(const CriterionResult& result)
{
    if (!result.note.empty() && result.band == Band::fails)
        return result.note;
    return {infoOf(result.criterion).failing,
            {numberFor(result.criterion, result.measured),
             numberFor(result.criterion, result.limit.value_or(0.0))}};
}

Sentence cautionSentence(const CriterionResult& result)
{
    if (!result.note.empty())
        return result.note;
    return {infoOf(result.criterion).caution, {numberFor(result.criterion, result.measured)}};
}

} // namespace quarterstep
