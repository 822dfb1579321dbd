// SPDX-License-Identifier: GPL-3.0-or-later
// SQLite through its own interface.
#pragma once

#include "inventory/store/link.hpp"

namespace quarterstep
{

/// Opens a file that exists. Null on failure.
/// @param url file:///… with what follows its question mark: mode, immutable
/// @param waitMs how long a statement waits for others
[[nodiscard]] std::unique_ptr<StoreLink> openSqliteLink(const std::string& url, int waitMs,
                                                        StoreFailure& failure);

} // namespace quarterstep
