// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/dicom_patient.hpp"

#include "inventory/exchange/json_text.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/record_text.hpp"
#include "inventory/text/table_columns.hpp"

namespace quarterstep
{

namespace
{

std::string isoDate(const std::string& date)
{
    return date.size() == 8 ? date.substr(0, 4) + "-" + date.substr(4, 2) + "-" + date.substr(6, 2)
                            : std::string();
}

std::string sideName(Eye eye)
{
    return eye == Eye::right ? "right" : "left";
}

void takeUnused(const DicomObject& object, const std::string& file, DicomPatient& patient)
{
    std::string names;
    for (const auto& name : object.unused)
        names += (names.empty() ? "" : ", ") + name;
    if (!names.empty())
        patient.tell(Severity::note, file, "dicom-left-out", {QS_SAY("core", "not used: %1"), {names}});
}

void setText(DicomPatient& patient, const std::string& file, const std::string& column,
             const std::string& text)
{
    patient.places[column] = {file, 0, 0};
    if (const auto said = setField(patient.record, column, text))
        patient.tell(Severity::error, file, said->code.c_str(), said->sentence);
}

/// The power of an eye through the notation, so that its limits are those of every other entry.
std::optional<WrittenEye> powerOf(const DicomEye& eye, Eye side, const std::string& file,
                                  DicomPatient& patient)
{
    WrittenEye written;
    if (!eye.sphere)
        return std::nullopt;
    written.power.sphere = Dioptres{*eye.sphere};
    if (eye.cylinder && *eye.cylinder != 0.0)
        written.power = {Dioptres{*eye.sphere}, Dioptres{*eye.cylinder},
                         AxisDegrees{eye.axis.value_or(0.0) == 0.0 ? 180.0 : *eye.axis}};
    written.prism = eye.prism;
    const auto words = eyeWords(written, side);
    const auto read = parseEye(words, side);
    const bool whole = written.power.axis.thousandths() % 1000 == 0;
    if (!read && whole) {
        patient.tell(Severity::error, file, read.complaint().code.c_str(), read.complaint().sentence);
        return std::nullopt;
    }
    if (!whole) // tables and labels hold whole degrees
        patient.tell(Severity::error, file, "dicom-value",
                     {QS_SAY("core", "%1 of the %2 eye cannot be used as it stands"),
                      {"CylinderAxis " + writeNumber(written.power.axis.value()), sideName(side)}});
    written.asWritten = words;
    return written;
}

void takeDistances(const DicomObject& object, const std::string& file, DicomPatient& patient)
{
    const auto& record = patient.record;
    const bool monocular = record.eyes.right.monocularPd || record.eyes.left.monocularPd;
    if (object.distancePd && !record.distancePd && !monocular)
        setText(patient, file, "pd_mm", writeNumber(*object.distancePd));
    if (object.nearPd && !record.nearPd)
        setText(patient, file, "near_pd_mm", writeNumber(*object.nearPd));
    if (object.vertexMm && !record.vertexMm)
        setText(patient, file, "vertex_mm", writeNumber(*object.vertexMm));
}

/// Our private element: what the object has no attribute for.
void takeRecord(const DicomObject& object, const std::string& file, DicomPatient& patient)
{
    keepRules(patient.record, {object.profile, object.profileVersion, object.rulesHash});
    const auto source = checkText(object.record, file);
    const auto parsed = source.usable() && !object.record.empty() ? JsonDocument::parse(source.value)
                                                                  : Reading<JsonDocument>{};
    for (const auto& member : parsed.value.root().children()) {
        if (columnNamed(member.name()) == nullptr)
            patient.record.otherColumns.emplace_back(member.name(), member.text());
        else if (member.name() != "person")
            setText(patient, file, member.name(), member.text());
    }
}

void takeSubjective(const DicomObject& object, const std::string& file, DicomPatient& patient)
{
    if (patient.subjective) {
        patient.tell(Severity::error, file, "dicom-twice",
                     {QS_SAY("core", "there is a second refraction of %1; give only the one that counts"),
                      {shown(object.patientId)}});
        return;
    }
    patient.subjective = true;
    takeRecord(object, file, patient);
    for (const Eye eye : bothEyes) {
        auto& target = patient.record.eyes.of(eye);
        const auto& given = object.eyes.of(eye);
        if (!given && target.final.state == EyeState::measured) {
            patient.tell(
                Severity::error, file, "dicom-eye-missing",
                {QS_SAY("core", "nothing is stated for the %1 eye; ask for it: a power, or that it is a "
                                "balance lens, artificial, blind or not measured"),
                 {sideName(eye)}});
            continue;
        }
        if (!given)
            continue;
        if (const auto written = powerOf(*given, eye, file, patient))
            target.final = *written;
        else
            patient.tell(Severity::error, file, "dicom-value",
                         {QS_SAY("core", "%1 of the %2 eye cannot be used as it stands"),
                          {"SpherePower", sideName(eye)}});
        if (given->addition)
            setText(patient, file, "add_" + sideName(eye), writeDioptres(Dioptres{*given->addition}));
        patient.places[sideName(eye)] = {file, 0, 0};
    }
    takeDistances(object, file, patient);
    if (patient.record.writtenOn.empty() && !isoDate(object.contentDate).empty() && object.record.empty())
        setText(patient, file, "written_on", isoDate(object.contentDate));
}

void takeReading(const DicomObject& object, const std::string& file, DicomPatient& patient,
                 std::optional<SpheroCylinder> EyeRecord::*member)
{
    for (const Eye eye : bothEyes) {
        const auto& given = object.eyes.of(eye);
        auto& target = patient.record.eyes.of(eye).*member;
        if (!given)
            continue;
        if (target)
            patient.tell(Severity::error, file, "dicom-twice",
                         {QS_SAY("core", "there is a second reading of the %1 eye of %2; give only one"),
                          {sideName(eye), shown(object.patientId)}});
        if (const auto written = powerOf(*given, eye, file, patient))
            target = written->power;
    }
    takeDistances(object, file, patient);
}

void takeWornAddition(const DicomObject& object, const std::string& file, DicomPatient& patient)
{
    for (const Eye eye : bothEyes)
        if (const auto& given = object.eyes.of(eye); given && given->addition && !patient.record.wornAddition)
            setText(patient, file, "worn_add", writeDioptres(Dioptres{*given->addition}));
}

void takeAcuity(const DicomObject& object, const std::string& file, DicomPatient& patient)
{
    const auto type = lowered(object.acuityType);
    const char* column = type.find("pinhole") != std::string::npos                            ? "va_pinhole_"
                         : type.find("best") != std::string::npos                             ? "va_best_"
                         : type.find("uncorrected") != std::string::npos || type == "unaided" ? "va_unaided_"
                         : type.find("habitual") != std::string::npos || type.find("presenting") == 0
                             ? "va_habitual_"
                             : nullptr;
    const bool distance = object.viewingDistance == "DISTANCE";
    for (const Eye eye : bothEyes) {
        const auto& given = object.eyes.of(eye);
        if (!given || !given->decimalAcuity)
            continue;
        const auto text = "dec " + writeNumber(*given->decimalAcuity);
        if (column != nullptr && distance) {
            setText(patient, file, column + sideName(eye), text);
            continue;
        }
        patient.record.otherColumns.emplace_back("dicom.acuity_" + sideName(eye), text);
        patient.tell(
            Severity::caution, file, "dicom-acuity",
            {QS_SAY("core", "an acuity is kept without being used: \"%1\" at %2 is none that the table has"),
             {shown(object.acuityType), shown(object.viewingDistance)}});
    }
}

} // namespace

void DicomPatient::tell(Severity severity, const std::string& file, const char* code, Sentence sentence)
{
    row.findings.push_back({severity, {file, 0, 0}, code, std::move(sentence)});
}

void takeDicomObject(const DicomObject& object, const std::string& file, DicomPatient& patient)
{
    for (const Eye eye : bothEyes)
        if (const auto& given = object.eyes.of(eye); given && !given->wrong.empty())
            patient.tell(Severity::error, file, "dicom-value",
                         {QS_SAY("core", "%1 of the %2 eye cannot be used as it stands"),
                          {shown(given->wrong), sideName(eye)}});
    takeUnused(object, file, patient);
    switch (object.kind) {
    case DicomKind::subjective:
        takeSubjective(object, file, patient);
        break;
    case DicomKind::autorefraction:
        takeReading(object, file, patient, &EyeRecord::objective);
        patient.autorefraction = true;
        break;
    case DicomKind::lensometry:
        takeReading(object, file, patient, &EyeRecord::worn);
        takeWornAddition(object, file, patient);
        break;
    case DicomKind::acuity:
        takeAcuity(object, file, patient);
        break;
    }
}

void settleDicomPatient(DicomPatient& patient)
{
    if (patient.subjective) {
        for (const char* side : {"right", "left"})
            patient.places[side] = patient.record.position;
        return;
    }
    auto& record = patient.record;
    record.objectiveOnly = patient.autorefraction;
    for (const Eye eye : bothEyes) {
        auto& target = record.eyes.of(eye);
        target.final.state = EyeState::notMeasured;
        if (target.objective) {
            target.final.state = EyeState::measured;
            target.final.power = *target.objective;
        }
        target.final.asWritten = eyeWords(target.final, eye);
        patient.places[sideName(eye)] = record.position;
    }
    patient.tell(Severity::caution, record.position.file, "dicom-no-refraction",
                 {QS_SAY("core", "there is no subjective refraction of %1; what is here is no prescription"),
                  {shown(record.person)}});
}

} // namespace quarterstep
