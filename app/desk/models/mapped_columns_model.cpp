// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/mapped_columns_model.hpp"

#include "app/desk/bringing/meaning_words.hpp"
#include "app/session/wording.hpp"

#include <algorithm>

namespace quarterstep
{

MappedColumnsModel::MappedColumnsModel(QObject* parent) : QAbstractTableModel(parent) {}

void MappedColumnsModel::show(const MappedTable& table)
{
    beginResetModel();
    columns_ = table.map.columns;
    examples_ = table.examples;
    examples_.resize(columns_.size());
    endResetModel();
}

void MappedColumnsModel::clear()
{
    show({});
}

int MappedColumnsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(columns_.size());
}

int MappedColumnsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columnCount_;
}

QVariant MappedColumnsModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto at = static_cast<std::size_t>(index.row());
    const auto& [heading, target] = columns_[at];
    if (role == Qt::AccessibleTextRole)
        return QStringLiteral("%1: %2").arg(QString::fromStdString(heading), meaningWords(target));
    if (role == Qt::ToolTipRole)
        return index.column() == meaningColumn ? tr("What this column holds; Enter or a click changes it")
                                               : QVariant();
    const bool raw = role == rawRole || role == Qt::EditRole;
    if (!raw && role != Qt::DisplayRole)
        return {};
    const auto& text = index.column() == headingColumn   ? heading
                       : index.column() == exampleColumn ? examples_[at]
                                                         : target;
    if (raw)
        return QString::fromStdString(text);
    return index.column() == meaningColumn ? meaningWords(text) : ltr(text);
}

bool MappedColumnsModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    if (role != Qt::EditRole || !checkIndex(index, CheckIndexOption::IndexIsValid) ||
        index.column() != meaningColumn)
        return false;
    const auto chosen = value.toString().toStdString();
    const auto targets = mapTargets();
    auto& target = columns_[static_cast<std::size_t>(index.row())].target;
    if (std::find(targets.begin(), targets.end(), chosen) == targets.end())
        return false;
    if (target == chosen)
        return true;
    target = chosen;
    Q_EMIT dataChanged(index, index);
    Q_EMIT meaningChosen();
    return true;
}

Qt::ItemFlags MappedColumnsModel::flags(const QModelIndex& index) const
{
    const auto flags = QAbstractTableModel::flags(index);
    return index.isValid() && index.column() == meaningColumn ? flags | Qt::ItemIsEditable : flags;
}

QVariant MappedColumnsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case headingColumn:
        return tr("Heading");
    case exampleColumn:
        return tr("Example");
    case meaningColumn:
        return tr("Taken for");
    default:
        return {};
    }
}

} // namespace quarterstep
