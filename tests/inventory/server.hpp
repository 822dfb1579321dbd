// SPDX-License-Identifier: GPL-3.0-or-later
// A PostgreSQL server of the tests' own: on the loopback address, in a temporary folder, gone with the
// program that started it.
#pragma once

#include <memory>
#include <string>
#include <sys/types.h>

namespace quarterstep::test
{

class TestServer
{
  public:
    /// Starts one; null when PostgreSQL is not installed, and `why` then says so. Afterwards the client
    /// library finds the passwords of keeper, station and supervisor by PGPASSFILE. Throws std::runtime_error
    /// when it does not start. `lasting`: on the disk of the temporary folders, where a synced write takes
    /// its time; else in memory if there is a file system for that.
    [[nodiscard]] static std::unique_ptr<TestServer> start(std::string& why, bool lasting = false);
    TestServer(const TestServer&) = delete;
    TestServer& operator=(const TestServer&) = delete;
    ~TestServer();

    /// postgresql://login@127.0.0.1:port/database
    [[nodiscard]] std::string address(const std::string& database, const std::string& login) const;
    /// An empty database of the keeper's.
    void makeDatabase(const std::string& database) const;
    /// A database with the tables of a ledger, and logins `station` and `supervisor` of its two groups.
    void makeLedger(const std::string& database) const;
    /// Kills the server without letting it tidy up, as a power cut would, and starts it again.
    void crashAndRestart();
    [[nodiscard]] int port() const { return port_; }
    [[nodiscard]] const std::string& home() const { return home_; }
    [[nodiscard]] const std::string& programs() const
    {
        return programs_;
    } ///< folder of the server's programs

  private:
    TestServer() = default;
    void makeCluster(bool lasting);
    void launch();
    void stop(int signal);
    [[nodiscard]] int run(const std::string& program, const std::string& arguments) const;

    std::string programs_;
    std::string home_;
    std::string password_;
    int port_ = 0;
    pid_t server_ = -1;
};

} // namespace quarterstep::test
