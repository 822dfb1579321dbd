// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/auditing/follow_up.hpp"

#include "core/record/day.hpp"

#include <algorithm>
#include <map>

namespace quarterstep
{

namespace
{

struct WearWords {
    const char* word;
    const char* words;
};
constexpr WearWords wearWords[wearOutcomes] = {
    {"worn", QS_SAY("core", "worn when seen")},
    {"with-them", QS_SAY("core", "carried, not worn when seen")},
    {"at-home", QS_SAY("core", "left at home")},
    {"broken", QS_SAY("core", "broken")},
    {"lost", QS_SAY("core", "lost")},
    {"stopped", QS_SAY("core", "not worn any more")},
    {"not-found", QS_SAY("core", "the person was not met")},
};

int daysBetween(std::int64_t fromMs, std::int64_t toMs)
{
    return static_cast<int>((toMs - fromMs) / dayMs);
}

/// The stage whose days hold this one; empty between stages.
std::optional<std::size_t> stageAt(int days)
{
    const auto& stages = stagesOfFollowUp();
    for (std::size_t i = 0; i < stages.size(); ++i)
        if (days >= stages[i].from && days <= stages[i].until)
            return i;
    return std::nullopt;
}

DueState stateAt(const FollowUpStage& stage, int days)
{
    if (days < stage.due)
        return DueState::soon;
    return 3 * (days - stage.due) > 2 * (stage.until - stage.due) ? DueState::late : DueState::due;
}

std::map<std::string, std::vector<const SeenAgain*>> byPerson(std::span<const SeenAgain> seen)
{
    std::map<std::string, std::vector<const SeenAgain*>> persons;
    for (const auto& each : seen)
        persons[each.person].push_back(&each);
    return persons;
}

} // namespace

const char* wordOf(Wear wear)
{
    return wearWords[static_cast<std::size_t>(wear)].word;
}

const char* wordsOf(Wear wear)
{
    return wearWords[static_cast<std::size_t>(wear)].words;
}

std::optional<Wear> wearNamed(const std::string& word)
{
    for (std::size_t i = 0; i < wearOutcomes; ++i)
        if (word == wearWords[i].word)
            return static_cast<Wear>(i);
    return std::nullopt;
}

const char* wordOf(DueState state)
{
    constexpr const char* words[] = {"soon", "due", "late"};
    return words[static_cast<std::size_t>(state)];
}

const std::array<FollowUpStage, followUpStages>& stagesOfFollowUp()
{
    static constexpr std::array<FollowUpStage, followUpStages> stages{{
        {"weeks", QS_SAY("core", "after some weeks"), 14, 28, 70},
        {"months-3-4", QS_SAY("core", "after three to four months"), 84, 91, 122},
        {"months-6", QS_SAY("core", "after six months"), 160, 182, 274},
    }};
    return stages;
}

std::vector<FollowUpDue> followUpsDue(std::span<const Wearer> wearers, std::span<const SeenAgain> seen,
                                      std::int64_t nowMs)
{
    const auto persons = byPerson(seen);
    std::vector<FollowUpDue> due;
    for (const auto& wearer : wearers) {
        const int days = daysBetween(wearer.givenMs, nowMs);
        const auto stage = stageAt(days);
        if (!stage)
            continue;
        const auto found = persons.find(wearer.person);
        const bool met = found != persons.end() &&
                         std::any_of(found->second.begin(), found->second.end(), [&](const SeenAgain* look) {
                             return look->wear != Wear::notFound && daysBetween(wearer.givenMs, look->atMs) >=
                                                                        stagesOfFollowUp()[*stage].from;
                         });
        if (!met)
            due.push_back({wearer, *stage, stateAt(stagesOfFollowUp()[*stage], days), days});
    }
    std::stable_sort(due.begin(), due.end(),
                     [](const FollowUpDue& a, const FollowUpDue& b) { return a.days > b.days; });
    return due;
}

WearCount countWear(std::span<const Wearer> wearers, std::span<const SeenAgain> seen)
{
    const auto persons = byPerson(seen);
    WearCount count;
    for (const auto& wearer : wearers) {
        const SeenAgain* last = nullptr;
        bool lookedFor = false;
        if (const auto found = persons.find(wearer.person); found != persons.end())
            for (const auto* look : found->second) {
                if (look->atMs < wearer.givenMs)
                    continue;
                lookedFor = true;
                if (look->wear != Wear::notFound && (last == nullptr || look->atMs >= last->atMs))
                    last = look;
            }
        if (last == nullptr) {
            ++(lookedFor ? count.notFound : count.notSeen);
            continue;
        }
        ++count.met;
        ++count.by[static_cast<std::size_t>(last->wear)];
        count.wearing += last->wear == Wear::worn || last->wear == Wear::withThem ? 1 : 0;
    }
    return count;
}

} // namespace quarterstep
