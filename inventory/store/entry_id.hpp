// SPDX-License-Identifier: GPL-3.0-or-later
// Ids of entries: UUID version 7 (RFC 9562), rising within a station even when the clock is set back.
#pragma once

#include <cstdint>
#include <random>
#include <string>
#include <string_view>

namespace quarterstep
{

class EntryIds
{
  public:
    EntryIds();
    /// No later id sorts before `id` (16 bytes); anything that is not such an id is left out of account.
    void startAfter(std::string_view id);
    /// 16 bytes; `nowMs` is UTC in milliseconds.
    [[nodiscard]] std::string next(std::int64_t nowMs);

  private:
    std::mt19937_64 random_;
    std::uint64_t last_ = 0;  ///< milliseconds of the latest id
    std::uint64_t count_ = 0; ///< 12 bits that rise within one millisecond
};

/// 16 random bytes (UUID version 4) for a station.
[[nodiscard]] std::string randomId();
/// 32 bytes from the system's generator.
[[nodiscard]] std::string randomSalt();
/// 36 characters <-> 16 bytes; empty when the text is not an id.
[[nodiscard]] std::string idText(std::string_view bytes);
[[nodiscard]] std::string idBytes(const std::string& text);

} // namespace quarterstep
