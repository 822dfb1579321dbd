// SPDX-License-Identifier: GPL-3.0-or-later
// What stands around a picture of bars wherever there is one: it scrolls, it has a legend and its table.
#pragma once

#include <QString>

class QScrollArea;
class QTableView;
class QWidget;

namespace quarterstep
{

class BarsModel;
struct ShareBars;

/// What may be long in something that scrolls; at least so many lines of it are seen.
[[nodiscard]] QScrollArea* scrollAround(QWidget* inside, const QString& name, int lines = 5);
/// How the kinds of bars are told apart, in words.
[[nodiscard]] QString legendOf(const ShareBars& picture);
[[nodiscard]] QTableView* barsTableOf(BarsModel* model, const QString& name);

} // namespace quarterstep
