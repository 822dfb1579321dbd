// SPDX-License-Identifier: GPL-3.0-or-later
// The stock card of one line: everything that happened to it, newest first.
#pragma once

#include "app/desk/models/rows_model.hpp"
#include "inventory/store/ledger.hpp"

namespace quarterstep
{

class CardModel final : public RowsModel<CardRow>
{
    Q_OBJECT

  public:
    enum Column { whenColumn, whatColumn, changeColumn, balanceColumn, wordsColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole };

    explicit CardModel(QObject* parent = nullptr) : RowsModel(columnCount_, parent) {}

    /// @param rows oldest first, as the ledger has them
    void show(std::vector<CardRow> rows);

  protected:
    [[nodiscard]] QVariant cell(const CardRow& row, int column, int role) const override;
    [[nodiscard]] QString title(int column) const override;

  private:
    [[nodiscard]] static QString wordsOf(const CardRow& row);
};

} // namespace quarterstep
