// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/card/card_fields.hpp"

#include "app/desk/card/readings_words.hpp"
#include "app/desk/shown.hpp"
#include "inventory/text/prescription_table.hpp"

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

/// Right and left of the nose where both are recorded: they win over the whole.
QString distanceText(const PersonRecord& person)
{
    const auto& right = person.eyes.right.monocularPd;
    const auto& left = person.eyes.left.monocularPd;
    return right && left ? number(right) + QLatin1Char('/') + number(left) : number(person.distancePd);
}

QString nearText(const std::optional<NearAcuity>& value)
{
    return value ? QString::fromStdString(value->asRecorded) : QString();
}

std::optional<Complaint> takeDistance(PersonRecord& record, const QString& text)
{
    const auto parts = text.split(QLatin1Char('/'));
    const bool halves = parts.size() == 2;
    const auto part = [&](qsizetype at) {
        return halves ? parts[at].trimmed().toStdString() : std::string();
    };
    if (halves && (part(0).empty() || part(1).empty()))
        return Complaint{
            "pd-range", {QS_SAY("core", "write both parts of the PD, right then left: 31/30.5"), {}}, 0};
    auto said = setField(record, "pd_mm", halves ? std::string() : text.toStdString());
    if (!said)
        said = setField(record, "pd_right_mm", part(0));
    return said ? said : setField(record, "pd_left_mm", part(1));
}

constexpr auto context = "PrescriptionCard";
} // namespace

