// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/judgement.hpp"

#include <cmath>

namespace quarterstep
{

namespace
{

std::string thousandths(double value)
{
    return std::to_string(std::lround(value * 1000.0));
}

} // namespace

const char* verdictWord(const Fit& fit)
{
    switch (fit.band) {
    case Band::fits:
        return "fits";
    case Band::caution:
        return "caution";
    case Band::onTrial:
        return "on-trial";
    default:
        return "outside";
    }
}

void putJudgement(Entry& entry, const Fit& fit)
{
    entry.fields["verdict"] = verdictWord(fit);
    entry.fields["cost_thousandths"] = thousandths(fit.cost);
    entry.fields["prism_h_thousandths"] = thousandths(fit.prism.horizontal);
}

std::string fieldNamed(const Entry& entry, const char* name)
{
    const auto found = entry.fields.find(name);
    return found == entry.fields.end() ? std::string() : found->second;
}

} // namespace quarterstep
