// SPDX-License-Identifier: GPL-3.0-or-later
// What an audit found, one row a finding, in the order of the ledger.
#pragma once

#include "app/session/audit_cases.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

class FindingsModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Column {
        dayColumn,
        personColumn,
        purposeColumn,
        pairColumn,
        classColumn,
        detailColumn,
        slipColumn,
        columnCount_
    };
    enum Role { rawRole = Qt::UserRole, classRole }; ///< classRole: AuditClass as int

    explicit FindingsModel(QObject* parent = nullptr);

    void show(std::vector<AuditCase> cases);
    [[nodiscard]] const AuditCase& caseAt(int row) const;
    /// First row of an entry, or -1.
    [[nodiscard]] int rowOf(const std::string& entry) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    struct Row {
        std::size_t at = 0;      ///< case
        std::size_t finding = 0; ///< of its findings; one beyond for a slip alone
    };
    [[nodiscard]] QString shown(const Row& row, int column) const;
    [[nodiscard]] const AuditFinding* findingOf(const Row& row) const;

    std::vector<AuditCase> cases_;
    std::vector<Row> rows_;
};

} // namespace quarterstep
