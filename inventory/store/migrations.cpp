// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/migrations.hpp"
#include "inventory/store/finding_at.hpp"
#include "inventory/store/place.hpp"
#include "inventory/store/schema.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>

namespace quarterstep
{

namespace
{

/// A connection for reading only does not copy either; the copy is another file.
class QueryOnlyLifted
{
  public:
    explicit QueryOnlyLifted(Connection& connection)
        : connection_(connection), was_(connection.wholeOf("PRAGMA query_only") != 0)
    {
        if (was_)
            connection_.execute("PRAGMA query_only = OFF");
    }
    QueryOnlyLifted(const QueryOnlyLifted&) = delete;
    QueryOnlyLifted& operator=(const QueryOnlyLifted&) = delete;
    ~QueryOnlyLifted()
    {
        if (was_)
            (void)connection_.prepare("PRAGMA query_only = ON").tryRun();
    }

  private:
    Connection& connection_;
    bool was_;
};

/// The name itself, or the first of name-2, name-3 … that nothing has.
std::string freeName(const std::string& wanted)
{
    std::string name = wanted;
    struct stat status {
    };
    for (int next = 2; lstat(name.c_str(), &status) == 0; ++next)
        name = wanted + "-" + std::to_string(next);
    return name;
}

} // namespace

void runScript(Connection& connection, std::string_view script)
{
    std::string statement;
    bool anySql = false;
    const auto runIt = [&] {
        if (anySql)
            connection.execute(statement);
        statement.clear();
        anySql = false;
    };
    for (std::size_t begin = 0; begin < script.size();) {
        const auto end = std::min(script.find('\n', begin), script.size());
        const auto line = script.substr(begin, end - begin);
        begin = end + 1;
        if (line.empty())
            runIt();
        else if (line.substr(0, 2) != "--") {
            statement.append(line).append("\n");
            anySql = true;
        }
    }
    runIt();
}

LedgerState ledgerState(Connection& connection, const std::string& path)
{
    const auto application = connection.wholeOf("PRAGMA application_id");
    const auto version = connection.wholeOf("PRAGMA user_version");
    const auto tables = connection.wholeOf("SELECT count(*) FROM sqlite_schema");
    if (application == 0 && version == 0 && tables == 0)
        return LedgerState::empty;
    if (application != ledgerApplicationId)
        throw errorAt(path, "ledger-not-a-database",
                      {QS_SAY("core", "this is a database of another program, not a ledger; name another "
                                      "file in the key ledger of stock.yaml"),
                       {}},
                      3);
    if (version > ledgerVersion)
        throw errorAt(path, "ledger-newer",
                      {QS_SAY("core", "this ledger was made by a newer version (form %1, known here up to "
                                      "%2); update this program"),
                       {std::to_string(version), std::to_string(ledgerVersion)}},
                      3);
    return version < ledgerVersion ? LedgerState::older : LedgerState::ready;
}

void makeSchema(Connection& connection)
{
    runScript(connection, sqliteSchema());
    connection.execute("PRAGMA application_id = " + std::to_string(ledgerApplicationId));
    connection.execute("PRAGMA user_version = " + std::to_string(ledgerVersion));
}

std::string migrateLedger(Connection& connection, const std::string& path)
{
    const auto copy = freeName(path + ".form-" + std::to_string(connection.wholeOf("PRAGMA user_version")));
    copyLedger(connection, copy);
    connection.beginWriting();
    try {
        if (ledgerState(connection, path) == LedgerState::older) { // nobody was quicker
            runScript(connection, sqliteMigration2());
            connection.execute("PRAGMA user_version = " + std::to_string(ledgerVersion));
        }
        connection.commit();
    } catch (const Error&) {
        connection.rollback();
        throw;
    }
    return copy;
}

void readOlderForm(Connection& connection)
{
    connection.execute("PRAGMA temp_store = MEMORY");
    connection.execute(
        "CREATE TEMP VIEW movement AS SELECT *, 0 AS held, 0 AS quarantined FROM main.movement");
    connection.execute(
        "CREATE TEMP VIEW remark AS SELECT 0 AS entry, '' AS name, NULL AS salt, NULL AS words "
        "WHERE false");
}

void forgetOlderForm(Connection& connection)
{
    connection.execute("DROP VIEW IF EXISTS temp.movement");
    connection.execute("DROP VIEW IF EXISTS temp.remark");
}

void syncFile(const std::string& path)
{
    const int descriptor = open(path.c_str(), O_RDONLY | O_CLOEXEC);
    const bool synced = descriptor >= 0 && fsync(descriptor) == 0;
    const int failed = errno;
    if (descriptor >= 0)
        close(descriptor);
    if (!synced || !syncFolder(folderOf(path)))
        throw fileUnwritable(path, failed);
}

void makeFileForCopy(const std::string& target)
{
    const int made = open(target.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (made < 0 && errno == EEXIST)
        throw errorAt(target, "file-exists",
                      {QS_SAY("core", "something has this name already; name a place that is free"), {}}, 3);
    if (made < 0)
        throw fileUnwritable(target, errno);
    close(made);
}

void copyLedger(Connection& connection, const std::string& target)
{
    makeFileForCopy(target);
    try {
        const QueryOnlyLifted lifted(connection);
        auto copy = connection.prepare("VACUUM INTO ?");
        copy.run({target});
        copy.finish();
        syncFile(target);
    } catch (const Error&) {
        unlink(target.c_str());
        throw;
    }
}

} // namespace quarterstep
