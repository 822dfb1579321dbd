// SPDX-License-Identifier: GPL-3.0-or-later
// Ledgers of several camps and stations brought together by the ids of their entries. Merging twice changes
// nothing, and the order of merging does not matter.
#pragma once

#include "inventory/store/ledger.hpp"

#include <map>

namespace quarterstep
{

struct MergeReport {
    std::int64_t added = 0;
    std::int64_t known = 0;                        ///< were there already
    std::int64_t blanked = 0;                      ///< texts that were forgotten in the other ledger
    std::map<std::string, std::int64_t> byStation; ///< station -> entries added
    std::map<std::string, std::int64_t> bySite;    ///< site -> entries added
    /// Cautions merge-two-stations (a site with entries of several stations: its folder was copied) and
    /// merge-own-station (entries of this station itself came from a copy).
    std::vector<Finding> findings;
};

/// Takes over every entry of `from` that `into` does not have, in one transaction, with its words where they
/// are still there; persons' names are not taken over. With `dryRun` nothing is written. Throws Error:
/// merge-itself (2), merge-source-broken (3: its chain is not in order), merge-other-hash (3: the same id
/// with another content), merge-fork (3: two entries with the same number of one station: a copied folder was
/// used twice under one station), merge-below-zero (3: names two entries), merge-taken-back-twice (3:
/// likewise), and what writing throws.
MergeReport mergeLedger(Ledger& into, const Ledger& from, bool dryRun = false);

} // namespace quarterstep
