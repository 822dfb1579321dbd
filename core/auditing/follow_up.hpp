// SPDX-License-Identifier: GPL-3.0-or-later
// Seen again: who is due, and whether the pair is worn. Stages: a first look after some weeks and a look at
// wear after about six months (International Agency for the Prevention of Blindness, School Eye Health
// Guidelines, monitoring and evaluation); unannounced at three to four months (Morjaria P et al., JAMA
// Ophthalmol 2017;135:527-533). The ends of each stage are common practice.
#pragma once

#include "core/finding.hpp"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace quarterstep
{

/// What was found when the person was seen again.
enum class Wear {
    worn,     ///< on the face
    withThem, ///< carried, not on the face
    atHome,
    broken,
    lost,
    stopped, ///< has them and does not wear them
    notFound ///< the person could not be met
};
inline constexpr std::size_t wearOutcomes = 7;
[[nodiscard]] const char* wordOf(Wear wear);
[[nodiscard]] std::optional<Wear> wearNamed(const std::string& word);
/// QS_SAY("core", …), short.
[[nodiscard]] const char* wordsOf(Wear wear);

struct FollowUpStage {
    const char* word;  ///< stable: "weeks" "months-3-4" "months-6"
    const char* words; ///< QS_SAY("core", …)
    int from;          ///< days after the hand-over from which a look counts for this stage
    int due;           ///< from which it is due
    int until;         ///< after which it comes too late
};
inline constexpr std::size_t followUpStages = 3;
[[nodiscard]] const std::array<FollowUpStage, followUpStages>& stagesOfFollowUp();

/// A person with a standing hand-over.
struct Wearer {
    std::string person;
    std::int64_t givenMs = 0; ///< of the newest
    std::string entry;        ///< of the newest
    std::string lines;
    std::string purposes;
};
/// A person seen again.
struct SeenAgain {
    std::string person;
    std::int64_t atMs = 0;
    Wear wear = Wear::worn;
};

enum class DueState { soon, due, late };
[[nodiscard]] const char* wordOf(DueState state); ///< stable, in JSON

struct FollowUpDue {
    Wearer wearer;
    std::size_t stage = 0;
    DueState state = DueState::due;
    int days = 0; ///< since the hand-over
};
/// Who is to be seen: for each wearer the stage of today, unless somebody saw the person within it. `soon`
/// before the day it is due, `late` in the last third of the stage. Not found counts as not seen. Longest
/// wait first.
[[nodiscard]] std::vector<FollowUpDue> followUpsDue(std::span<const Wearer> wearers,
                                                    std::span<const SeenAgain> seen, std::int64_t nowMs);

/// Of the last look at each wearer who was met.
struct WearCount {
    int met = 0;
    int wearing = 0;  ///< worn or with them
    int notFound = 0; ///< never met, and looked for
    int notSeen = 0;  ///< nobody looked yet
    std::array<int, wearOutcomes> by{};
};
[[nodiscard]] WearCount countWear(std::span<const Wearer> wearers, std::span<const SeenAgain> seen);

} // namespace quarterstep
