// SPDX-License-Identifier: GPL-3.0-or-later
// A practice hand-over on the sample: one step at a time stands above the work and goes on as soon as it is
// done. It watches the window only; the work is the real work.
#pragma once

#include <QFrame>

#include <functional>
#include <vector>

class QLabel;
class QPushButton;
class QTimer;

namespace quarterstep
{

class PracticeStrip final : public QFrame
{
    Q_OBJECT

  public:
    /// Watches widgets of `window` by their object names.
    explicit PracticeStrip(QWidget& window, QWidget* parent = nullptr);

    void begin();
    void leave();
    [[nodiscard]] bool running() const { return step_ >= 0; }
    [[nodiscard]] int step() const { return step_; }
    [[nodiscard]] int steps() const { return static_cast<int>(steps_.size()); }
    /// A person was served, or served again after a hand-over was taken back.
    void stockMoved();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Step {
        QString words;
        std::function<bool()> done;
    };

    void makeSteps();
    void look();
    void show(int step);
    void giveWordsRoom();
    [[nodiscard]] QString textIn(const char* name) const;
    [[nodiscard]] bool allTicked() const;

    QWidget& window_;
    std::vector<Step> steps_;
    QLabel* count_;
    QLabel* words_;
    QPushButton* next_;
    QPushButton* leave_;
    QTimer* timer_;
    int step_ = -1;
    int moves_ = 0; ///< of the stock since this step began
};

} // namespace quarterstep
