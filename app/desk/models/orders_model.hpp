// SPDX-License-Identifier: GPL-3.0-or-later
// Custom orders of this site, newest change first; those of one code when it is looked for.
#pragma once

#include "core/record/life.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

class OrdersModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Column { personColumn, stateColumn, sinceColumn, orderedColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole }; ///< code, state as number, moments in ms

    explicit OrdersModel(QObject* parent = nullptr);

    /// @param find part of a code; empty shows the open orders, otherwise closed ones are shown, too
    void show(std::vector<Order> orders, const QString& find);
    [[nodiscard]] const Order* orderAt(int row) const;
    [[nodiscard]] int rowOf(const std::string& id) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    std::vector<Order> orders_;
};

} // namespace quarterstep
