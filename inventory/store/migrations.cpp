// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/migrations.hpp"
#include "inventory/store/schema.hpp"

namespace quarterstep
{

LedgerState ledgerState(Connection& connection, const std::string& path)
{
    const auto application = connection.wholeOf("PRAGMA application_id");
    const auto version = connection.wholeOf("PRAGMA user_version");
    const auto tables = connection.wholeOf("SELECT count(*) FROM sqlite_schema");
    if (application == 0 && version == 0 && tables == 0)
        return LedgerState::empty;
    if (application != ledgerApplicationId)
        throw ledgerError(path, "ledger-not-a-database",
                          {QS_SAY("core", "this is a database of another program, not a ledger; name another "
                                          "file in the key ledger of stock.yaml"), {}}, 3);
    if (version > ledgerVersion)
        throw ledgerError(path, "ledger-newer",
                          {QS_SAY("core", "this ledger was made by a newer version (form %1, known here up to "
                                          "%2); update this program"),
                           {std::to_string(version), std::to_string(ledgerVersion)}}, 3);
    return LedgerState::ready;
}

void makeSchema(Connection& connection)
{
    std::string statement;
    bool anySql = false;
    const auto runIt = [&] {
        if (anySql)
            connection.execute(statement);
        statement.clear();
        anySql = false;
    };
    const auto schema = sqliteSchema();
    for (std::size_t begin = 0; begin < schema.size();) {
        const auto end = std::min(schema.find('\n', begin), schema.size());
        const auto line = schema.substr(begin, end - begin);
        begin = end + 1;
        if (line.empty())
            runIt();
        else if (line.substr(0, 2) != "--") {
            statement.append(line).append("\n");
            anySql = true;
        }
    }
    runIt();
    connection.execute("PRAGMA application_id = " + std::to_string(ledgerApplicationId));
    connection.execute("PRAGMA user_version = " + std::to_string(ledgerVersion));
}

} // namespace quarterstep
