// SPDX-License-Identifier: GPL-3.0-or-later
// The one table of the card's text fields: column of the prescription table, label, tooltip with the unit,
// and how a record's value is written into the field. Reading goes through setField of the prescription
// table.
#pragma once

#include "core/fitting/prescription.hpp"

#include <QString>

#include <array>

namespace quarterstep
{

/// In tab order.
enum class CardField {
    person,
    age,
    right,
    left,
    addition,
    distancePd,
    nearPd,
    nearRight,
    nearLeft,
    unaidedRight,
    unaidedLeft,
    bestRight,
    bestLeft,
    prescriber
};
inline constexpr std::size_t cardFieldCount = static_cast<std::size_t>(CardField::prescriber) + 1;

struct CardFieldInfo {
    CardField field;
    const char* column;     ///< of the prescription table
    const char* objectName; ///< for tests and tools
    const char* label;      ///< source text, context "PrescriptionCard"
    const char* tooltip;    ///< source text, context "PrescriptionCard"
    bool leftToRight;       ///< powers, acuities, codes: never mirrored
    QString (*textOf)(const PersonRecord&);
};

[[nodiscard]] const std::array<CardFieldInfo, cardFieldCount>& cardFields();
[[nodiscard]] QString labelOf(const CardFieldInfo& info);
[[nodiscard]] QString tooltipOf(const CardFieldInfo& info);

} // namespace quarterstep
