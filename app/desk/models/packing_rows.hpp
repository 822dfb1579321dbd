// SPDX-License-Identifier: GPL-3.0-or-later
// A plan for the boxes as tables: the order with its reasons, what goes into which box, how the plan was
// checked, who goes without, when lines run out, what is not bought, and the curve in numbers.
#pragma once

#include "app/desk/models/cells_model.hpp"
#include "app/session/pack.hpp"

#include <QCoreApplication>

namespace quarterstep
{

class PackingRows
{
    Q_DECLARE_TR_FUNCTIONS(PackingRows)

  public:
    [[nodiscard]] static MadeTable order(const PackAnswer& answer);
    [[nodiscard]] static MadeTable boxes(const PackAnswer& answer);
    /// Shares on people who were not planned for.
    [[nodiscard]] static MadeTable checked(const PackAnswer& answer);
    [[nodiscard]] static MadeTable without(const PackAnswer& answer);
    [[nodiscard]] static MadeTable runOuts(const PackAnswer& answer);
    [[nodiscard]] static MadeTable leftOut(const PackAnswer& answer);
    [[nodiscard]] static MadeTable curve(const PackAnswer& answer);

    /// Why a row of the order is there, in one line.
    [[nodiscard]] static QString why(const OrderRow& row);
    /// The key of a reason in words.
    [[nodiscard]] static QString reason(const std::string& key);
};

/// Share of the draws planned for at this budget, as the curve has it; empty below its beginning, and
/// beyond the budget that it was drawn for (thousandths).
[[nodiscard]] std::optional<double> shareAt(const PackAnswer& answer, long budget, long drawnFor);

} // namespace quarterstep
