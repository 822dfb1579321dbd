// SPDX-License-Identifier: GPL-3.0-or-later
// The one table of the card's text fields: column of the prescription table, label, tooltip with the unit,
// and how a record's value is written into the field. Reading goes through setField of the prescription
// table.
#pragma once

#include "app/desk/card/key_guard.hpp"
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
    distancePd,
    nearPd,
    addition,
    nearRight,
    nearLeft,
    unaidedRight,
    unaidedLeft,
    bestRight,
    bestLeft,
    prescriber,
    objectiveRight,
    objectiveLeft,
    wornRight,
    wornLeft,
    pinholeRight,
    pinholeLeft,
    habitualRight,
    habitualLeft,
    nearUnaided,
    nearBest,
    vertex,
    working,
    symptoms,
    guardian
};
inline constexpr std::size_t cardFieldCount = static_cast<std::size_t>(CardField::guardian) + 1;

struct CardFieldInfo {
    CardField field;
    const char* column;     ///< of the prescription table
    const char* objectName; ///< for tests and tools
    const char* label;      ///< source text, context "PrescriptionCard"
    const char* tooltip;    ///< source text, context "PrescriptionCard"
    bool leftToRight;       ///< powers, acuities, codes: never mirrored
    FieldForm form;         ///< which keys it takes
    QString (*textOf)(const PersonRecord&);
};

/// Whether a prescription cannot be without it.
[[nodiscard]] constexpr bool isNeeded(CardField field)
{
    return field == CardField::person || field == CardField::right || field == CardField::left;
}

/// Reads a field of the card into the record, as setField does; beyond it "31/30.5" for the right and left
/// part of the PD, and several objective readings separated by semicolons, whose mean is kept with their
/// scatter.
[[nodiscard]] std::optional<Complaint> takeField(PersonRecord& record, const CardFieldInfo& info,
                                                 const QString& text);

[[nodiscard]] const std::array<CardFieldInfo, cardFieldCount>& cardFields();
[[nodiscard]] QString labelOf(const CardFieldInfo& info);
[[nodiscard]] QString tooltipOf(const CardFieldInfo& info);

} // namespace quarterstep
