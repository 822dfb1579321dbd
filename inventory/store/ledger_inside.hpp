// SPDX-License-Identifier: GPL-3.0-or-later
// What the files of the ledger share: connection, prepared statements, transactions, and patience with a
// server.
#pragma once

#include "inventory/store/engine.hpp"
#include "inventory/store/entry_id.hpp"

#include <chrono>

namespace quarterstep
{

/// Prepared once; each is finished after use, since one left open blocks BEGIN and COMMIT.
struct LedgerStatements {
    explicit LedgerStatements(Connection& connection);

    Statement lastOfStation;
    Statement countOf;
    Statement snapshot;
};

/// Only for a ledger of today's form.
struct LedgerInserts {
    explicit LedgerInserts(Connection& connection);

    Statement entry;
    Statement movement;
    Statement line;
    Statement remark;
};

struct Ledger::Inside {
    Inside(std::string location, Mode mode, std::string folder);

    std::string location;
    std::string folder; ///< the camp folder that writes, where the place of the ledger does not say it
    std::string path;   ///< the location as people are shown it
    Mode mode;
    std::unique_ptr<Connection> connection;
    std::optional<LedgerStatements> statements; ///< after the connection: goes first
    std::optional<LedgerInserts> inserts;
    std::int64_t stationKey = 0;
    std::string stationId; ///< 16 bytes
    bool moved = false;
    bool older = false; ///< still in an older form, seen through views
    std::string migratedFrom;
    EntryIds ids;
    bool inTransaction = false;
    std::vector<std::pair<std::string, Movement>> done; ///< site and movement, in the open transaction

    /// The connection, opened anew when the last try to do so failed.
    [[nodiscard]] Connection& live();
    [[nodiscard]] StoreEngine& engine() { return live().engine(); }
    void open();
    void connect(Connection::Access access);
    void settle();
    /// Opens again after the connection was lost; waits for a server that restarts.
    void reopen();
    void bringUp();
    void readStation();
    void claim(bool asSecondStation);
    /// Rolls back what is open.
    void abandon();
    /// Throws when this ledger cannot be written to.
    void requireWritable() const;
    /// Inside a transaction: sets id, number and time, stores entry and movements.
    void write(const std::string& site, Entry& entry);
    void prepareCancel(Entry& entry);
    void move(const std::string& site, const Entry& entry, std::int64_t position);
    void keepTexts(const Entry& entry, const std::map<std::string, std::string>& salts,
                   std::int64_t position);
    void requirePosition(std::int64_t expected);
    /// Ends the transaction and says what is left of the line.
    [[nodiscard]] Error shortOf(const std::string& site, const Movement& movement);
    [[nodiscard]] bool holds(const std::string& id);

    /// Runs `work(afterLoss)` until it is through: again when it lost against another writer, and after
    /// opening anew when the connection was lost; then it must look first whether it was through already.
    template <class Work>
    void untilWritten(const Work& work)
    {
        Patience patience;
        for (bool afterLoss = false;;) {
            try {
                return work(afterLoss);
            } catch (const StoreError& error) {
                afterLoss = patience.allows(*this, error) || afterLoss;
            }
        }
    }
    /// What reads is repeated once after the connection was lost.
    template <class Work>
    auto reading(const Work& work)
    {
        try {
            (void)live();
            return work();
        } catch (const StoreError& error) {
            if (error.kind() != FailureKind::lost)
                throw;
        }
        reopen();
        return work();
    }

    /// How often and how long something is repeated.
    class Patience
    {
      public:
        /// Waits or opens anew; rethrows when there is no point in repeating. True when the connection had
        /// been lost.
        bool allows(Inside& ledger, const StoreError& error);

      private:
        std::chrono::steady_clock::time_point begin_ = std::chrono::steady_clock::now();
        int losses_ = 0;
    };
};

/// One snapshot for everything read while it lives.
class ReadTransaction
{
  public:
    explicit ReadTransaction(Connection& connection) : connection_(connection) { connection_.beginReading(); }
    ReadTransaction(const ReadTransaction&) = delete;
    ReadTransaction& operator=(const ReadTransaction&) = delete;
    ~ReadTransaction() { connection_.rollback(); }

  private:
    Connection& connection_;
};

/// Nobody else writes while it lives; rolled back unless committed.
class LedgerTransaction
{
  public:
    explicit LedgerTransaction(Ledger::Inside& ledger);
    LedgerTransaction(const LedgerTransaction&) = delete;
    LedgerTransaction& operator=(const LedgerTransaction&) = delete;
    ~LedgerTransaction();
    void commit();

  private:
    Ledger::Inside& ledger_;
};

} // namespace quarterstep
