// SPDX-License-Identifier: GPL-3.0-or-later
// The power plane as a table: the same values, for those who read rather than look.
#pragma once

#include "app/desk/models/rows_model.hpp"
#include "app/desk/plots/plot_data.hpp"

namespace quarterstep
{

struct PlaneRow {
    QString what;
    PlanePoint at;
    std::optional<int> count;
};

class PlaneModel final : public RowsModel<PlaneRow>
{
    Q_OBJECT

  public:
    enum Column { whatColumn, meanColumn, astigmatismColumn, countColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole };

    explicit PlaneModel(QObject* parent = nullptr) : RowsModel(columnCount_, parent) {}

    void show(const PlotData& data);

  protected:
    [[nodiscard]] QVariant cell(const PlaneRow& row, int column, int role) const override;
    [[nodiscard]] QString title(int column) const override;
};

} // namespace quarterstep
