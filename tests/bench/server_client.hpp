// SPDX-License-Identifier: GPL-3.0-or-later
// What the shared ledger is measured against: pgbench, the server's own client for benches, sending the
// statements of a hand-over as the ledger does: BEGIN and the lock in one text, then statements prepared once
// and executed by name.
#pragma once

#include "tests/inventory/server.hpp"

#include <string>

namespace quarterstep::bench
{

class ServerClient
{
  public:
    /// @param database holds a ledger; its stations from `firstStation` on are those of the clients, each
    /// with an entry
    /// @param payload of one hand-over; each client takes lines A to H in turn
    /// @param folder for the script
    ServerClient(const test::TestServer& server, std::string database, int firstStation,
                 const std::string& payload, const std::string& folder);
    /// Hand-overs a second of so many clients, without the time they take to connect. Throws
    /// std::runtime_error when one failed.
    [[nodiscard]] double rate(int clients, std::size_t turns) const;

  private:
    const test::TestServer& server_;
    std::string database_;
    std::string script_;
};

} // namespace quarterstep::bench
