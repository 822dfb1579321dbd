// SPDX-License-Identifier: GPL-3.0-or-later
// The box as it stands on the table: one cell a bin, rows and places as the bins are named. A cell says its
// bin, what lies in it and how many.
#pragma once

#include "core/fitting/stock_line.hpp"

#include <QAbstractTableModel>
#include <QStringList>

#include <map>

namespace quarterstep
{

class BoxModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Role { rawRole = Qt::UserRole, levelRole };

    explicit BoxModel(QObject* parent = nullptr);

    void show(const std::vector<StockLine>& stock);
    /// Lines of the bin in a cell, in the order of the stock; empty where the box has no bin.
    [[nodiscard]] std::vector<std::string> linesAt(const QModelIndex& index) const;
    /// The cell of a bin; invalid when there is none.
    [[nodiscard]] QModelIndex cellOf(const std::string& bin) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

  private:
    struct Bin {
        std::string name;
        std::vector<std::string> lines;
        QString power; ///< of its only line; empty when several lie in it
        int available = 0;
        int onHand = 0;
        bool low = false;
    };
    [[nodiscard]] const Bin* binAt(const QModelIndex& index) const;

    std::map<std::pair<int, int>, Bin> bins_;
    QStringList rows_;
    std::vector<int> columns_; ///< numbers of places
};

} // namespace quarterstep
