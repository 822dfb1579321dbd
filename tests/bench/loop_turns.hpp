// SPDX-License-Identifier: GPL-3.0-or-later
// How long one turn of the event loop holds the window, in processor time of its own thread: what others do
// on a busy machine does not count.
#pragma once

#include <functional>

namespace quarterstep
{

/// Processor time of this thread, ms.
[[nodiscard]] double ownMs();
/// Does it and returns the ms of processor time it took.
[[nodiscard]] double ownMsOf(const std::function<void()>& work);

/// Goes on with the loop until it holds, a minute at most; `longest` becomes the longest ms of one turn.
[[nodiscard]] bool waitedFor(const std::function<bool()>& holds, double& longest);
/// Longer than any timer that waits for a pause in typing, ms.
inline constexpr int aPauseMs = 300;
/// Goes on with the loop for that long, so that what is due soon is done: painting, layouts, timers.
void settled(double& longest, int pauseMs = aPauseMs);

} // namespace quarterstep
