// SPDX-License-Identifier: GPL-3.0-or-later
// The file of a ledger as a file: made when missing, leftovers of making it taken away.
#pragma once

#include <string>

namespace quarterstep
{

/// An empty file that only its owner reads; SQLite gives its companions the same rights. It gets its name
/// only after it was closed: closing a file that a connection of this process has open would drop its locks.
/// Throws Error ledger-unwritable (4).
void makeEmptyFile(const std::string& path);
/// What a program left behind that was killed between making a ledger and naming it: empty files
/// "ledger.sqlite.<id>.new". One that is young may be another program's, about to be named.
void removeUnnamed(const std::string& path);
/// Whether the head of a file is that of a ledger of the form this program writes. Not while this process has
/// that ledger open: see above.
[[nodiscard]] bool isLedgerOfToday(const std::string& path);

} // namespace quarterstep
