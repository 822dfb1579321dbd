// SPDX-License-Identifier: GPL-3.0-or-later
// Why a pair is judged as it is: every criterion with what was measured, its limit, band and source.
#pragma once

#include "app/desk/models/rows_model.hpp"
#include "core/fitting/fit.hpp"

namespace quarterstep
{

class CriteriaModel final : public RowsModel<CriterionResult>
{
    Q_OBJECT

  public:
    enum Column {
        nameColumn,
        measuredColumn,
        limitColumn,
        unitColumn,
        bandColumn,
        sourceColumn,
        columnCount_
    };
    enum Role { rawRole = Qt::UserRole };

    explicit CriteriaModel(QObject* parent = nullptr) : RowsModel(columnCount_, parent) {}

    void show(const Fit& fit) { setRows(fit.criteria); }
    void clear() { setRows({}); }

  protected:
    [[nodiscard]] QVariant cell(const CriterionResult& result, int column, int role) const override;
    [[nodiscard]] QString title(int column) const override;

  private:
    [[nodiscard]] QString shown(const CriterionResult& result, int column) const;
};

} // namespace quarterstep
