// SPDX-License-Identifier: GPL-3.0-or-later
// What the ledger is measured against: the same statements through SQLite's own interface, and the disk
// alone.
#pragma once

#include <chrono>
#include <cstdint>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace quarterstep::bench
{

/// Nanoseconds of one call.
template <class Work>
double nanosecondsOf(const Work& work)
{
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::nano>(std::chrono::steady_clock::now() - begin).count();
}

double medianOf(std::vector<double> values);
/// Whether the file system of a path keeps its files in memory, so that a sync waits for nothing.
bool isInMemory(const std::string& path);

/// Hands over one pair with the statements of the ledger, prepared once, bytes ready made: nothing is put
/// together, hashed or checked.
class BareLedger
{
  public:
    BareLedger(const std::string& path, std::string payload);
    BareLedger(const BareLedger&) = delete;
    BareLedger& operator=(const BareLedger&) = delete;
    ~BareLedger();
    void handOver(const std::string& line);
    /// Sums of a site's movements on hand after a position: a loop over the rows of the ledger's own
    /// statement, which also reads and adds what is held and in quarantine.
    [[nodiscard]] std::map<std::string, std::int64_t> sumsAfter(const std::string& site,
                                                                std::int64_t position);

  private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

/// Appends so many bytes to a file and has them synced, as a journal does at a commit.
class SyncedFile
{
  public:
    explicit SyncedFile(const std::string& path);
    SyncedFile(const SyncedFile&) = delete;
    SyncedFile& operator=(const SyncedFile&) = delete;
    ~SyncedFile();
    void append(std::size_t bytes);

  private:
    int descriptor_ = -1;
};

} // namespace quarterstep::bench
