// SPDX-License-Identifier: GPL-3.0-or-later
// The schema files, compiled in.
#pragma once

#include <string_view>

namespace quarterstep
{

/// schema_sqlite.sql as it stands beside this file.
[[nodiscard]] std::string_view sqliteSchema();
/// migration_2_sqlite.sql: from form 1 to form 2.
[[nodiscard]] std::string_view sqliteMigration2();

/// schema_postgresql.sql: tables, triggers and groups of a shared ledger.
[[nodiscard]] std::string_view postgresqlSchema();

} // namespace quarterstep
