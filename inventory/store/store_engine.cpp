// SPDX-License-Identifier: GPL-3.0-or-later
// Which database keeps a ledger, by its location.
#include "inventory/store/postgresql_engine.hpp"
#include "inventory/store/sqlite_engine.hpp"

namespace quarterstep
{

bool isSharedLedger(const std::string& location)
{
    return location.rfind("postgresql://", 0) == 0 || location.rfind("postgres://", 0) == 0;
}

std::unique_ptr<StoreEngine> StoreEngine::of(const std::string& location)
{
    if (isSharedLedger(location))
        return std::make_unique<PostgresqlEngine>(location);
    return std::make_unique<SqliteEngine>(location);
}

} // namespace quarterstep
