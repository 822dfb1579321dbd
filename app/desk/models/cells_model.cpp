// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/cells_model.hpp"

namespace quarterstep
{

void CellsModel::show(MadeTable table)
{
    beginResetModel();
    table_ = std::move(table);
    endResetModel();
}

int CellsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(table_.rows.size());
}

int CellsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(table_.headings.size());
}

QVariant CellsModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& cell =
        table_.rows[static_cast<std::size_t>(index.row())][static_cast<std::size_t>(index.column())];
    switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole:
        return cell.shown;
    case Qt::AccessibleTextRole:
        return cell.spoken.isEmpty() ? cell.shown : cell.spoken;
    case Qt::TextAlignmentRole:
        if (cell.raw.isValid() && cell.raw.typeId() != QMetaType::QString)
            return QVariant::fromValue(Qt::Alignment(Qt::AlignTrailing | Qt::AlignVCenter));
        return {};
    case rawRole:
        return cell.raw.isValid() ? cell.raw : QVariant(cell.shown);
    default:
        return {};
    }
}

QVariant CellsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    return orientation == Qt::Horizontal && role == Qt::DisplayRole ? table_.headings.value(section)
                                                                    : QVariant();
}

} // namespace quarterstep
