// SPDX-License-Identifier: GPL-3.0-or-later
// A wire to a server that is cut at a chosen moment: before a COMMIT gets there, or after it was carried out
// and before the answer comes back. Messages are those of PostgreSQL's protocol, version 3: a simple query is
// 'Q', a length, the text.
#pragma once

#include <atomic>
#include <string>
#include <thread>

namespace quarterstep::test
{

class CuttingProxy
{
  public:
    enum class Cut { never, beforeCommit, afterCommit };

    /// Listens on a port of its own on the loopback address and passes everything on to `port`.
    explicit CuttingProxy(int port);
    CuttingProxy(const CuttingProxy&) = delete;
    CuttingProxy& operator=(const CuttingProxy&) = delete;
    ~CuttingProxy();

    [[nodiscard]] int port() const { return port_; }
    /// Cuts the next wire on which a COMMIT comes along, once.
    void cutNext(Cut cut) { cut_ = cut; }
    [[nodiscard]] int cuts() const { return cuts_; }

  private:
    void serve();
    void pass(int client);

    int listener_ = -1;
    int port_ = 0;
    int target_ = 0;
    std::atomic<Cut> cut_{Cut::never};
    std::atomic<int> cuts_{0};
    std::atomic<bool> ends_{false};
    std::thread thread_;
};

} // namespace quarterstep::test
