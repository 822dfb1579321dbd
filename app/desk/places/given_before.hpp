// SPDX-License-Identifier: GPL-3.0-or-later
// What became of people, as the ledger tells it: entries that were not taken back.
#pragma once

#include "app/desk/models/waiting_model.hpp"
#include "core/record/entry.hpp"

#include <QString>

#include <optional>

namespace quarterstep
{

/// Of the entries of one person: the lines given, else what else became of them: ordered, declined, not
/// needed … Whoever was referred may still be given a pair and waits.
[[nodiscard]] WaitingModel::Outcome outcomeOf(const std::vector<Entry>& entries);
/// The last standing hand-over among these of today; empty when there is none.
[[nodiscard]] std::optional<Entry> lastGivenToday(const std::vector<Entry>& entries);
/// Names of the lines an entry took, ready to show.
[[nodiscard]] QString linesOf(const Entry& entry);

} // namespace quarterstep
