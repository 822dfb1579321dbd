// SPDX-License-Identifier: GPL-3.0-or-later
// Every key of the window on one sheet, read from the actions themselves, and the keys inside fields from
// their tooltips: nothing is written twice.
#pragma once

#include <QList>
#include <QPair>
#include <QWidget>

class QTextBrowser;

namespace quarterstep
{

/// One part of the window and its keys: (key, what it does).
struct KeyGroup {
    QString title;
    QList<QPair<QString, QString>> keys;
};

/// The keys of everything in `window`, by the part (accessible name of a widget with the property "keyPart")
/// that holds the action.
[[nodiscard]] QList<KeyGroup> keysOf(const QWidget& window);

class KeySheet final : public QWidget
{
    Q_OBJECT

  public:
    explicit KeySheet(QWidget* parent = nullptr);
    void showKeysOf(const QWidget& window);

  private:
    QTextBrowser* text_;
};

} // namespace quarterstep
