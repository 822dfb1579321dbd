// SPDX-License-Identifier: GPL-3.0-or-later
// The two ways of handing over: a whole table, or one person with what the optician picked.
#pragma once

#include "app/command/inputs.hpp"
#include "app/session/hand_over.hpp"

namespace quarterstep
{

struct DispenseReport {
    BatchResult result;
    std::string rulesHash;
    int skipped = 0; ///< rows left out
    bool dryRun = false;
};

/// Throws Error (2) when options that belong to one person stand without --person, or one is not understood.
void checkPick(const CommandLine& line);

/// Hands over to the person of --person. Objections are told and thrown as Error hand-over-refused (1).
[[nodiscard]] BatchResult dispensePicked(const CommandLine& line, Camp& camp,
                                         const std::vector<PersonRecord>& people, const MatchOptions& options,
                                         Output& out);

} // namespace quarterstep
