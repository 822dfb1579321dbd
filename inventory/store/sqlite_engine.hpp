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

    [[nodiscard]] const char* driver() const override { return "QSQLITE"; }
    [[nodiscard]] const char* package() const override { return "libqt6sql6-sqlite"; }
    [[nodiscard]] std::string shown() const override { return path_; }
    [[nodiscard]] bool open(const std::string& handle, Connection::Access access, int busyMs) override;
    [[nodiscard]] FailureKind kindOf(const std::string& code) const override;
    [[nodiscard]] bool readsRowByRow() const override { return true; }
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
