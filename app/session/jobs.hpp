// SPDX-License-Identifier: GPL-3.0-or-later
// Long work on two threads, with progress and cancel. The work itself is pure and lives in core.
#pragma once

#include <atomic>
#include <cstddef>
#include <functional>

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

/// Does `work(i)` for every i below `count`, on two threads. Each piece must leave the others alone; what it
/// throws is thrown here. Throws as throwIfStopped.
void inParallel(std::size_t count, const Job& job, const std::function<void(std::size_t)>& work);

} // namespace quarterstep
