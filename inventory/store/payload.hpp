// SPDX-License-Identifier: GPL-3.0-or-later
// The text of an entry as it is stored and hashed: compact JSON, keys sorted, strings and integers only.
// What people wrote in their own words is not in it, only a salted hash of each text.
// It is written once; whoever checks the chain hashes the stored text and never writes it anew.
#pragma once

#include "core/record/entry.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace quarterstep
{

/// An entry with what stands beside it in the payload.
struct PayloadEntry {
    Entry entry;
    std::string site;
    std::string station;                                ///< id, 36 characters
    std::map<std::string, std::string> textHashes = {}; ///< name of a text -> its salted hash, 64 hex digits
};

/// Canonical text; always valid UTF-8 (bytes that are not become U+FFFD).
[[nodiscard]] std::string payloadOf(const PayloadEntry& entry);
/// Empty when the text is not a payload of ours.
[[nodiscard]] std::optional<PayloadEntry> readPayload(std::string_view payload);
/// SHA-256 (32 bytes) over the hash before and the payload. The first entry of a station has 32 zero bytes
/// before it.
[[nodiscard]] std::string chainHash(std::string_view before, std::string_view payload);
[[nodiscard]] std::string chainStart();
[[nodiscard]] bool isAscii(std::string_view text);
/// Bytes that are not UTF-8 become U+FFFD, as they do in a payload.
[[nodiscard]] std::string validUtf8(const std::string& text);
/// SHA-256 over salt and words, 64 hex digits.
[[nodiscard]] std::string saltedHash(std::string_view salt, std::string_view words);

} // namespace quarterstep
