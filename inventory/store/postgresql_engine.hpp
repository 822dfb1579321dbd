// SPDX-License-Identifier: GPL-3.0-or-later
// A ledger in a database that several stations share.
#pragma once

#include "inventory/store/engine.hpp"
#include "inventory/store/shared_ledger.hpp"

namespace quarterstep
{

class PostgresqlEngine : public StoreEngine
{
  public:
    /// Throws Error ledger-address (3).
    explicit PostgresqlEngine(const std::string& location) : address_(readLedgerAddress(location)) {}

    [[nodiscard]] std::string shown() const override { return address_.shown; }
    [[nodiscard]] std::unique_ptr<StoreLink> connect(Connection::Access access, int busyMs,
                                                     StoreFailure& failure) override;
    [[nodiscard]] FailureKind kindOf(const std::string& code) const override;
    [[nodiscard]] int patienceMs() const override { return 0; }
    void setPatience(int /*ms*/) override {} // the server waits as it was told when it was connected to
    [[nodiscard]] bool preparesTransactions() const override { return false; }
    [[nodiscard]] const char* beginWriting() const override;
    [[nodiscard]] const char* beginReading() const override;
    void makeReady(Ledger::Mode mode) override;
    void allowBareReading() const override;
    void requireSame() const override;
    [[nodiscard]] LedgerState state(Connection& connection) override;
    [[nodiscard]] std::string damage(Connection& /*connection*/) override { return {}; }
    void settleToWrite(Connection& connection, LedgerState state) override;
    void settleToRead(Connection& connection) override;
    [[nodiscard]] OwnStation station(Connection& connection, const std::string& folder,
                                     bool writing) override;
    void claim(Connection& connection, bool asSecondStation) override;
    void readOlderForm(Connection& connection) override;
    [[nodiscard]] std::string bringUp(Connection& connection) override;
    [[nodiscard]] LineSums movedSince(Connection& connection, const std::string& site,
                                      std::int64_t position) const override;
    [[nodiscard]] std::string identity(Connection& connection) const override;
    void overwriteErased(Connection& connection) override;
    [[nodiscard]] bool emptyJournal(Connection& connection) override;
    void copyTo(Connection& connection, const std::string& target) override;
    void takeOver(Connection& from) override;
    void leave(Connection& connection) override;

  private:
    LedgerAddress address_;
};

} // namespace quarterstep
