// SPDX-License-Identifier: GPL-3.0-or-later
// What a connection speaks through: the interface of each database itself (sqlite_link.cpp,
// postgresql_link.cpp), so that a hand-over costs little more than its statements. Seen by connection.cpp and
// the two engines alone.
#pragma once

#include "inventory/store/connection.hpp"

#include <cstddef>
#include <optional>

namespace quarterstep
{

/// One prepared statement.
class LinkStatement
{
  public:
    LinkStatement() = default;
    LinkStatement(const LinkStatement&) = delete;
    LinkStatement& operator=(const LinkStatement&) = delete;
    virtual ~LinkStatement() = default;

    /// Binds and runs as far as the first row; false on failure.
    [[nodiscard]] virtual bool run(const StoreValue* values, std::size_t count) = 0;
    /// Next row; false at the end and on failure.
    [[nodiscard]] virtual bool next() = 0;
    virtual void finish() = 0; ///< may be called at any time

    [[nodiscard]] virtual std::int64_t whole(int column) const = 0;
    /// Bytes that are not UTF-8 come as U+FFFD.
    [[nodiscard]] virtual std::string text(int column) const = 0;
    [[nodiscard]] virtual std::string bytes(int column) const = 0;
    [[nodiscard]] virtual bool isNull(int column) const = 0;

    /// What went wrong in the last `run` or `next`, if anything did; the kind is not set.
    [[nodiscard]] virtual const std::optional<StoreFailure>& failure() const = 0;
};

class StoreLink
{
  public:
    StoreLink() = default;
    StoreLink(const StoreLink&) = delete;
    StoreLink& operator=(const StoreLink&) = delete;
    virtual ~StoreLink() = default;

    /// Null on failure.
    [[nodiscard]] virtual std::unique_ptr<LinkStatement> prepare(const std::string& sql) = 0;
    /// Runs what is asked once, as far as the first row. Null on failure.
    [[nodiscard]] virtual std::unique_ptr<LinkStatement> ask(const std::string& sql) = 0;
    /// Runs a text that gives no rows; false on failure.
    [[nodiscard]] virtual bool execute(const std::string& sql) = 0;
    // Of a transaction that was begun by `execute`.
    [[nodiscard]] virtual bool commit() = 0;
    virtual void rollback() noexcept = 0;
    /// Of the last call of this class that failed; the kind is not set.
    [[nodiscard]] virtual const StoreFailure& failure() const = 0;
};

} // namespace quarterstep
