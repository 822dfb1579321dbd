// SPDX-License-Identifier: GPL-3.0-or-later
// The optical crosses as a table: the same values, for those who read rather than look.
#pragma once

#include "app/desk/models/rows_model.hpp"
#include "core/fitting/explanation.hpp"

namespace quarterstep
{

struct CrossRow {
    QString what;
    OpticalCross cross;
};

class CrossModel final : public RowsModel<CrossRow>
{
    Q_OBJECT

  public:
    enum Column { whatColumn, powerColumn, higherColumn, lowerColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole }; ///< powers in dioptres; text elsewhere

    explicit CrossModel(QObject* parent = nullptr) : RowsModel(columnCount_, parent) {}

    void show(const PerEye<std::optional<EyeCrosses>>& crosses);
    void clear();

  protected:
    [[nodiscard]] QVariant cell(const CrossRow& row, int column, int role) const override;
    [[nodiscard]] QString title(int column) const override;
};

} // namespace quarterstep
