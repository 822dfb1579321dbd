// SPDX-License-Identifier: GPL-3.0-or-later
// The only file that sees SQLite's own interface.
#include "inventory/store/sqlite_link.hpp"

#include "inventory/store/payload.hpp"

#include <sqlite3.h>

namespace quarterstep
{

namespace
{

StoreFailure saidBy(sqlite3* database)
{
    StoreFailure failure;
    failure.code = std::to_string(sqlite3_extended_errcode(database));
    failure.text = sqlite3_errmsg(database);
    return failure;
}

/// Bound bytes are copied: rows may be read when the values are gone.
struct Bind {
    sqlite3_stmt* statement;
    int place;

    int operator()(std::monostate /*null*/) const { return sqlite3_bind_null(statement, place); }
    int operator()(std::int64_t whole) const { return sqlite3_bind_int64(statement, place, whole); }
    int operator()(const std::string& text) const
    {
        const auto bind = [&](const std::string& valid) {
            return sqlite3_bind_text64(statement, place, valid.data(), valid.size(),
                                       SQLITE_TRANSIENT, // NOLINT
                                       SQLITE_UTF8);
        };
        return isAscii(text) ? bind(text) : bind(validUtf8(text));
    }
    int operator()(const Blob& blob) const
    {
        return sqlite3_bind_blob64(statement, place, blob.bytes.data(), blob.bytes.size(),
                                   SQLITE_TRANSIENT); // NOLINT
    }
};

class SqliteStatement : public LinkStatement
{
  public:
    explicit SqliteStatement(sqlite3_stmt* statement) : statement_(statement) {}
    SqliteStatement(const SqliteStatement&) = delete;
    SqliteStatement& operator=(const SqliteStatement&) = delete;
    ~SqliteStatement() override { sqlite3_finalize(statement_); }

    bool run(const StoreValue* values, std::size_t count) override
    {
        finish();
        failure_.reset();
        if (count != static_cast<std::size_t>(sqlite3_bind_parameter_count(statement_)))
            return failed(SQLITE_RANGE, "as many values as places are needed");
        for (std::size_t i = 0; i < count; ++i)
            if (std::visit(Bind{statement_, static_cast<int>(i) + 1}, values[i]) != SQLITE_OK)
                return failed();
        waiting_ = step();
        return waiting_ || !failure_;
    }

    bool next() override
    {
        if (waiting_) { // the row that `run` came to
            waiting_ = false;
            return true;
        }
        return inRows_ && step();
    }

    void finish() override
    {
        if (inRows_)
            sqlite3_reset(statement_);
        inRows_ = false;
        waiting_ = false;
    }

    [[nodiscard]] std::int64_t whole(int column) const override
    {
        return sqlite3_column_int64(statement_, column);
    }

    [[nodiscard]] std::string text(int column) const override
    {
        const auto* begin = reinterpret_cast<const char*>(sqlite3_column_text(statement_, column)); // NOLINT
        std::string text =
            begin == nullptr
                ? std::string()
                : std::string(begin, static_cast<std::size_t>(sqlite3_column_bytes(statement_, column)));
        return isAscii(text) ? text : validUtf8(text);
    }

    [[nodiscard]] std::string bytes(int column) const override
    {
        const auto* begin = static_cast<const char*>(sqlite3_column_blob(statement_, column));
        return begin == nullptr
                   ? std::string()
                   : std::string(begin, static_cast<std::size_t>(sqlite3_column_bytes(statement_, column)));
    }

    [[nodiscard]] bool isNull(int column) const override
    {
        return sqlite3_column_type(statement_, column) == SQLITE_NULL;
    }

    [[nodiscard]] const std::optional<StoreFailure>& failure() const override { return failure_; }

  private:
    /// True when there is a row. What came to its end, or failed, is reset at once: one left open holds its
    /// locks.
    bool step()
    {
        const int result = sqlite3_step(statement_);
        inRows_ = result == SQLITE_ROW;
        if (inRows_)
            return true;
        if (result != SQLITE_DONE)
            (void)failed();
        sqlite3_reset(statement_);
        return false;
    }

    bool failed()
    {
        failure_ = saidBy(sqlite3_db_handle(statement_));
        return false;
    }

    bool failed(int code, const char* words)
    {
        failure_ = StoreFailure{FailureKind::other, std::to_string(code), words};
        return false;
    }

    sqlite3_stmt* statement_;
    bool inRows_ = false;
    bool waiting_ = false;
    std::optional<StoreFailure> failure_;
};

class SqliteLink : public StoreLink
{
  public:
    explicit SqliteLink(sqlite3* database) : database_(database) {}
    SqliteLink(const SqliteLink&) = delete;
    SqliteLink& operator=(const SqliteLink&) = delete;
    ~SqliteLink() override { sqlite3_close_v2(database_); }

    std::unique_ptr<LinkStatement> prepare(const std::string& sql) override
    {
        sqlite3_stmt* statement = nullptr;
        const char* rest = nullptr;
        if (sqlite3_prepare_v3(database_, sql.c_str(), static_cast<int>(sql.size()) + 1,
                               SQLITE_PREPARE_PERSISTENT, &statement, &rest) != SQLITE_OK) {
            failure_ = saidBy(database_);
            return nullptr;
        }
        auto prepared = std::make_unique<SqliteStatement>(statement);
        if (statement != nullptr && std::string(rest).find_first_not_of(" \n\t;") == std::string::npos)
            return prepared;
        failure_.code = std::to_string(SQLITE_MISUSE);
        failure_.text = "one statement at a time";
        return nullptr;
    }

    std::unique_ptr<LinkStatement> ask(const std::string& sql) override
    {
        auto statement = prepare(sql);
        if (!statement || statement->run(nullptr, 0))
            return statement;
        failure_ = statement->failure().value_or(StoreFailure{});
        return nullptr;
    }

    bool execute(const std::string& sql) override { return ask(sql) != nullptr; }

    bool commit() override { return execute("COMMIT"); }

    void rollback() noexcept override
    {
        (void)sqlite3_exec(database_, "ROLLBACK", nullptr, nullptr, nullptr);
    }

    [[nodiscard]] const StoreFailure& failure() const override { return failure_; }

  private:
    sqlite3* database_;
    StoreFailure failure_;
};

} // namespace

std::unique_ptr<StoreLink> openSqliteLink(const std::string& url, int waitMs, StoreFailure& failure)
{
    // Without the library's own lock: a connection belongs to one thread.
    constexpr int flags =
        SQLITE_OPEN_READWRITE | SQLITE_OPEN_URI | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE;
    sqlite3* database = nullptr;
    const int result = sqlite3_open_v2(url.c_str(), &database, flags, nullptr);
    auto link = std::make_unique<SqliteLink>(database); // a handle that failed is closed too
    if (result != SQLITE_OK) {
        failure = saidBy(database);
        return nullptr;
    }
    sqlite3_busy_timeout(database, waitMs);
    return link;
}

} // namespace quarterstep
