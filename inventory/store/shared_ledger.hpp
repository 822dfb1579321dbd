// SPDX-License-Identifier: GPL-3.0-or-later
// The ledger several stations share: its address, and its setting up by the keeper.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace quarterstep
{

/// postgresql://LOGIN@HOST:PORT/DATABASE?sslmode=…, taken apart. It never holds a password.
struct LedgerAddress {
    std::string login;
    std::string host; ///< a name, an address, or the folder of a socket
    int port = 0;     ///< 0: the usual one
    std::string database;
    std::vector<std::pair<std::string, std::string>> options; ///< for the client library
    std::string shown;                                        ///< for people
    std::string location;                                     ///< as written
};

/// Whether a location names a shared ledger and no file.
[[nodiscard]] bool isSharedLedger(const std::string& location);

/// Throws Error ledger-address (3) for what is not such an address, ledger-password (3) for one with a
/// password: stock.yaml is carried about and copied, so a password belongs into ~/.pgpass (PGPASSFILE) or
/// PGPASSWORD, which the client library reads by itself.
[[nodiscard]] LedgerAddress readLedgerAddress(const std::string& location);

/// The script that makes tables, triggers and the groups quarterstep_station and quarterstep_supervisor.
[[nodiscard]] std::string_view sharedLedgerScript();

/// Runs the script in an empty database, as its owner, in one transaction. Throws Error ledger-exists (3)
/// when there is a ledger already, and what opening throws.
void setUpSharedLedger(const std::string& address);

} // namespace quarterstep
