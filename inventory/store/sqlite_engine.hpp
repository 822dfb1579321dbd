// SPDX-License-Identifier: GPL-3.0-or-later
// A ledger in a file of the camp folder.
#pragma once

#include "inventory/store/engine.hpp"
#include "inventory/store/place.hpp"

namespace quarterstep
{

class SqliteEngine : public StoreEngine
{
  public:
    explicit SqliteEngine(std::string path) : path_(std::move(path)) {}

    [[nodiscard]] std::string shown() const override { return path_; }
    [[nodiscard]] std::unique_ptr<StoreLink> connect(Connection::Access access, int busyMs,
                                                     StoreFailure& failure) override;
    [[nodiscard]] FailureKind kindOf(const std::string& code) const override;
    [[nodiscard]] int patienceMs() const override { return busyMs_; }
    void setPatience(int ms) override { busyMs_ = ms; }
    [[nodiscard]] bool preparesTransactions() const override { return true; }
    [[nodiscard]] const char* beginWriting() const override { return "BEGIN IMMEDIATE"; }
    [[nodiscard]] const char* beginReading() const override { return "BEGIN"; }
    void makeReady(Ledger::Mode mode) override;
    void allowBareReading() const override;
    void requireSame() const override;
    [[nodiscard]] LedgerState state(Connection& connection) override;
    [[nodiscard]] std::string damage(Connection& connection) override;
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
    std::string path_;
    std::optional<FileIdentity> identity_;
    int busyMs_ = 0;
};

} // namespace quarterstep
