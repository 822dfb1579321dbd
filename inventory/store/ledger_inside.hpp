// SPDX-License-Identifier: GPL-3.0-or-later
// What the files of the ledger share: connection, prepared statements, identity of the file.
#pragma once

#include "inventory/store/connection.hpp"
#include "inventory/store/entry_id.hpp"
#include "inventory/store/ledger.hpp"
#include "inventory/store/migrations.hpp"
#include "inventory/store/place.hpp"

namespace quarterstep
{

/// Prepared once; each is finished after use, since one left open blocks BEGIN and COMMIT.
struct LedgerStatements {
    explicit LedgerStatements(Connection& connection);

    Statement begin;
    Statement commit;
    Statement rollback;
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
    Inside(std::string path, Mode mode);

    std::string path;
    Mode mode;
    std::unique_ptr<Connection> connection;
    std::optional<LedgerStatements> statements; ///< after the connection: goes first
    std::optional<LedgerInserts> inserts;
    std::optional<FileIdentity> identity;
    std::int64_t stationKey = 0;
    std::string stationId; ///< 16 bytes
    bool moved = false;
    bool older = false; ///< still in an older form, seen through views
    std::string migratedFrom;
    EntryIds ids;

    void open();
    void settle();
    void prepareToWrite(LedgerState state);
    void bringUp();
    void readStation();
    void claim(bool asSecondStation);
    /// Throws when this ledger cannot be written to.
    void requireWritable() const;
    /// Throws Error ledger-replaced (4) when the name no longer leads to the file that is open.
    void requireSameFile() const;
    /// Inside a transaction: sets id, number and time, stores entry and movements.
    void write(const std::string& site, Entry& entry);
    void prepareCancel(Entry& entry);
    void move(const std::string& site, const Entry& entry, std::int64_t position);
    void keepTexts(const Entry& entry, const std::map<std::string, std::string>& salts,
                   std::int64_t position);
    void requirePosition(std::int64_t expected);
    [[nodiscard]] Error shortOf(const std::string& site, const Movement& movement);
};

/// BEGIN IMMEDIATE; rolled back unless committed.
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
    bool open_ = false;
};

} // namespace quarterstep
