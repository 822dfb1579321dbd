// SPDX-License-Identifier: GPL-3.0-or-later
// The text of an entry as it is stored and hashed: compact JSON, keys sorted, strings and integers only.
// It is written once; whoever checks the chain hashes the stored text and never writes it anew.
#pragma once

#include "core/record/entry.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace quarterstep
{

/// An entry with the two facts that stand beside it in the payload.
struct PayloadEntry {
    Entry entry;
    std::string site;
    std::string station; ///< id, 36 characters
};

/// Canonical text; always valid UTF-8 (bytes that are not become U+FFFD).
[[nodiscard]] std::string payloadOf(const PayloadEntry& entry);
/// Empty when the text is not a payload of ours.
[[nodiscard]] std::optional<PayloadEntry> readPayload(std::string_view payload);
/// SHA-256 (32 bytes) over the hash before and the payload. The first entry of a station has 32 zero bytes
/// before it.
[[nodiscard]] std::string chainHash(std::string_view before, std::string_view payload);
[[nodiscard]] std::string chainStart();

} // namespace quarterstep
