// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of the verb `stock`: the card of one line, and what settles a camp.
#pragma once

#include "app/command/command_line.hpp"
#include "app/session/camp.hpp"

namespace quarterstep
{

/// Every movement of --line with its entry and the balance after it.
int showCard(const CommandLine& line, const Camp& camp, Output& out);

/// --accept-edits, --discard-edits, --moved-here, --second-station; empty when none of them was asked for.
[[nodiscard]] std::optional<int> settleStock(const CommandLine& line, Output& out);

/// --set-up, --move-ledger; empty when neither was asked for.
[[nodiscard]] std::optional<int> placeLedger(const CommandLine& line, Output& out);

} // namespace quarterstep
