// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of a dry run: how each was read, and what was not understood.
#pragma once

#include "app/session/bring_in.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

class BroughtRowsModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Column { lineColumn, personColumn, stateColumn, readingColumn, foundColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole }; ///< line, code, taken, words

    explicit BroughtRowsModel(QObject* parent = nullptr);

    /// Null: none.
    void show(std::shared_ptr<const BroughtIn> read);
    /// Only rows about which something was found.
    void showOnlyTold(bool only);
    [[nodiscard]] const TableRow* rowAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    [[nodiscard]] static QString stateOf(const TableRow& row);
    [[nodiscard]] static QString foundIn(const TableRow& row);

    std::shared_ptr<const BroughtIn> read_;
    bool onlyTold_ = false;
};

} // namespace quarterstep
