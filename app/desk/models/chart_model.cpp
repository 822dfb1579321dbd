// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/chart_model.hpp"

#include "app/session/wording.hpp"

namespace quarterstep
{

QVariant ChartModel::cell(const ChartDot& dot, int column, int role) const
{
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole)
        return {};
    switch (column) {
    case nameColumn:
        return ltr(dot.name);
    case wordsColumn:
        return dot.words;
    default:
        return dot.beyond == 0   ? tr("inside the limits")
               : dot.beyond == 1 ? tr("beyond the inner limit")
                                 : tr("beyond the outer limit");
    }
}

QString ChartModel::title(int column) const
{
    return column == nameColumn ? tr("Group or run") : column == wordsColumn ? tr("Figures") : tr("Limits");
}

} // namespace quarterstep
