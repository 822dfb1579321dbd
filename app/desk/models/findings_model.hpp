// SPDX-License-Identifier: GPL-3.0-or-later
// What an audit found, one row a finding, in the order of the ledger.
#pragma once

#include "app/desk/models/rows_model.hpp"
#include "app/session/audit_cases.hpp"

namespace quarterstep
{

struct FindingRow {
    std::size_t at = 0;      ///< case
    std::size_t finding = 0; ///< of its findings; one beyond for a slip alone
};

class FindingsModel final : public RowsModel<FindingRow>
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

    explicit FindingsModel(QObject* parent = nullptr) : RowsModel(columnCount_, parent) {}

    void show(std::vector<AuditCase> cases);
    [[nodiscard]] const AuditCase& caseAt(int row) const;
    /// First row of an entry, or -1.
    [[nodiscard]] int rowOf(const std::string& entry) const;
    [[nodiscard]] int rowOfPerson(const QString& person) const;

  protected:
    [[nodiscard]] QVariant cell(const FindingRow& row, int column, int role) const override;
    [[nodiscard]] QString title(int column) const override;

  private:
    [[nodiscard]] QString shown(const FindingRow& row, int column) const;
    [[nodiscard]] const AuditFinding* findingOf(const FindingRow& row) const;

    std::vector<AuditCase> cases_;
};

} // namespace quarterstep
