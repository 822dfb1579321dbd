// SPDX-License-Identifier: GPL-3.0-or-later
// The same tests for both kinds of ledger: files, or, with QS_STORE=shared in the environment, databases of a
// server that the program starts for itself.
#pragma once

#include "inventory/store/connection.hpp"
#include "inventory/store/ledger.hpp"
#include "tests/inventory/server.hpp"

#include <boost/test/unit_test.hpp>

namespace quarterstep::test
{

/// Whether this run is about shared ledgers.
[[nodiscard]] bool onServer();
/// The server of this run, started at the first call. Where there is none the program ends, telling so,
/// with 77.
[[nodiscard]] TestServer& server();

/// Location of the ledger a test calls `path` (folder / "ledger.sqlite"): that file, or a database made for
/// it.
[[nodiscard]] std::string locationOf(const std::string& path, const std::string& login = "station");
/// The ledger of that name, opened for the folder it would lie in.
[[nodiscard]] Ledger openLedger(const std::string& path, Ledger::Mode mode,
                                const std::string& login = "station");
/// A connection that no role and no rule of ours guards, except the triggers and constraints of the tables.
[[nodiscard]] std::unique_ptr<Connection> rawConnection(const std::string& path);
/// Takes the triggers away from a raw connection, and the foreign keys.
void withoutGuards(Connection& raw);
/// Bytes as SQL writes them.
[[nodiscard]] std::string bytesInSql(const std::string& bytes);
/// A ledger like another under a new path: as a second station, or wrongly as the same one.
void copyLedgerTo(const Ledger& from, const std::string& fromPath, const std::string& path,
                  bool asSecondStation);

/// For cases about the file of a ledger, or about a server.
[[nodiscard]] boost::unit_test::decorator::precondition filesOnly();
[[nodiscard]] boost::unit_test::decorator::precondition serverOnly();

} // namespace quarterstep::test
