// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/chart_model.hpp"

#include "app/session/wording.hpp"

namespace quarterstep
{

void ChartModel::show(const ChartData& chart)
{
    beginResetModel();
    dots_ = chart.dots;
    endResetModel();
}

int ChartModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(dots_.size());
}

int ChartModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columnCount_;
}

QVariant ChartModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) ||
        (role != Qt::DisplayRole && role != Qt::AccessibleTextRole))
        return {};
    const auto& dot = dots_[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
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

QVariant ChartModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    return section == nameColumn ? tr("Group or run") : section == wordsColumn ? tr("Figures") : tr("Limits");
}

} // namespace quarterstep
