// SPDX-License-Identifier: GPL-3.0-or-later
// An inline message above the place it belongs to: what happened, with a code that can be copied. It pushes
// the layout down instead of covering it, and waits until it is closed or replaced.
#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace quarterstep
{

class MessageBar final : public QFrame
{
    Q_OBJECT

  public:
    explicit MessageBar(QWidget* parent = nullptr);

    void showDone(const QString& text);
    /// `code` is the stable code of the finding; empty hides the copy button.
    void showError(const QString& text, const QString& code);
    /// Something is being tried again; told at once, without waiting for the event loop.
    void showWaiting(const QString& text);
    /// Puts away what showWaiting said, unless something else was said since.
    void dismissWaiting();
    void dismiss();
    [[nodiscard]] QString text() const;
    [[nodiscard]] QString code() const { return code_; }

  private:
    void put(const QString& word, const QString& text, const QString& code, bool error);
    void copyCode() const;

    QLabel* word_;
    QLabel* text_;
    QPushButton* copy_;
    QString code_;
    bool waiting_ = false;
};

} // namespace quarterstep
