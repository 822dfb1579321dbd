// SPDX-License-Identifier: GPL-3.0-or-later
// How entries of the ledger are called in words.
#pragma once

#include "core/record/entry.hpp"

#include <QString>

namespace quarterstep
{

/// The words of an entry's kind for people.
[[nodiscard]] QString kindWords(EntryKind kind);
/// A cause of loss in words; the word itself when it is none of causesOfLoss().
[[nodiscard]] QString causeWords(const std::string& cause);
/// "2026-03-01 14:05" in local time.
[[nodiscard]] QString momentWords(std::int64_t atMs);
/// "+2", "-1", "0".
[[nodiscard]] QString signedCount(int count);

} // namespace quarterstep
