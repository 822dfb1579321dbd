// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of the stock with their counts, how long they last, and what the keep levels say of them.
#pragma once

#include "core/record/stock_figures.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

/// Where a line stands against what should be kept. Lines without keep levels are only out or there.
enum class StockLevel { out, low, enough, plenty };

/// Available pieces against keep.least and keep.most.
[[nodiscard]] StockLevel levelOf(const StockLine& line);
[[nodiscard]] QString levelWords(StockLevel level);
/// The power of a line as its label says it, kept left-to-right; empty for frames and other things.
[[nodiscard]] QString linePowers(const StockLine& line);

class LinesModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Column {
        binColumn,
        lineColumn,
        powerColumn,
        availableColumn,
        levelColumn,
        onHandColumn,
        asideColumn, ///< held and quarantined
        campsColumn,
        columnCount_
    };
    enum Role { rawRole = Qt::UserRole };

    explicit LinesModel(QObject* parent = nullptr);

    void show(std::vector<StockLine> stock, StockFigures figures);
    [[nodiscard]] const StockLine& lineAt(int row) const { return stock_[static_cast<std::size_t>(row)]; }
    /// Row of a line by name, or -1.
    [[nodiscard]] int rowOf(const std::string& name) const;
    [[nodiscard]] const CampFigures& figures() const { return figures_.camp; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    [[nodiscard]] QString shown(const QModelIndex& index) const;
    [[nodiscard]] QVariant raw(const QModelIndex& index) const;
    [[nodiscard]] QString tooltip(int row) const;

    std::vector<StockLine> stock_;
    StockFigures figures_;
    std::vector<QString> bins_; ///< what the lines are sorted by, made once: sorting asks again and again
};

} // namespace quarterstep
