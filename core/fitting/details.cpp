// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/details.hpp"

#include "core/fitting/fit_chance.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

void addChances(const Profile& profile, Recommendation& answer)
{
    for (auto& candidate : answer.candidates.ranked)
        candidate.chance = chancesOf(*answer.need, candidate, profile);
    if (answer.interim)
        answer.interim->chance = chancesOf(*answer.need, *answer.interim, profile);
}

/// Asks for the readings again where the first candidate is more likely outside than inside.
void askForReadings(Recommendation& answer)
{
    const auto& ranked = answer.candidates.ranked;
    if (ranked.empty() || (answer.verdict != Verdict::stock && answer.reasonKey != "on_trial"))
        return;
    const auto chance = leastChance(ranked.front().chance);
    if (!chance || *chance >= surelyEnough)
        return;
    const Eye eye = answer.need->eyes.right.seeing ? Eye::right : Eye::left;
    answer.flags.push_back(
        {"repeat-readings",
         {QS_SAY("core", "the chance that the true error lies within its limit is %1 %: repeat the readings"),
          {std::to_string(std::lround(100.0 * *chance))}},
         answer.need->eyes.of(eye).scatterSource});
}

} // namespace

void addDetails(const PersonRecord& person, const Profile& profile, const MatchOptions& options,
                Recommendation& answer)
{
    if (!answer.need)
        return;
    addChances(profile, answer);
    askForReadings(answer);
    if (answer.verdict != Verdict::custom)
        return;
    const auto& misses = answer.candidates.misses;
    for (std::size_t i = 0; i < std::min(misses.size(), missesExplained); ++i)
        answer.changes.push_back(singleChangeFor(*answer.need, misses[i], profile));
    answer.order = laboratoryOrder(person, *answer.need, options.form);
}

} // namespace quarterstep
