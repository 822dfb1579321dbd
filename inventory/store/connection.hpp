// SPDX-License-Identifier: GPL-3.0-or-later
// One connection to a ledger and its prepared statements. With the engines and links behind it (engine.hpp,
// link.hpp) the only one that knows which database it speaks to. A connection belongs to the thread that
// opened it; statements must go before their connection.
#pragma once

#include "inventory/store/finding_at.hpp"

#include <cstdint>
#include <initializer_list>
#include <memory>
#include <string>
#include <variant>
#include <vector>

namespace quarterstep
{

/// Bytes that are not text.
struct Blob {
    std::string bytes;
    bool operator==(const Blob&) const = default;
};

/// A value to bind; std::monostate is NULL.
using StoreValue = std::variant<std::monostate, std::int64_t, std::string, Blob>;

/// What went wrong, in the words that callers tell apart.
enum class FailureKind {
    other,
    check,       ///< a CHECK constraint
    foreignKey,  ///< a row that is pointed to is missing
    busy,        ///< somebody else holds the ledger; nothing was written
    conflict,    ///< serialization failure or deadlock: nothing was written, to be repeated
    lost,        ///< the connection to a server is gone
    unreachable, ///< no server answers
    refused,     ///< this login may not do that, or may not come in
    unwritable,  ///< the place cannot be written to
    full,        ///< the disk is full
    inputOutput, ///< the disk failed
    damaged      ///< not a database, or a damaged one
};

/// What the database said last.
struct StoreFailure {
    FailureKind kind = FailureKind::other;
    std::string code; ///< SQLite's extended result code, or PostgreSQL's SQLSTATE
    std::string text;
};

/// The Error people are told, with its kind for those who repeat.
class StoreError : public Error
{
  public:
    StoreError(const Error& error, FailureKind kind) : Error(error), kind_(kind) {}
    [[nodiscard]] FailureKind kind() const { return kind_; }

  private:
    FailureKind kind_;
};

class Connection;
class LinkStatement;
class StoreEngine;
class StoreLink;

class Statement
{
  public:
    Statement(Statement&&) noexcept;
    Statement& operator=(Statement&&) noexcept;
    ~Statement();

    /// Runs with these values; false on failure (see `failure`). Every run must be followed by `finish`.
    [[nodiscard]] bool tryRun(std::initializer_list<StoreValue> values = {});
    /// As tryRun; throws the StoreError that belongs to the failure.
    void run(std::initializer_list<StoreValue> values = {});
    void run(const std::vector<StoreValue>& values);
    /// Next row; throws on failure.
    [[nodiscard]] bool next();
    /// Ends the statement so that it holds no lock and no snapshot.
    void finish();

    [[nodiscard]] std::int64_t whole(int column) const;
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] std::string bytes(int column) const; ///< of a blob
    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] const StoreFailure& failure() const;

  private:
    friend class Connection;
    struct Inside;
    explicit Statement(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

class Connection
{
  public:
    /// `immutable` reads a closed file on a medium that cannot be written at all.
    enum class Access { readOnly, readWrite, immutable };

    /// Opens an existing file, or the server a postgresql:// address names; waits up to `busyMs` for locks.
    /// Throws Error ledger-missing (3), ledger-unwritable (4), ledger-unreachable (4), ledger-failed (4).
    Connection(const std::string& location, Access access, int busyMs);
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;
    ~Connection();

    /// From now on waits this long for locks (a ledger in a file).
    void setPatience(int ms);

    /// Throws the StoreError that belongs to the failure, as everything below.
    [[nodiscard]] Statement prepare(const char* sql);
    void execute(const std::string& sql);
    /// First column of the first row; 0 or empty when there is no row.
    [[nodiscard]] std::int64_t wholeOf(const std::string& sql);
    [[nodiscard]] std::string textOf(const std::string& sql);
    /// What the engine itself finds wrong in pages and indexes; empty when nothing. Reads everything.
    [[nodiscard]] std::string damage();

    /// A transaction in which nobody else writes, from its beginning to its end.
    void beginWriting();
    /// A transaction that sees one moment of the ledger.
    void beginReading();
    void commit();
    void rollback() noexcept; ///< also when there is nothing to roll back any more

    [[nodiscard]] StoreEngine& engine() { return *engine_; }
    [[nodiscard]] const std::string& name() const { return shown_; } ///< for people: a path, or an address

  private:
    struct Transactions;
    /// Null when there is no row.
    [[nodiscard]] std::unique_ptr<LinkStatement> firstRow(const std::string& sql);
    [[nodiscard]] StoreError failed() const;

    std::unique_ptr<StoreEngine> engine_;
    std::string shown_;
    std::unique_ptr<StoreLink> link_;
    std::unique_ptr<Transactions> transactions_; ///< after the link: goes first
};

/// The Error people are told for a failure of the ledger at `path`.
[[nodiscard]] StoreError storeError(const std::string& path, const StoreFailure& failure);

} // namespace quarterstep
