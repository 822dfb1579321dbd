// SPDX-License-Identifier: GPL-3.0-or-later
// The numbers of a chart of the audit, one row a dot.
#pragma once

#include "app/desk/models/rows_model.hpp"
#include "app/desk/plots/chart_data.hpp"

namespace quarterstep
{

class ChartModel final : public RowsModel<ChartDot>
{
    Q_OBJECT

  public:
    enum Column { nameColumn, wordsColumn, beyondColumn, columnCount_ };

    explicit ChartModel(QObject* parent = nullptr) : RowsModel(columnCount_, parent) {}

    void show(const ChartData& chart) { setRows(chart.dots); }

  protected:
    [[nodiscard]] QVariant cell(const ChartDot& dot, int column, int role) const override;
    [[nodiscard]] QString title(int column) const override;
};

} // namespace quarterstep
