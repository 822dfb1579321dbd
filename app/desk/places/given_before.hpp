// SPDX-License-Identifier: GPL-3.0-or-later
// Who already has something, as the ledger tells it: hand-overs that were not entered in error.
#pragma once

#include "core/record/entry.hpp"

#include <QString>

#include <map>
#include <optional>

namespace quarterstep
{

/// Camp code -> names of the lines given, in order.
[[nodiscard]] std::map<std::string, QString> givenBefore(const std::vector<Entry>& entries);
/// The last standing hand-over among these of today; empty when there is none.
[[nodiscard]] std::optional<Entry> lastGivenToday(const std::vector<Entry>& entries);
/// Names of the lines an entry took, ready to show.
[[nodiscard]] QString linesOf(const Entry& entry);

} // namespace quarterstep
