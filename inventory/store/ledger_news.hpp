// SPDX-License-Identifier: GPL-3.0-or-later
// How far a shared ledger has come, without waiting for a server: a thread and a connection of their own look
// twice a second, so that a station sees what others posted within a second, and a server that is slow or
// away holds nobody up.
#pragma once

#include <cstdint>
#include <memory>
#include <string>

namespace quarterstep
{

class LedgerNews
{
  public:
    /// @param location postgresql://…
    explicit LedgerNews(const std::string& location);
    LedgerNews(const LedgerNews&) = delete;
    LedgerNews& operator=(const LedgerNews&) = delete;
    /// Waits for a look that is under way: up to the time a connection attempt may take.
    ~LedgerNews();

    /// Of the last entry when it was looked last; 0 before the first look. While no server answers it stays
    /// as it was.
    [[nodiscard]] std::int64_t position() const;

  private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace quarterstep
