// SPDX-License-Identifier: GPL-3.0-or-later
// Long work of a verb: told on a terminal, stopped by Ctrl-C. What was to be written is written at the end,
// so a stop leaves everything as it was.
#pragma once

#include "app/session/jobs.hpp"

namespace quarterstep
{

/// While one lives, the first interrupt stops the work at the next place where it can be stopped, with Error
/// cancelled (1); a second one ends the program. One at a time.
class WatchedWork
{
  public:
    WatchedWork();
    WatchedWork(const WatchedWork&) = delete;
    WatchedWork& operator=(const WatchedWork&) = delete;
    ~WatchedWork();

    /// Progress in per cent on standard error where that is a terminal.
    [[nodiscard]] Job job();
    /// Takes the progress off the terminal, before the answer is shown. A stop after this is too late.
    void done();

  private:
    void tell(std::size_t done, std::size_t of);

    bool terminal_ = false;
    int shown_ = -1; ///< per cent
};

} // namespace quarterstep
