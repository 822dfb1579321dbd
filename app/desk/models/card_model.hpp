// SPDX-License-Identifier: GPL-3.0-or-later
// The stock card of one line: everything that happened to it, newest first.
#pragma once

#include "inventory/store/ledger.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

class CardModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Column { whenColumn, whatColumn, changeColumn, balanceColumn, wordsColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole };

    explicit CardModel(QObject* parent = nullptr);

    /// @param rows oldest first, as the ledger has them
    void show(std::vector<CardRow> rows);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    [[nodiscard]] static QString wordsOf(const CardRow& row);

    std::vector<CardRow> rows_; ///< newest first
};

} // namespace quarterstep
