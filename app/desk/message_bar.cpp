// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/message_bar.hpp"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStyle>

namespace quarterstep
{

MessageBar::MessageBar(QWidget* parent)
    : QFrame(parent), word_(new QLabel(this)), text_(new QLabel(this)), copy_(new QPushButton(this))
{
    setObjectName(QStringLiteral("messageBar"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 6, 8, 6);
    word_->setProperty("role", QStringLiteral("heading"));
    text_->setObjectName(QStringLiteral("messageText"));
    text_->setWordWrap(true);
    text_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    text_->setFocusPolicy(Qt::NoFocus);
    copy_->setObjectName(QStringLiteral("copyCodeButton"));
    copy_->setText(tr("Copy code"));
    copy_->setToolTip(tr("Copies the code of this message, to look it up in the help"));
    auto* close = new QPushButton(tr("Close"), this);
    close->setObjectName(QStringLiteral("closeMessageButton"));
    close->setToolTip(tr("Puts this message away"));
    row->addWidget(word_, 0, Qt::AlignTop);
    row->addWidget(text_, 1);
    row->addWidget(copy_, 0, Qt::AlignTop);
    row->addWidget(close, 0, Qt::AlignTop);
    connect(close, &QPushButton::clicked, this, &MessageBar::dismiss);
    connect(copy_, &QPushButton::clicked, this, &MessageBar::copyCode);
    hide();
}

void MessageBar::showDone(const QString& text)
{
    put(tr("Done"), text, {}, false);
}

void MessageBar::showError(const QString& text, const QString& code)
{
    put(tr("Not done"), text, code, true);
}

void MessageBar::showWaiting(const QString& text)
{
    put(tr("Waiting"), text, {}, false);
    waiting_ = true;
}

void MessageBar::dismissWaiting()
{
    if (waiting_)
        dismiss();
}

void MessageBar::dismiss()
{
    code_.clear();
    hide();
}

QString MessageBar::text() const
{
    return text_->text();
}

void MessageBar::put(const QString& word, const QString& text, const QString& code, bool error)
{
    waiting_ = false;
    code_ = code;
    word_->setText(word);
    text_->setText(text);
    copy_->setVisible(!code.isEmpty());
    setProperty("tone", error ? QStringLiteral("error") : QStringLiteral("done"));
    style()->unpolish(this);
    style()->polish(this);
    show();
}

void MessageBar::copyCode() const
{
    QGuiApplication::clipboard()->setText(code_);
}

} // namespace quarterstep
