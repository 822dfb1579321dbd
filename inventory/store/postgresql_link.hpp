// SPDX-License-Identifier: GPL-3.0-or-later
// A PostgreSQL server through the client library of its own, which is loaded when the first server is asked
// for: it brings twenty other libraries, and a ledger in a file needs none of them.
#pragma once

#include "inventory/store/link.hpp"

#include <utility>
#include <vector>

namespace quarterstep
{

/// Keywords of a connection and their values, in the order they were given (PostgreSQL 15, chapter 34.1.2).
using ServerSettings = std::vector<std::pair<std::string, std::string>>;

/// Null on failure. Throws Error ledger-failed (4) when the client library is missing.
/// @param shown the address as people are shown it
[[nodiscard]] std::unique_ptr<StoreLink>
openPostgresqlLink(const std::string& shown, const ServerSettings& settings, StoreFailure& failure);

} // namespace quarterstep
