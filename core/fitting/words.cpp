// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/words.hpp"

namespace quarterstep
{

const char* wordOf(Purpose purpose)
{
    constexpr const char* words[] = {"unstated", "distance", "near", "intermediate", "bifocal", "both"};
    return words[static_cast<std::size_t>(purpose)];
}

std::optional<Purpose> purposeNamed(const std::string& word)
{
    for (const Purpose purpose : {Purpose::distance, Purpose::near, Purpose::intermediate, Purpose::bifocal})
        if (word == wordOf(purpose))
            return purpose;
    return std::nullopt;
}

const char* wordOf(Referral referral)
{
    constexpr const char* words[] = {"no", "with", "before"};
    return words[static_cast<std::size_t>(referral)];
}

const char* wordOf(PartSide side)
{
    constexpr const char* words[] = {"pair", "right", "left", "frame"};
    return words[static_cast<std::size_t>(side)];
}

PartSide sideNamed(std::string_view word)
{
    for (const PartSide side : {PartSide::right, PartSide::left, PartSide::frame})
        if (word == wordOf(side))
            return side;
    return PartSide::pair;
}

} // namespace quarterstep
