// SPDX-License-Identifier: GPL-3.0-or-later
// The manual in a window: the same pages that `quarterstep help` prints, at the page that belongs to where
// the person is.
#pragma once

#include <QWidget>

class QListWidget;

namespace quarterstep
{

class ManualText;

class HelpWindow final : public QWidget
{
    Q_OBJECT

  public:
    explicit HelpWindow(QWidget* parent = nullptr);

    /// Opens the window at a topic ("matching"); an unknown one shows the first.
    void showTopic(const QString& topic);
    [[nodiscard]] QString topic() const { return topic_; }

    /// The topic for a widget: that of the nearest widget around it which has the property "helpTopic".
    [[nodiscard]] static QString topicFor(const QWidget* widget);

  private:
    void follow(const QUrl& link);

    QListWidget* topics_;
    ManualText* text_;
    QString topic_;
};

} // namespace quarterstep
