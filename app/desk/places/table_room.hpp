// SPDX-License-Identifier: GPL-3.0-or-later
// How much room a table takes, and gives up, by what stands in it.
#pragma once

#include <vector>

class QTableView;

namespace quarterstep
{

/// No higher than its rows need, and never lower than so many: what is left goes to its neighbours.
void holdHeight(QTableView& view, int leastRows);
/// These columns are as wide as what stands in them and so many characters more, after every change of the
/// whole.
void keepFit(QTableView& view, const std::vector<int>& columns, int gap = 0);
/// Rows have as many lines, at least `least`, as so many characters need in this column.
void wrapIn(QTableView& view, int column, int characters, int least = 1);

} // namespace quarterstep