/// Over 60 lines: a table, a row a field.
const std::array<CardFieldInfo, cardFieldCount>& cardFields()
{
    using P = const PersonRecord&;
    static const std::array<CardFieldInfo, cardFieldCount> table{{
        {CardField::person, "person", "personEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Person"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Camp code of the person, as on the paper card"), true,
         FieldForm::anything, [](P p) { return QString::fromStdString(p.person); }},
        {CardField::age, "age", "ageEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Age"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Age in years; unknown age is judged by the strictest rules"),
         true, FieldForm::years, [](P p) { return number(p.age); }},
        {CardField::right, "right", "rightEyeEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Right"),
         QT_TRANSLATE_NOOP("PrescriptionCard",
                           "Right eye: sphere, cylinder (dioptres) and axis (degrees). Up and Down step the "
                           "sphere by 0.25, Page Up and Page Down by 1.00"),
         true, FieldForm::eye, [](P p) { return eyeText(p.eyes.right.final); }},
        {CardField::left, "left", "leftEyeEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Left"),
         QT_TRANSLATE_NOOP("PrescriptionCard",
                           "Left eye: sphere, cylinder (dioptres) and axis (degrees); = takes the right "
                           "eye’s. Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00"),
         true, FieldForm::eye, [](P p) { return eyeText(p.eyes.left.final); }},
        {CardField::distancePd, "pd_mm", "distancePdEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "PD far"),
         QT_TRANSLATE_NOOP(
             "PrescriptionCard",
             "Distance between the pupils looking far, millimetres; or right and left of the nose: 31/30.5"),
         true, FieldForm::millimetres, [](P p) { return distanceText(p); }},
        {CardField::nearPd, "near_pd_mm", "nearPdEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "PD near"),
         QT_TRANSLATE_NOOP(
             "PrescriptionCard",
             "Distance between the pupils looking near, millimetres; worked out from the far one when empty"),
         true, FieldForm::millimetres, [](P p) { return number(p.nearPd); }},
        {CardField::addition, "add", "additionEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Addition"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Near addition of both eyes, dioptres"), true,
         FieldForm::addition, [](P p) { return additionText(p); }},
        {CardField::nearRight, "near_right", "nearRightEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Near, R"),
         QT_TRANSLATE_NOOP("PrescriptionCard",
                           "Right eye: whole near power found by trial, dioptres, instead of an addition"),
         true, FieldForm::eye, [](P p) { return power(p.eyes.right.nearPower); }},
        {CardField::nearLeft, "near_left", "nearLeftEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Near, L"),
         QT_TRANSLATE_NOOP("PrescriptionCard",
                           "Left eye: whole near power found by trial, dioptres, instead of an addition"),
         true, FieldForm::eye, [](P p) { return power(p.eyes.left.nearPower); }},
        {CardField::unaidedRight, "va_unaided_right", "unaidedRightEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Unaided, R"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Right eye: acuity without spectacles, for example 6/18"),
         true, FieldForm::anything, [](P p) { return acuity(p.eyes.right.acuity.unaided); }},
        {CardField::unaidedLeft, "va_unaided_left", "unaidedLeftEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Unaided, L"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Left eye: acuity without spectacles, for example 6/18"), true,
         FieldForm::anything, [](P p) { return acuity(p.eyes.left.acuity.unaided); }},
        {CardField::bestRight, "va_best_right", "bestRightEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Best, R"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Right eye: acuity with this prescription, for example 6/6"),
         true, FieldForm::anything, [](P p) { return acuity(p.eyes.right.acuity.best); }},
        {CardField::bestLeft, "va_best_left", "bestLeftEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Best, L"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Left eye: acuity with this prescription, for example 6/6"),
         true, FieldForm::anything, [](P p) { return acuity(p.eyes.left.acuity.best); }},
        {CardField::prescriber, "prescriber", "prescriberEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Prescriber"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Who signed the prescription; needed under 16 years"), false,
         FieldForm::anything, [](P p) { return QString::fromStdString(p.prescriber); }},
        {CardField::objectiveRight, "objective_right", "objectiveRightEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Objective, R"),
         QT_TRANSLATE_NOOP("PrescriptionCard",
                           "Right eye: reading of the instrument, dioptres; several readings separated by ; "
                           "are averaged and their scatter is told"),
         true, FieldForm::anything, [](P p) { return power(p.eyes.right.objective); }},
        {CardField::objectiveLeft, "objective_left", "objectiveLeftEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Objective, L"),
         QT_TRANSLATE_NOOP("PrescriptionCard",
                           "Left eye: reading of the instrument, dioptres; several readings separated by ; "
                           "are averaged and their scatter is told"),
         true, FieldForm::anything, [](P p) { return power(p.eyes.left.objective); }},
        {CardField::wornRight, "worn_right", "wornRightEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Own pair, R"),
         QT_TRANSLATE_NOOP("PrescriptionCard",
                           "Right eye: power of the pair worn now, read by focimeter, dioptres"),
         true, FieldForm::eye, [](P p) { return power(p.eyes.right.worn); }},
        {CardField::wornLeft, "worn_left", "wornLeftEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Own pair, L"),
         QT_TRANSLATE_NOOP("PrescriptionCard",
                           "Left eye: power of the pair worn now, read by focimeter, dioptres"),
         true, FieldForm::eye, [](P p) { return power(p.eyes.left.worn); }},
        {CardField::pinholeRight, "va_pinhole_right", "pinholeRightEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Pinhole, R"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Right eye: acuity through a pinhole, for example 6/9"), true,
         FieldForm::anything, [](P p) { return acuity(p.eyes.right.acuity.pinhole); }},
        {CardField::pinholeLeft, "va_pinhole_left", "pinholeLeftEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Pinhole, L"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Left eye: acuity through a pinhole, for example 6/9"), true,
         FieldForm::anything, [](P p) { return acuity(p.eyes.left.acuity.pinhole); }},
        {CardField::habitualRight, "va_habitual_right", "habitualRightEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "With own, R"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Right eye: acuity with the pair worn now, for example 6/12"),
         true, FieldForm::anything, [](P p) { return acuity(p.eyes.right.acuity.habitual); }},
        {CardField::habitualLeft, "va_habitual_left", "habitualLeftEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "With own, L"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Left eye: acuity with the pair worn now, for example 6/12"),
         true, FieldForm::anything, [](P p) { return acuity(p.eyes.left.acuity.habitual); }},
        {CardField::nearUnaided, "near_unaided", "nearUnaidedEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Near, bare"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Smallest print read without spectacles, for example N12"),
         true, FieldForm::anything, [](P p) { return nearText(p.nearUnaided); }},
        {CardField::nearBest, "near_best", "nearBestEdit",
         QT_TRANSLATE_NOOP("PrescriptionCard", "Near, best"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Smallest print read with this prescription, for example N6"),
         true, FieldForm::anything, [](P p) { return nearText(p.nearBest); }},
        {CardField::vertex, "vertex_mm", "vertexEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Vertex"),
         QT_TRANSLATE_NOOP("PrescriptionCard",
                           "Distance from the trial lens to the eye, millimetres; needed above 4.00 D"),
         true, FieldForm::millimetres, [](P p) { return number(p.vertexMm); }},
        {CardField::working, "working_mm", "workingEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Working"),
         QT_TRANSLATE_NOOP("PrescriptionCard",
                           "Distance of near work from the spectacles, millimetres; 400 when empty"),
         true, FieldForm::anything, [](P p) { return number(p.workingMm); }},
        {CardField::symptoms, "symptoms", "symptomsEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Complaints"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "What the person complains of, in a few words"), false,
         FieldForm::anything, [](P p) { return QString::fromStdString(p.symptoms); }},
        {CardField::guardian, "guardian", "guardianEdit", QT_TRANSLATE_NOOP("PrescriptionCard", "Guardian"),
         QT_TRANSLATE_NOOP("PrescriptionCard", "Who was told about a child’s prescription"), false,
         FieldForm::anything, [](P p) { return QString::fromStdString(p.guardian); }},
    }};
    return table;
}

std::optional<Complaint> takeField(PersonRecord& record, const CardFieldInfo& info, const QString& text)
{
    if (info.field == CardField::distancePd)
        return takeDistance(record, text);
    if (info.field == CardField::objectiveRight)
        return takeReadings(record.eyes.right, text);
    if (info.field == CardField::objectiveLeft)
        return takeReadings(record.eyes.left, text);
    return setField(record, info.column, text.toStdString());
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
