// SPDX-License-Identifier: GPL-3.0-or-later
// A table whose cells were made elsewhere: what is shown of each and what it is.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>

#include <vector>

namespace quarterstep
{

struct RowsCell {
    QString shown;
    QVariant raw;        ///< for tests and sorting; a number stands at the far end of its column
    QString spoken = {}; ///< where the screen reader says something else
};

struct RowsTable {
    QStringList headings;
    std::vector<std::vector<RowsCell>> rows;
};

class RowsModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Role { rawRole = Qt::UserRole };

    explicit RowsModel(QObject* parent = nullptr) : QAbstractTableModel(parent) {}

    void show(RowsTable table);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

  private:
    RowsTable table_;
};

} // namespace quarterstep
