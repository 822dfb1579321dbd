// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/watched_work.hpp"

#include <algorithm>
#include <csignal>
#include <cstdio>
#include <unistd.h>

namespace quarterstep
{
namespace
{

std::atomic<bool> interrupted{false}; // a signal handler can reach nothing else
struct sigaction before {
};

void onInterrupt(int /*signal*/)
{
    interrupted = true;
}

} // namespace

WatchedWork::WatchedWork() : terminal_(::isatty(STDERR_FILENO) == 1)
{
    interrupted = false;
    struct sigaction once {
    };
    once.sa_handler = onInterrupt;
    once.sa_flags =
        static_cast<int>(SA_RESETHAND | SA_RESTART); // the second interrupt does what it always did
    ::sigaction(SIGINT, &once, &before);
}

WatchedWork::~WatchedWork()
{
    ::sigaction(SIGINT, &before, nullptr);
    done();
}

void WatchedWork::done()
{
    if (shown_ >= 0)
        std::fputs("\r     \r", stderr);
    shown_ = -1;
}

Job WatchedWork::job()
{
    Job job;
    job.cancelled = &interrupted;
    if (terminal_)
        job.done = [this](std::size_t done, std::size_t of) { tell(done, of); };
    return job;
}

void WatchedWork::tell(std::size_t done, std::size_t of)
{
    const int per = static_cast<int>(100 * done / std::max<std::size_t>(1, of));
    if (per == shown_)
        return;
    shown_ = per;
    std::fprintf(stderr, "\r%3d %%", per);
    std::fflush(stderr);
}

} // namespace quarterstep
