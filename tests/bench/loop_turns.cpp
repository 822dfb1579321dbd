// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/loop_turns.hpp"

#include <QApplication>
#include <QElapsedTimer>

#include <algorithm>
#include <chrono>
#include <ctime>
#include <thread>

namespace quarterstep
{

double ownMs()
{
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    constexpr double msOfASecond = 1e3;
    constexpr double msOfANanosecond = 1e-6;
    return static_cast<double>(now.tv_sec) * msOfASecond + static_cast<double>(now.tv_nsec) * msOfANanosecond;
}

double ownMsOf(const std::function<void()>& work)
{
    const double before = ownMs();
    work();
    return ownMs() - before;
}

bool waitedFor(const std::function<bool()>& holds, double& longest)
{
    constexpr int atMostMs = 60'000;
    QElapsedTimer timer;
    timer.start();
    while (!holds() && timer.elapsed() < atMostMs)
        longest =
            std::max(longest, ownMsOf([] {
                         QApplication::processEvents(QEventLoop::WaitForMoreEvents | QEventLoop::AllEvents);
                     }));
    return holds();
}

void settled(double& longest, int pauseMs)
{
    constexpr auto aBlink = std::chrono::milliseconds(2);
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < pauseMs) {
        longest = std::max(longest, ownMsOf([] { QApplication::processEvents(QEventLoop::AllEvents); }));
        std::this_thread::sleep_for(aBlink);
    }
}

} // namespace quarterstep
