// SPDX-License-Identifier: GPL-3.0-or-later
// Findings one by one: how grave, where, what, and the code to look up.
#pragma once

#include "core/finding.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

class FindingListModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Column { severityColumn, placeColumn, sentenceColumn, codeColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole }; ///< severity as number, line, sentence, code

    explicit FindingListModel(QObject* parent = nullptr);

    void show(std::vector<Finding> findings);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    std::vector<Finding> findings_;
};

} // namespace quarterstep
