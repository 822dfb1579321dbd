// SPDX-License-Identifier: GPL-3.0-or-later
// The schema of a ledger file: made when the file is empty, recognised by application id and version.
#pragma once

#include "inventory/store/engine.hpp"

#include <string_view>

namespace quarterstep
{

/// "QSLG", in the header of every ledger file.
inline constexpr std::int64_t ledgerApplicationId = 0x51534C47;
inline constexpr std::int64_t ledgerVersion = 2;

/// Runs a script whose statements end where an empty line stands; comments stand on lines of their own.
void runScript(Connection& connection, std::string_view script);

/// Throws Error ledger-not-a-database (3) for a database of another program, ledger-newer (3) for one made by
/// a newer version.
[[nodiscard]] LedgerState ledgerState(Connection& connection, const std::string& path);

/// Makes tables and triggers inside the caller's transaction.
void makeSchema(Connection& connection);

/// Brings an older ledger to the form of today in one transaction, after a copy of it was written beside it
/// (`path`.form-1, synced, read by its owner alone). Does nothing when another program was quicker. Returns
/// the name of the copy. Throws Error ledger-unwritable (4) or ledger-full (4) when the copy cannot be made.
std::string migrateLedger(Connection& connection, const std::string& path);

/// Lets the statements of today read an older ledger that may not be written: views of this connection alone.
void readOlderForm(Connection& connection);
void forgetOlderForm(Connection& connection);

/// Writes a consistent copy of the open ledger to a new file that only its owner reads, and syncs it. Throws
/// Error file-exists (3) when something has that name already, file-unwritable (4), ledger-full (4).
void copyLedger(Connection& connection, const std::string& target);

/// An empty file for a copy, read by its owner alone. Throws as copyLedger.
void makeFileForCopy(const std::string& target);
/// Makes a file and its name last. Throws Error file-unwritable (4).
void syncFile(const std::string& path);

} // namespace quarterstep
