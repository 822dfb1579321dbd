// SPDX-License-Identifier: GPL-3.0-or-later
// The frame of a table whose rows are values of one kind: sizes, checks and titles are here; what a cell
// shows is in the model that derives from it. A table with another shape (a box of bins) derives from Qt's
// class itself.
#pragma once

#include <QAbstractTableModel>

#include <vector>

namespace quarterstep
{

template <class Row>
class RowsModel : public QAbstractTableModel
{
  public:
    RowsModel(int columns, QObject* parent) : QAbstractTableModel(parent), columns_(columns) {}

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const final
    {
        return parent.isValid() ? 0 : static_cast<int>(rows_.size());
    }
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const final
    {
        return parent.isValid() ? 0 : columns_;
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const final
    {
        return checkIndex(index, CheckIndexOption::IndexIsValid) ? cell(at(index.row()), index.column(), role)
                                                                 : QVariant();
    }
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const final
    {
        if (orientation != Qt::Horizontal || section < 0 || section >= columns_)
            return {};
        if (role == Qt::TextAlignmentRole && !rows_.empty()) // a heading stands over its figures
            return cell(rows_.front(), section, role);
        return role == Qt::DisplayRole ? QVariant(title(section)) : QVariant();
    }

  protected:
    [[nodiscard]] virtual QVariant cell(const Row& row, int column, int role) const = 0;
    [[nodiscard]] virtual QString title(int column) const = 0;

    void setRows(std::vector<Row> rows)
    {
        beginResetModel();
        rows_ = std::move(rows);
        endResetModel();
    }
    [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }
    [[nodiscard]] const Row& at(int row) const { return rows_[static_cast<std::size_t>(row)]; }

  private:
    int columns_;
    std::vector<Row> rows_;
};

/// Figures stand at the end of their cell.
[[nodiscard]] inline QVariant atTheEnd()
{
    return QVariant::fromValue(Qt::Alignment(Qt::AlignTrailing | Qt::AlignVCenter));
}

} // namespace quarterstep
