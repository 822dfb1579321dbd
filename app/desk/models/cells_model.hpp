// SPDX-License-Identifier: GPL-3.0-or-later
// A table whose cells were made elsewhere: what is shown of each and what it is.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>

#include <vector>

namespace quarterstep
{

struct MadeCell {
    QString shown;
    QVariant raw;        ///< for tests and sorting; a number stands at the far end of its column
    QString spoken = {}; ///< where the screen reader says something else
};

struct MadeTable {
    QStringList headings;
    std::vector<std::vector<MadeCell>> rows;
};

class CellsModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Role { rawRole = Qt::UserRole };

    explicit CellsModel(QObject* parent = nullptr) : QAbstractTableModel(parent) {}

    void show(MadeTable table);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

  private:
    MadeTable table_;
};

} // namespace quarterstep
