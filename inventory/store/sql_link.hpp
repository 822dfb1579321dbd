// SPDX-License-Identifier: GPL-3.0-or-later
// A server through a driver of the SQL library.
#pragma once

#include "inventory/store/link.hpp"

namespace quarterstep
{

/// Where and how to log in.
struct SqlAccess {
    std::string login;
    std::string host;
    int port = 0; ///< 0: the usual one
    std::string database;
    std::string options; ///< of the driver
};

/// Null on failure. Throws Error ledger-failed (4) when the driver is missing.
/// @param package what to install then
/// @param shown the address as people are shown it
[[nodiscard]] std::unique_ptr<StoreLink> openSqlLink(const char* driver, const char* package,
                                                     const std::string& shown, const SqlAccess& access,
                                                     StoreFailure& failure);

} // namespace quarterstep
