// SPDX-License-Identifier: GPL-3.0-or-later
// The schema of a ledger file: made when the file is empty, recognised by application id and version.
#pragma once

#include "inventory/store/connection.hpp"

namespace quarterstep
{

/// "QSLG", in the header of every ledger file.
inline constexpr std::int64_t ledgerApplicationId = 0x51534C47;
inline constexpr std::int64_t ledgerVersion = 1;

enum class LedgerState { empty, ready };

/// Throws Error ledger-not-a-database (3) for a database of another program, ledger-newer (3) for one made by a
/// newer version.
[[nodiscard]] LedgerState ledgerState(Connection& connection, const std::string& path);

/// Makes tables and triggers inside the caller's transaction.
void makeSchema(Connection& connection);

} // namespace quarterstep
