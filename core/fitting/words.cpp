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

} // namespace quarterstep
