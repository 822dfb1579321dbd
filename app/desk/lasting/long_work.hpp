// SPDX-License-Identifier: GPL-3.0-or-later
// Long work on a thread of its own: values in, a value out; the bar says what is done and how far, and stops
// it when asked. The event loop goes on meanwhile.
#pragma once

#include <QFrame>

#include <atomic>
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

/// What the work tells of itself, from its own thread.
class WorkProgress
{
  public:
    /// False when somebody asked to stop: the work ends as soon as it can, by returning or throwing.
    bool reached(int done, int total)
    {
        done_ = done;
        total_ = total;
        return !stopped_;
    }
    [[nodiscard]] bool stopped() const { return stopped_; }
    [[nodiscard]] int done() const { return done_; }
    [[nodiscard]] int total() const { return total_; } ///< 0: not known
    void stop() { stopped_ = true; }

  private:
    std::atomic<int> done_{0};
    std::atomic<int> total_{0};
    std::atomic<bool> stopped_{false};
};

class LongWork final : public QFrame
{
    Q_OBJECT

  public:
    using Work = std::function<void(WorkProgress&)>;
    /// What the work threw, or null; `stopped`: somebody asked to stop it.
    using Ended = std::function<void(std::exception_ptr problem, bool stopped)>;

    explicit LongWork(QWidget* parent = nullptr);
    /// Asks the work to stop and waits for it; `ended` is not called any more.
    ~LongWork() override;

    [[nodiscard]] bool running() const { return progress_ != nullptr; }
    /// Runs `work` elsewhere and `ended` here. One at a time: false when another one is running. What the
    /// work uses must belong to it (captured by value).
    bool start(const QString& words, Work work, Ended ended);
    /// Asks the work to stop.
    void stop();

  Q_SIGNALS:
    void workDone(QPrivateSignal);

  private:
    void tell();
    void finish();

    std::shared_ptr<WorkProgress> progress_;
    std::shared_ptr<std::exception_ptr> problem_; ///< what the work threw; read once it is done
    std::thread thread_;
    Ended ended_;
    QLabel* words_;
    QProgressBar* bar_;
    QPushButton* stop_;
    QTimer* look_;
    QTimer* appear_;
};

} // namespace quarterstep
