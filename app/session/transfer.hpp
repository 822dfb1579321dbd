// SPDX-License-Identifier: GPL-3.0-or-later
// Pieces that go to another site and come from one: what the command line and the desk share beside the
// entries themselves (keeping.hpp).
#pragma once

#include "app/session/keeping.hpp"

namespace quarterstep
{

/// What is sent, checked: throws Error option-value (2) where the other site is this one.
[[nodiscard]] std::vector<Entry> sendTo(const Camp& camp, const std::vector<QuantityRow>& rows,
                                        const Transfer& transfer);

/// The entry that sent it, when this ledger has it; empty when it has not. Throws Error transfer-gone (3) for
/// an entry that is not in the air.
[[nodiscard]] std::optional<Entry> sentEntry(const Camp& camp, const std::string& id);

/// The rows of an entry as it was sent.
[[nodiscard]] std::vector<QuantityRow> rowsSent(const Entry& sent);

/// Where it was sent to; empty when the entry does not say.
[[nodiscard]] std::string sentTo(const Entry& sent);

} // namespace quarterstep
