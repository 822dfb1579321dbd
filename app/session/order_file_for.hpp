// SPDX-License-Identifier: GPL-3.0-or-later
// The order of one person and purpose: entered with its prescription, and as a file for a laboratory.
#pragma once

#include "app/session/keeping.hpp"
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
/// What such a file says of an order: its id, and the frame that is held for it.
[[nodiscard]] OrderWanted wantedFor(const Camp& camp, const Order& order);

/// The entry of a custom order with the prescription that is ordered. Throws Error paper-not-for (3) without
/// a need.
[[nodiscard]] Entry orderEntry(const Camp& camp, const SingleWork& words, const PersonRecord& person,
                               const Recommendation& answer);

struct OrderedFor {
    PersonRecord person;
    Recommendation answer; ///< by the rules of today
};
/// What was ordered, as the ledger says; nothing for an order that was entered without its prescription, or
/// whose person was forgotten.
[[nodiscard]] std::optional<OrderedFor> orderedFor(const Camp& camp, const Order& order);

/// Whether something must be measured before the order can go.
[[nodiscard]] bool isIncomplete(const Reading<std::string>& written);

} // namespace quarterstep
