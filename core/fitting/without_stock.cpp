// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/without_stock.hpp"

#include "core/fitting/criteria/measure.hpp"
#include "core/fitting/details.hpp"
#include "core/fitting/eye_facts.hpp"
#include "core/fitting/flags.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

std::string partNames(const Candidate& candidate, std::span<const StockLine> stock)
{
    std::string names;
    for (const auto& part : candidate.parts)
        names += (names.empty() ? "" : " + ") + stock[part.line].name;
    return names;
}

void findInterim(const PersonRecord& person, const Profile& profile, std::span<const StockLine> stock,
                 const FittingRules& rules, const StockIndex* index, Recommendation& answer)
{
    if (person.child() || !person.age || answer.purpose == Purpose::bifocal)
        return;
    CandidateOptions wide;
    wide.most = 200;
    wide.alike = false;
    wide.index = index;
    const auto lists = findCandidates(*answer.need, stock, profile, rules.settings, wide);
    const double weakest = *person.age < 40.0 ? -1.0 : -0.5;
    const auto unaided = betterEye(person, [](const EyeAcuities& a) { return a.unaided; });
    const auto best = betterEye(person, [](const EyeAcuities& a) { return a.best; });
    if (!unaided || !best)
        return;
    for (const auto& miss : lists.misses) {
        double loss = 1e9;
        bool good = miss.supply.centres.has_value() && answer.need->pdKnown;
        for (const Eye eye : bothEyes)
            if (const auto& fit = miss.fit.eyes.of(eye)) {
                good = good && fit->error.m >= weakest - limitTolerance &&
                       fit->error.m <= 0.75 + limitTolerance && fit->blur <= 1.0 + limitTolerance;
                loss = std::min(loss, fit->loss);
            }
        good = good && std::abs(miss.fit.prism.horizontal) <= 1.5 && std::abs(miss.fit.prism.vertical) <= 0.5;
        if (good && *unaided - (*best + loss) >= twoLines) {
            wide.alike = true; // the same list again, only as far as this one
            wide.most = static_cast<std::size_t>(&miss - lists.misses.data()) + 1;
            answer.interim = findCandidates(*answer.need, stock, profile, rules.settings, wide).misses.back();
            nameSources(answer.interim->fit, profile);
            return;
        }
    }
}

void suggestBalance(const PersonRecord& person, const Profile& profile, std::span<const StockLine> stock,
                    const FittingRules& rules, const StockIndex* index, Recommendation& answer)
{
    for (const Eye eye : bothEyes) {
        const auto best = logMarOf(person.eyes.of(eye).acuity.best);
        if (!best || *best < 1.0 - roundingSlack || !answer.need->pairLevel())
            continue;
        Need other = *answer.need;
        other.eyes.of(eye).seeing = false;
        CandidateOptions one;
        one.most = 1;
        one.alike = false;
        one.index = index;
        const auto lists = findCandidates(other, stock, profile, rules.settings, one);
        if (lists.ranked.empty() || !lists.ranked.front().fit.acceptable())
            continue;
        answer.flags.push_back(
            {"balance-would-fit",
             {eye == Eye::left
                  ? QS_SAY("core", "if the prescriber marks the left eye balance, %1 would fit")
                  : QS_SAY("core", "if the prescriber marks the right eye balance, %1 would fit"),
              {partNames(lists.ranked.front(), stock)}},
             "common practice"});
    }
}

} // namespace quarterstep
