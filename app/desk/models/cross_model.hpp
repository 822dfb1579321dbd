// SPDX-License-Identifier: GPL-3.0-or-later
// The optical crosses as a table: the same values, for those who read rather than look.
#pragma once

#include "core/fitting/explanation.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

class CrossModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Column { whatColumn, powerColumn, higherColumn, lowerColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole }; ///< powers in dioptres; text elsewhere

    explicit CrossModel(QObject* parent = nullptr);

    void show(const PerEye<std::optional<EyeCrosses>>& crosses);
    void clear();

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    struct Row {
        QString what;
        OpticalCross cross;
    };

    std::vector<Row> rows_;
};

} // namespace quarterstep
