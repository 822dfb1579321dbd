// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/entry.hpp"

#include <iterator>

namespace quarterstep
{

namespace
{
constexpr const char* words[] = {"opened", "received", "handed-over", "counted", "entered-in-error"};
} // namespace

const char* wordOf(EntryKind kind)
{
    return words[static_cast<std::size_t>(kind)];
}

std::optional<EntryKind> entryKindFrom(std::string_view word)
{
    for (std::size_t i = 0; i < std::size(words); ++i)
        if (word == words[i])
            return static_cast<EntryKind>(i);
    return std::nullopt;
}

} // namespace quarterstep
