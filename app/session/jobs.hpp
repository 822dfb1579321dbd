// SPDX-License-Identifier: GPL-3.0-or-later
// Long work on two threads, with progress and cancel. The work itself is pure and lives in core.
#pragma once

#include <atomic>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <thread>
#include <vector>

namespace quarterstep
{

/// What long work tells and asks. Both may be left empty. `done` is called on the thread that began the work.
struct Job {
    std::function<void(std::size_t done, std::size_t of)> done;
    const std::atomic<bool>* cancelled = nullptr;

    [[nodiscard]] bool stopped() const { return cancelled != nullptr && cancelled->load(); }
};

/// Thrown when somebody cancelled: Error cancelled (exit 1), nothing was written.
void throwIfStopped(const Job& job);
/// Tells how far the work is, and throws as throwIfStopped. For work that is told in one place.
void tellFar(const Job& job, std::int64_t done, std::int64_t of);

/// Does `work(i)` for every i below `count`, on two threads. Each piece must leave the others alone; what it
/// throws is thrown here. Throws as throwIfStopped.
void inParallel(std::size_t count, const Job& job, const std::function<void(std::size_t)>& work);

/// A few long pieces of work, each of which tells how far it is: told on as one, in thousandths, on the
/// thread that made this.
class PiecesDone
{
  public:
    PiecesDone(std::size_t pieces, const Job& job);
    /// Part of a piece that is done, 0 to 1. False: stop.
    bool tell(std::size_t piece, double part);
    /// The job without progress, for inParallel: whole pieces say little.
    [[nodiscard]] Job quiet() const;

  private:
    const Job& job_;
    std::vector<std::atomic<int>> thousandths_;
    std::thread::id maker_;
};

} // namespace quarterstep
