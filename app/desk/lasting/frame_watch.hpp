// SPDX-License-Identifier: GPL-3.0-or-later
// Watches the event loop: how long it was away at a stretch. A window whose loop is away for more than 50 ms
// misses frames that people see.
#pragma once

#include <QElapsedTimer>
#include <QObject>

#include <vector>

class QTimer;

namespace quarterstep
{

/// Longest time the loop may be away, ms.
inline constexpr double longestFrameMs = 50.0;

class FrameWatch final : public QObject
{
    Q_OBJECT

  public:
    /// Begins to watch the loop of this thread.
    explicit FrameWatch(QObject* parent = nullptr);

    /// Forgets what was seen and begins anew.
    void begin();
    /// The longest time the loop was away since the beginning, ms, the time up to now included.
    [[nodiscard]] double longestMs() const;
    /// How many times it was away for longer than that.
    [[nodiscard]] int longerThan(double ms = longestFrameMs) const;

  private:
    void beat();
    [[nodiscard]] double sinceBeatMs() const;

    QTimer* timer_;
    QElapsedTimer since_;
    std::vector<double> away_; ///< ms, those above a millisecond
};

} // namespace quarterstep
