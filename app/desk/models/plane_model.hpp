// SPDX-License-Identifier: GPL-3.0-or-later
// The power plane as a table: the same values, for those who read rather than look.
#pragma once

#include "app/desk/plots/plot_data.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

class PlaneModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Column { whatColumn, meanColumn, astigmatismColumn, countColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole };

    explicit PlaneModel(QObject* parent = nullptr);

    void show(const PlotData& data);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    struct Row {
        QString what;
        PlanePoint at;
        std::optional<int> count;
    };

    std::vector<Row> rows_;
};

} // namespace quarterstep
