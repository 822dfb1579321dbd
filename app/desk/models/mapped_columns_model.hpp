// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of somebody else's table: heading, an example, and what each is taken for, which people choose.
#pragma once

#include "app/session/exchange.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

class MappedColumnsModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Column { headingColumn, exampleColumn, meaningColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole }; ///< heading, cell, target as in a map

    explicit MappedColumnsModel(QObject* parent = nullptr);

    void show(const MappedTable& table);
    void clear();
    [[nodiscard]] const std::vector<MappedColumn>& columns() const { return columns_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    /// A target, as Qt::EditRole, of the meaning alone.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  Q_SIGNALS:
    /// Somebody chose another meaning.
    void meaningChosen();

  private:
    std::vector<MappedColumn> columns_;
    std::vector<std::string> examples_;
};

} // namespace quarterstep
