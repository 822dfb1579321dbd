// SPDX-License-Identifier: GPL-3.0-or-later
// One connection to a ledger file and its prepared statements. The only place that knows the SQL library.
// A connection belongs to the thread that opened it; statements must go before their connection.
#pragma once

#include "inventory/store/finding_at.hpp"

#include <cstdint>
#include <initializer_list>
#include <memory>
#include <string>
#include <variant>

namespace quarterstep
{

/// Bytes that are not text.
struct Blob {
    std::string bytes;
    bool operator==(const Blob&) const = default;
};

/// A value to bind; std::monostate is NULL.
using StoreValue = std::variant<std::monostate, std::int64_t, std::string, Blob>;

/// What the database said last. `code` is SQLite's extended result code, 0 when nothing failed.
struct StoreFailure {
    int code = 0;
    std::string text;
};

/// Extended result codes that callers tell apart; all others are classified by their low byte.
namespace store_code
{
inline constexpr int check = 275;
inline constexpr int foreignKey = 787;
} // namespace store_code

class Statement
{
  public:
    Statement(Statement&&) noexcept;
    Statement& operator=(Statement&&) noexcept;
    ~Statement();

    /// Runs with these values; false on failure (see `failure`). Every run must be followed by `finish`.
    [[nodiscard]] bool tryRun(std::initializer_list<StoreValue> values = {});
    /// As tryRun; throws the Error that belongs to the failure.
    void run(std::initializer_list<StoreValue> values = {});
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

    /// Opens an existing file; waits up to `busyMs` for locks. Throws Error ledger-missing (3),
    /// ledger-unwritable (4), ledger-failed (4).
    Connection(const std::string& path, Access access, int busyMs);
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;
    ~Connection();

    /// Throws the Error that belongs to the failure, as everything below.
    [[nodiscard]] Statement prepare(const char* sql);
    void execute(const std::string& sql);
    /// First column of the first row; 0 or empty when there is no row.
    [[nodiscard]] std::int64_t wholeOf(const std::string& sql);
    [[nodiscard]] std::string textOf(const std::string& sql);
    /// What the engine itself finds wrong in pages and indexes; empty when nothing. Reads everything.
    [[nodiscard]] std::string damage();

  private:
    std::string path_;
    std::string name_;
};

/// The Error people are told for a failure of the ledger file at `path`.
[[nodiscard]] Error storeError(const std::string& path, const StoreFailure& failure);

} // namespace quarterstep
