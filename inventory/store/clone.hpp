// SPDX-License-Identifier: GPL-3.0-or-later
// A ledger as it stands in one database, put into another: from a file to a shared one and back.
#pragma once

#include "inventory/store/connection.hpp"

namespace quarterstep
{

/// Writes everything the one holds into the other, which must have tables and no entry: entries keep their
/// positions, numbers, hashes and texts, and the target's trigger counts the movements anew. Stations come as
/// those of other places, so that whoever goes on does so under an id of its own. Both see one moment; all or
/// nothing. Throws Error ledger-not-empty (3).
void cloneLedger(Connection& from, Connection& into);

/// The same into a new file that only its owner reads, synced. Throws as copyLedger.
void cloneToFile(Connection& from, const std::string& target);

} // namespace quarterstep
