// SPDX-License-Identifier: GPL-3.0-or-later
// Long work on a thread of its own: values in, a value out; the bar says what is done and how far, and stops
// it when asked. The event loop goes on meanwhile. One work at a time, so that a small machine stays quick:
// what is asked for meanwhile waits its turn, and the bar names it. What the work is given is the Job that
// every long use case takes (app/session/jobs.hpp); the command line makes its own (WatchedWork), told on a
// terminal and stopped by a signal.
#pragma once

#include "app/session/jobs.hpp"

#include <QFrame>

#include <atomic>
#include <cstdint>
#include <deque>
#include <exception>
#include <functional>
#include <memory>
#include <thread>

class QLabel;
class QProgressBar;
class QPushButton;
class QTimer;

namespace quarterstep
{

class LongWork final : public QFrame
{
    Q_OBJECT

  public:
    /// Ends as soon as it can when the job is stopped, by returning or throwing.
    using Work = std::function<void(const Job&)>;
    /// What the work threw, or null; `stopped`: somebody asked to stop it.
    using Ended = std::function<void(std::exception_ptr problem, bool stopped)>;

    explicit LongWork(QWidget* parent = nullptr);
    /// Asks the work to stop and waits for it; `ended` is not called any more. What waits is not begun.
    ~LongWork() override;

    [[nodiscard]] bool running() const { return progress_ != nullptr; }
    /// Names a work that was asked for; never 0.
    using Ticket = std::uint64_t;
    /// Runs `work` elsewhere and `ended` here, after all that was asked for before. What the work uses must
    /// belong to it (captured by value).
    Ticket start(const QString& words, Work work, Ended ended);
    /// Asks the work that runs to stop; the next one begins.
    void stop();
    /// Asks that one to stop. One that waits is not begun and ends as stopped, soon.
    void stop(Ticket ticket);

  Q_SIGNALS:
    /// The work takes so long that its bar came into sight.
    void shown();
    void workDone(QPrivateSignal);

  private:
    struct Progress {
        std::atomic<int> done{0};
        std::atomic<int> total{0}; ///< 0: not known
        std::atomic<bool> stopped{false};
    };
    struct Asked {
        Ticket ticket = 0;
        QString words;
        Work work;
        Ended ended;
    };
    void beginNext();
    void run(Work work);
    void tell();
    void tellWaiting();
    void finish();

    std::shared_ptr<Progress> progress_;          ///< written by the other thread
    std::shared_ptr<std::exception_ptr> problem_; ///< what the work threw; read once it is done
    std::thread thread_;
    Asked now_; ///< its work has gone to the thread
    std::deque<Asked> waiting_;
    Ticket last_ = 0;
    QLabel* words_;
    QLabel* next_;
    QProgressBar* bar_;
    QPushButton* stop_;
    QTimer* look_;
    QTimer* appear_;
};

} // namespace quarterstep
