// SPDX-License-Identifier: GPL-3.0-or-later
// What happened, as values: an entry and the movements that belong to it. Entries are append-only.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace quarterstep
{

enum class EntryKind { opened, received, handedOver, counted, enteredInError };

/// The stable word of a kind in ledgers and JSON ("handed-over").
[[nodiscard]] const char* wordOf(EntryKind kind);
/// The kind of a word; empty when no kind has it.
[[nodiscard]] std::optional<EntryKind> entryKindFrom(std::string_view word);

/// A change of one line's count at one site.
struct Movement {
    std::string line;
    int delta = 0;
    std::string part; ///< pair | right | left | frame or empty
    bool operator==(const Movement&) const = default;
};

/// Payload values are text or integers written as text; `fields` is serialised canonically once and hashed as
/// stored.
struct Entry {
    std::string id;          ///< UUIDv7, 36 characters; empty until posted
    std::int64_t number = 0; ///< per station, from 1
    EntryKind kind = EntryKind::handedOver;
    std::int64_t atMs = 0; ///< UTC, milliseconds
    std::string actor;
    std::string person;  ///< camp code or empty
    std::string cancels; ///< id of the entry entered in error
    std::map<std::string, std::string> fields;
    std::vector<Movement> movements;
};

} // namespace quarterstep
