// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/card/card_fields.hpp"

#include "app/desk/shown.hpp"

#include <QCoreApplication>

namespace quarterstep
{

namespace
{
QString number(const std::optional<double>& value)
{
    return value ? QString::number(*value, 'g', 6) : QString();
}

QString acuity(const std::optional<Acuity>& value)
{
    return value ? shownAcuity(*value) : QString();
}

QString power(const std::optional<SpheroCylinder>& value)
{
    return value ? QString::fromStdString(writePower(*value)) : QString();
}

QString eyeText(const WrittenEye& eye)
{
    return QString::fromStdString(eye.asWritten);
}

/// One text for both eyes; where they differ both are shown, to be retyped before they are changed.
QString additionText(const PersonRecord& person)
{
    const auto& right = person.eyes.right.addition;
    const auto& left = person.eyes.left.addition;
    if (!right && !left)
        return {};
    if (right && left && *right != *left)
        return QString::fromStdString(writeDioptres(*right) + " / " + writeDioptres(*left));
    return QString::fromStdString(writeDioptres(right ? *right : *left));
}

constexpr auto context = "PrescriptionCard";
} // namespace

const std::array<CardFieldInfo, cardFieldCount>& cardFields()
{
    using P = const PersonRecord&;
    static const std::array<CardFieldInfo, cardFieldCount> table{{
        {CardField::person, "person", "personEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Person"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Camp code of the person, as on the paper card"), true,
         [](P p) { return QString::fromStdString(p.person); }},
        {CardField::age, "age", "ageEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Age"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Age in years; unknown age is judged by the strictest rules"),
         true, [](P p) { return number(p.age); }},
        {CardField::right, "right", "rightEyeEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Right"),
         QT_TRANSLATE_NOOP(
             "PrescriptionCard",
             "Right eye: sphere, cylinder (dioptres) and axis (degrees). Up and Down step the sphere by "
             "0.25, Page Up and Page Down by 1.00"),
         true, [](P p) { return eyeText(p.eyes.right.final); }},
        {CardField::left, "left", "leftEyeEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Left"),
         QT_TRANSLATE_NOOP(
             "PrescriptionCard",
             "Left eye: sphere, cylinder (dioptres) and axis (degrees). Up and Down step the sphere by "
             "0.25, Page Up and Page Down by 1.00"),
         true, [](P p) { return eyeText(p.eyes.left.final); }},
        {CardField::addition, "add", "additionEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Addition"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Near addition of both eyes, dioptres"), true, additionText},
        {CardField::distancePd, "pd_mm", "distancePdEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "PD far"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Distance between the pupils looking far, millimetres"), true,
         [](P p) { return number(p.distancePd); }},
        {CardField::nearPd, "near_pd_mm", "nearPdEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "PD near"),
         QT_TRANSLATE_NOOP(
             "PrescriptionCard",
             "Distance between the pupils looking near, millimetres; worked out from the far one when empty"),
         true, [](P p) { return number(p.nearPd); }},
        {CardField::nearRight, "near_right", "nearRightEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Near, R"),
         QT_TRANSLATE_NOOP("PrescriptionCard",
                           "Right eye: whole near power found by trial, dioptres, instead of an addition"),
         true, [](P p) { return power(p.eyes.right.nearPower); }},
        {CardField::nearLeft, "near_left", "nearLeftEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Near, L"),
         QT_TRANSLATE_NOOP("PrescriptionCard",
                           "Left eye: whole near power found by trial, dioptres, instead of an addition"),
         true, [](P p) { return power(p.eyes.left.nearPower); }},
        {CardField::unaidedRight, "va_unaided_right", "unaidedRightEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Unaided, R"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Right eye: acuity without spectacles, for example 6/18"),
         true, [](P p) { return acuity(p.eyes.right.acuity.unaided); }},
        {CardField::unaidedLeft, "va_unaided_left", "unaidedLeftEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Unaided, L"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Left eye: acuity without spectacles, for example 6/18"), true,
         [](P p) { return acuity(p.eyes.left.acuity.unaided); }},
        {CardField::bestRight, "va_best_right", "bestRightEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Best, R"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Right eye: acuity with this prescription, for example 6/6"),
         true, [](P p) { return acuity(p.eyes.right.acuity.best); }},
        {CardField::bestLeft, "va_best_left", "bestLeftEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Best, L"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Left eye: acuity with this prescription, for example 6/6"),
         true, [](P p) { return acuity(p.eyes.left.acuity.best); }},
        {CardField::prescriber, "prescriber", "prescriberEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Prescriber"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Who signed the prescription; needed under 16 years"), false,
         [](P p) { return QString::fromStdString(p.prescriber); }},
    }};
    return table;
}

QString labelOf(const CardFieldInfo& info)
{
    return QCoreApplication::translate(context, info.label);
}

QString tooltipOf(const CardFieldInfo& info)
{
    return QCoreApplication::translate(context, info.tooltip);
}

} // namespace quarterstep
