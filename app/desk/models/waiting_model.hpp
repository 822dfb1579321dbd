// SPDX-License-Identifier: GPL-3.0-or-later
// The people of the table, in its order, and how far each has come at this table today.
#pragma once

#include "inventory/text/prescription_table.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

class WaitingModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Column { personColumn, ageColumn, stateColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole };
    /// settled: without a pair from here, by an order or for a reason
    enum class State { waiting, given, settled, unreadable };
    struct Outcome {
        State state = State::waiting;
        QString words; ///< lines given, or what was entered
    };

    explicit WaitingModel(QObject* parent = nullptr);

    void setRows(std::vector<TableRow> rows);
    /// Behind those that are there.
    void addRows(std::vector<TableRow> rows);
    [[nodiscard]] const TableRow& rowAt(int row) const { return rows_[static_cast<std::size_t>(row)]; }
    [[nodiscard]] State stateAt(int row) const;
    /// Row of a person's camp code, or -1.
    [[nodiscard]] int rowOf(const std::string& person) const;
    /// What the ledger says became of the person.
    void setOutcome(const std::string& person, const Outcome& outcome);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    [[nodiscard]] QString shown(const QModelIndex& index) const;
    [[nodiscard]] QString tooltip(int row) const;

    std::vector<TableRow> rows_;
    std::vector<Outcome> outcomes_;
};

} // namespace quarterstep
