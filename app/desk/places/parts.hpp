// SPDX-License-Identifier: GPL-3.0-or-later
// Parts every place is built from: a framed part with its title, a table, a line of hints.
#pragma once

#include <QString>

class QAbstractItemModel;
class QFrame;
class QLabel;
class QTableView;
class QVBoxLayout;

namespace quarterstep
{

/// A frame with a title; `column` is its layout.
[[nodiscard]] QFrame* framed(const QString& name, const QString& title, QVBoxLayout*& column);
/// A table whose rows are chosen one at a time and never edited.
[[nodiscard]] QTableView* tableOf(QAbstractItemModel* model, const QString& name, const QString& accessible);
/// A list that shows at least so many lines however little room there is: the page scrolls then.
void giveRoom(QTableView& view, int lines);
[[nodiscard]] QLabel* hinted(const QString& text, const QString& name);

} // namespace quarterstep
