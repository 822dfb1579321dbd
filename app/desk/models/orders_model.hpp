// SPDX-License-Identifier: GPL-3.0-or-later
// Custom orders of this site, newest change first; those of one code when it is looked for.
#pragma once

#include "app/desk/models/rows_model.hpp"
#include "core/record/life.hpp"

namespace quarterstep
{

class OrdersModel final : public RowsModel<Order>
{
    Q_OBJECT

  public:
    enum Column { personColumn, stateColumn, sinceColumn, orderedColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole }; ///< code, state as number, moments in ms

    explicit OrdersModel(QObject* parent = nullptr) : RowsModel(columnCount_, parent) {}

    /// @param find part of a code; empty shows the open orders, otherwise closed ones are shown, too
    void show(std::vector<Order> orders, const QString& find);
    [[nodiscard]] const Order* orderAt(int row) const;
    [[nodiscard]] int rowOf(const std::string& id) const;

  protected:
    [[nodiscard]] QVariant cell(const Order& order, int column, int role) const override;
    [[nodiscard]] QString title(int column) const override;
};

} // namespace quarterstep
