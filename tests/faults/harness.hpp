// SPDX-License-Identifier: GPL-3.0-or-later
// Running the driver, and judging what it left behind.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace quarterstep::test
{

/// stock.yaml the driver works on, and how many pieces it holds.
extern const std::string driverStock;
inline constexpr int driverPieces = 2000;

struct DriverRun {
    int exitCode = -1; ///< -1 when killed
    bool killed = false;
    std::vector<std::string> acked; ///< ids of the entries acknowledged
    std::int64_t position = 0;      ///< number of the last one
};

struct DriverOrder {
    std::string folder;
    int handOvers = 1;
    std::string way = "careful";
    std::string fault;       ///< see recorder.cpp; empty = none
    std::string log;         ///< where the recorder writes; empty = it does not record
    int killAfterAcks = -1;  ///< SIGKILL from outside once so many were read
    int killAfterMicros = 0; ///< and so long afterwards
};

[[nodiscard]] DriverRun runDriver(const DriverOrder& order);

/// Adds what "acked N id" lines say.
void readAcks(const std::string& text, DriverRun& run);

/// Opens the folder with our own code and says what is wrong; empty = nothing. stock.yaml must be old or new,
/// never a mixture; every acknowledged entry must be there; the chain must hold; the file must heal to the
/// ledger; and what is gone from the box must have been handed over.
[[nodiscard]] std::string violationIn(const std::string& folder, const DriverRun& run, bool fileMayBeBehind);

/// A folder on a RAM disk where there is one: nothing here waits for a real disk.
class FastFolder
{
  public:
    FastFolder();
    FastFolder(const FastFolder&) = delete;
    FastFolder& operator=(const FastFolder&) = delete;
    ~FastFolder();
    [[nodiscard]] const std::string& path() const { return path_; }

  private:
    std::string path_;
};

/// True when QS_LONG is set: many more states.
[[nodiscard]] bool longRun();

} // namespace quarterstep::test
