// SPDX-License-Identifier: GPL-3.0-or-later
// The order of one person and purpose as a file for a laboratory.
#pragma once

#include "app/session/camp.hpp"
#include "inventory/exchange/order_file.hpp"

namespace quarterstep
{

/// What a laboratory file is about, beside the prescription.
struct OrderWanted {
    std::string job;      ///< id of the order, or the code of the person
    std::string lineName; ///< the frame's line of stock; empty: none
    FrameData frame;      ///< of that line
    CylinderForm form = CylinderForm::minus;
};

/// The order for the purpose of an answer. Throws Error paper-not-for (3) without a need.
[[nodiscard]] OrderFile orderFileFor(const PersonRecord& person, const Recommendation& answer,
                                     const FittingRules& rules, const OrderWanted& wanted);
/// Whether something must be measured before the order can go.
[[nodiscard]] bool isIncomplete(const Reading<std::string>& written);

} // namespace quarterstep
