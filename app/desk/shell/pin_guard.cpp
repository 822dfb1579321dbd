// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/shell/pin_guard.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/session/camp.hpp"

#include <QAction>
#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <utility>

namespace quarterstep
{

namespace
{
QString questionTo(Role role)
{
    switch (role) {
    case Role::optician:
        return PinGuard::tr("This needs the PIN of the optician.");
    case Role::keeper:
        return PinGuard::tr("This needs the PIN of the keeper.");
    case Role::supervisor:
        break;
    }
    return PinGuard::tr("This needs the PIN of the supervisor.");
}
} // namespace

PinGuard::PinGuard(MessageBar& messages, QWidget* parent)
    : QFrame(parent), messages_(messages), words_(new QLabel(this)), pin_(new QLineEdit(this))
{
    setObjectName(QStringLiteral("pinStrip"));
    setProperty("panel", true);
    setProperty("keyPart", tr("A PIN is asked for"));
    setProperty("helpTopic", QStringLiteral("privacy"));
    words_->setObjectName(QStringLiteral("pinQuestion"));
    words_->setProperty("role", QStringLiteral("heading"));
    words_->setBuddy(pin_);
    pin_->setObjectName(QStringLiteral("pinEdit"));
    pin_->setAccessibleName(tr("PIN"));
    pin_->setEchoMode(QLineEdit::Password);
    pin_->setMaxLength(static_cast<int>(longestPin));
    pin_->setToolTip(tr("It is good until this place is left, or ten minutes after the last use"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 6, 8, 6);
    row->addWidget(words_);
    row->addWidget(pin_, 1);
    const std::tuple<QString, QString, QString, QList<QKeySequence>, void (PinGuard::*)()> commands[] = {
        {QStringLiteral("pinGoOnButton"),
         tr("Go on"),
         tr("Does what was asked for (Enter)"),
         {QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Enter)},
         &PinGuard::tryPin},
        {QStringLiteral("pinLeaveButton"),
         tr("Do not"),
         tr("Nothing is written (Escape)"),
         {QKeySequence(Qt::Key_Escape)},
         &PinGuard::withdraw}};
    for (const auto& [name, words, tooltip, keys, run] : commands) {
        auto* action = new QAction(words, this);
        action->setShortcuts(keys);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(action, &QAction::triggered, this, run);
        addAction(action);
        auto* button = new QPushButton(words, this);
        button->setObjectName(name);
        button->setToolTip(tooltip);
        connect(button, &QPushButton::clicked, action, &QAction::trigger);
        row->addWidget(button);
    }
    hide();
}

void PinGuard::take(const Camp* camp)
{
    camp_ = camp;
    forget();
}

bool PinGuard::mustAsk(Role role)
{
    if (camp_ == nullptr || !camp_->hasLedger() || !hasPin(camp_->ledger(), role))
        return false;
    const auto given = given_.find(role);
    if (given == given_.end() || given->second.hasExpired())
        return true;
    given->second.setRemainingTime(memory_);
    return false;
}

void PinGuard::run(Role role, std::function<void()> act)
{
    bool asks = false;
    if (!runCommand(messages_, [&] { asks = mustAsk(role); }))
        return;
    if (!asks)
        return act();
    role_ = role;
    act_ = std::move(act);
    before_ = QApplication::focusWidget();
    words_->setText(questionTo(role));
    pin_->setAccessibleName(questionTo(role));
    pin_->clear();
    Q_EMIT asking(true);
    show();
    pin_->setFocus();
}

/// Another PIN than the right one leaves the question where it is.
void PinGuard::tryPin()
{
    if (!act_)
        return;
    const auto typed = pin_->text().toStdString();
    pin_->clear();
    if (!runCommand(messages_, [this, &typed] { requireFit(camp_->ledger(), role_, typed); }))
        return pin_->setFocus();
    given_[role_].setRemainingTime(memory_);
    messages_.dismiss();
    const auto act = std::exchange(act_, nullptr);
    close();
    act();
}

void PinGuard::withdraw()
{
    if (!std::exchange(act_, nullptr))
        return;
    messages_.dismiss();
    close();
    Q_EMIT withdrawn();
}

/// The keyboard goes back to where it was.
void PinGuard::close()
{
    pin_->clear();
    hide();
    Q_EMIT asking(false);
    if (before_)
        before_->setFocus();
}

void PinGuard::forget()
{
    given_.clear();
    withdraw();
}

} // namespace quarterstep
