// SPDX-License-Identifier: GPL-3.0-or-later
// The numbers of a chart of the audit, one row a dot.
#pragma once

#include "app/desk/plots/chart_data.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

class ChartModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Column { nameColumn, wordsColumn, beyondColumn, columnCount_ };

    explicit ChartModel(QObject* parent = nullptr) : QAbstractTableModel(parent) {}

    void show(const ChartData& chart);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    std::vector<ChartDot> dots_;
};

} // namespace quarterstep
