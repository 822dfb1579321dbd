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

/// The picture in something that scrolls where the bars are many.
[[nodiscard]] QScrollArea* scrollAround(QWidget* picture, const QString& name);
/// How the kinds of bars are told apart, in words.
[[nodiscard]] QString legendOfBars();
[[nodiscard]] QTableView* barsTableOf(BarsModel* model, const QString& name);

} // namespace quarterstep
