// SPDX-License-Identifier: GPL-3.0-or-later
// Asks for the PIN of a role, in a strip above the work, before something is written for it; who is asked for
// what is the session's table. A PIN once given is good until the place is left, or until nobody acted by it
// for ten minutes: a person takes four to seven at the table, so that a hand at work is asked once, and a
// table where nobody sits is closed again.
#pragma once

#include "app/session/pins.hpp"

#include <QDeadlineTimer>
#include <QFrame>
#include <QPointer>

#include <chrono>
#include <functional>

class QLabel;
class QLineEdit;

namespace quarterstep
{

class Camp;
class MessageBar;

class PinGuard final : public QFrame
{
    Q_OBJECT

  public:
    explicit PinGuard(MessageBar& messages, QWidget* parent = nullptr);

    /// The camp whose ledger keeps the PINs; null: none is asked for. It must live as long as it is set.
    void take(const Camp* camp);
    /// Carries `act` out for that role: at once where no PIN is set or it was given lately, else when it has
    /// been typed. Between question and PIN nothing but this strip and the head of the window answers, so
    /// that what is done is what was asked for.
    void run(Role role, std::function<void()> act);
    /// The question goes, what was asked for is not done.
    void withdraw();
    /// The place was left: that too, and no PIN is remembered.
    void forget();
    /// How long a PIN is good after the last act by it.
    void rememberFor(std::chrono::milliseconds time) { memory_ = time; }

  Q_SIGNALS:
    /// The question stands there, or has gone.
    void asking(bool asks);
    /// It went without a PIN: what was asked for is not done.
    void withdrawn();

  private:
    [[nodiscard]] bool mustAsk(Role role);
    void tryPin();
    void close();

    MessageBar& messages_;
    const Camp* camp_ = nullptr;
    std::chrono::milliseconds memory_ = std::chrono::minutes{10};
    std::map<Role, QDeadlineTimer> given_;
    Role role_ = Role::optician;
    std::function<void()> act_; ///< waits for the PIN
    QPointer<QWidget> before_;  ///< had the keyboard when the question came
    QLabel* words_;
    QLineEdit* pin_;
};

} // namespace quarterstep
