// SPDX-License-Identifier: GPL-3.0-or-later
// Why a pair is judged as it is: every criterion with what was measured, its limit, band and source.
#pragma once

#include "core/fitting/fit.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

class CriteriaModel final : public QAbstractTableModel
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

    explicit CriteriaModel(QObject* parent = nullptr);

    void show(const Fit& fit);
    void clear();

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    [[nodiscard]] QString shown(const CriterionResult& result, int column) const;

    std::vector<CriterionResult> results_;
};

} // namespace quarterstep
