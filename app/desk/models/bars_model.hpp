// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of a picture of bars.
#pragma once

#include "app/desk/models/rows_model.hpp"
#include "app/desk/plots/share_bars.hpp"

namespace quarterstep
{

class BarsModel final : public RowsModel<ShareBar>
{
    Q_OBJECT

  public:
    enum Column { nameColumn, figureColumn, kindColumn, wordsColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole }; ///< the length of the bar, in the unit of the picture

    explicit BarsModel(QObject* parent = nullptr) : RowsModel(columnCount_, parent) {}

    void show(const ShareBars& picture) { setRows(picture.bars); }

  protected:
    [[nodiscard]] QVariant cell(const ShareBar& bar, int column, int role) const override;
    [[nodiscard]] QString title(int column) const override;
};

} // namespace quarterstep
