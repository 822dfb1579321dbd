// SPDX-License-Identifier: GPL-3.0-or-later
// Parts every place is built from: a framed part with its title, a table, a line of hints, choices.
#pragma once

#include <QList>
#include <QString>

#include <functional>
#include <initializer_list>
#include <tuple>
#include <vector>

class QAbstractItemModel;
class QButtonGroup;
class QComboBox;
class QFrame;
class QLabel;
class QLayout;
class QPushButton;
class QSpinBox;
class QTableView;
class QVBoxLayout;
class QWidget;

namespace quarterstep
{

/// A frame with a title; `column` is its layout.
[[nodiscard]] QFrame* framed(const QString& name, const QString& title, QVBoxLayout*& column);
/// A table whose rows are chosen one at a time and never edited.
[[nodiscard]] QTableView* tableOf(QAbstractItemModel* model, const QString& name, const QString& accessible);
/// Widths of the first columns in characters, and at least that of their headings; people may change them,
/// the last column takes what is left.
void giveWidths(QTableView& table, std::initializer_list<int> characters);
/// Each column as wide as its widest cell and its heading: what QTableView::resizeColumnsToContents does, but
/// only the cells with most letters are measured; for lists of thousands of rows.
void fitColumns(QTableView& table);
[[nodiscard]] QComboBox* boxNamed(const QString& name, const QString& accessible, const QString& tooltip);
inline constexpr int leastField = 26; ///< px, height of a field for numbers; WCAG 2.2, 2.5.8 asks for 24
[[nodiscard]] QSpinBox* countBox(const QString& name, const QString& spoken, const QString& tooltip,
                                 int least, int most, int value);
/// Buttons of which one is down, numbered from 0: object name, words, tooltip.
[[nodiscard]] QButtonGroup* oneOf(QWidget* owner, QLayout& row,
                                  std::initializer_list<std::tuple<QString, QString, QString>> choices);
/// A button of a row: object name, words, tooltip, what a press does.
struct Act {
    const char* name;
    QString words;
    QString tooltip;
    std::function<void()> run;
};
/// Puts a button for each into the row; pressed ones act while `owner` lives.
[[nodiscard]] QList<QPushButton*> buttonsIn(QLayout& row, QWidget* owner, const std::vector<Act>& acts);
/// A list that shows at least so many lines however little room there is: the page scrolls then.
void giveRoom(QTableView& view, int lines);
/// These columns (index and share) have what the others leave of the width, however wide the table is; none
/// less than its heading needs, which those named after it pay for, and the last at least so many characters.
void shareWidth(QTableView& view, std::vector<std::pair<int, int>> shares, int leastCharacters = 0);
/// Each row as high as its words need at the width their columns have, however wide the table is; for short
/// lists.
void wrapRows(QTableView& view);
/// Each row has room for so many lines: long words go on in the next one.
void giveLines(QTableView& view, int lines);
[[nodiscard]] QLabel* hinted(const QString& text, const QString& name);

} // namespace quarterstep
