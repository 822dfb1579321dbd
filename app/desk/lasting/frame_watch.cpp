// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/lasting/frame_watch.hpp"

#include <QTimer>

#include <algorithm>

namespace quarterstep
{

FrameWatch::FrameWatch(QObject* parent) : QObject(parent), timer_(new QTimer(this))
{
    timer_->setTimerType(Qt::PreciseTimer);
    timer_->setInterval(1);
    connect(timer_, &QTimer::timeout, this, &FrameWatch::beat);
    begin();
}

void FrameWatch::begin()
{
    away_.clear();
    since_.start();
    timer_->start();
}

double FrameWatch::sinceBeatMs() const
{
    constexpr double nanosecondsPerMs = 1e6;
    return static_cast<double>(since_.nsecsElapsed()) / nanosecondsPerMs;
}

void FrameWatch::beat()
{
    if (const double ms = sinceBeatMs(); ms > 1.0)
        away_.push_back(ms);
    since_.start();
}

double FrameWatch::longestMs() const
{
    const auto longest = std::max_element(away_.begin(), away_.end());
    return std::max(sinceBeatMs(), longest == away_.end() ? 0.0 : *longest);
}

int FrameWatch::longerThan(double ms) const
{
    return static_cast<int>(
        std::count_if(away_.begin(), away_.end(), [ms](double away) { return away > ms; }) +
        (sinceBeatMs() > ms ? 1 : 0));
}

} // namespace quarterstep
