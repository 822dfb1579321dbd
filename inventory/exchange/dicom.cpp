// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/dicom.hpp"

#include "inventory/exchange/dicom_object.hpp"
#include "inventory/exchange/json_text.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/record_text.hpp"
#include "inventory/text/table_columns.hpp"

#include <algorithm>
#include <array>
#include <random>

namespace quarterstep
{

namespace
{

constexpr std::size_t longestCode = 64;

/// What one patient's objects say together.
struct Patient {
    PersonRecord record;
    PartPlaces places;
    TableRow row;
    bool subjective = false;
    bool autorefraction = false;

    void tell(Severity severity, const std::string& file, const char* code, Sentence sentence)
    {
        row.findings.push_back({severity, {file, 0, 0}, code, std::move(sentence)});
    }
};

std::string isoDate(const std::string& date)
{
    return date.size() == 8 ? date.substr(0, 4) + "-" + date.substr(4, 2) + "-" + date.substr(6, 2)
                            : std::string();
}

std::string sideName(Eye eye)
{
    return eye == Eye::right ? "right" : "left";
}

class DicomReader
{
  public:
    explicit DicomReader(const ImportOptions& options) : options_(options) {}

    ImportedRows read(const std::vector<NamedBytes>& files)
    {
        for (std::size_t i = 0; i < files.size(); ++i) {
            if (options_.progress)
                options_.progress(i, files.size());
            auto object = readDicomObject(files[i].bytes, files[i].name);
            reading_.findings.insert(reading_.findings.end(), object.findings.begin(), object.findings.end());
            if (object.usable())
                take(object.value, files[i].name);
        }
        if (options_.progress)
            options_.progress(files.size(), files.size());
        if (!reading_.usable())
            return std::move(reading_);
        RowEnd end(options_);
        for (auto& patient : patients_) {
            settle(patient);
            end.finish(std::move(patient.record), patient.places, patient.row);
            reading_.value.push_back(std::move(patient.row));
        }
        return std::move(reading_);
    }

  private:
    Patient& patientOf(const DicomObject& object, const std::string& file)
    {
        const auto found = std::find_if(patients_.begin(), patients_.end(), [&](const Patient& each) {
            return each.record.person == object.patientId && !object.patientId.empty();
        });
        if (found != patients_.end())
            return *found;
        auto& patient = patients_.emplace_back();
        patient.record.person = object.patientId;
        patient.record.position = {file, 0, 0};
        if (!object.patientId.empty())
            patient.places["person"] = {file, 0, 0};
        return patient;
    }

    void take(const DicomObject& object, const std::string& file)
    {
        auto& patient = patientOf(object, file);
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

    static void takeUnused(const DicomObject& object, const std::string& file, Patient& patient)
    {
        std::string names;
        for (const auto& name : object.unused)
            names += (names.empty() ? "" : ", ") + name;
        if (!names.empty())
            patient.tell(Severity::note, file, "dicom-left-out", {QS_SAY("core", "not used: %1"), {names}});
    }

    static void setText(Patient& patient, const std::string& file, const std::string& column,
                        const std::string& text)
    {
        patient.places[column] = {file, 0, 0};
        if (const auto said = setField(patient.record, column, text))
            patient.tell(Severity::error, file, said->code.c_str(), said->sentence);
    }

    /// The power of an eye through the notation, so that its limits are those of every other entry.
    static std::optional<WrittenEye> powerOf(const DicomEye& eye, Eye side, const std::string& file,
                                             Patient& patient)
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
        const bool whole =
            written.power.axis.value() == static_cast<double>(written.power.axis.thousandths() / 1000);
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

    void takeSubjective(const DicomObject& object, const std::string& file, Patient& patient)
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

    static void takeDistances(const DicomObject& object, const std::string& file, Patient& patient)
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
    static void takeRecord(const DicomObject& object, const std::string& file, Patient& patient)
    {
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

    void takeReading(const DicomObject& object, const std::string& file, Patient& patient,
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

    static void takeWornAddition(const DicomObject& object, const std::string& file, Patient& patient)
    {
        for (const Eye eye : bothEyes)
            if (const auto& given = object.eyes.of(eye);
                given && given->addition && !patient.record.wornAddition)
                setText(patient, file, "worn_add", writeDioptres(Dioptres{*given->addition}));
    }

    static void takeAcuity(const DicomObject& object, const std::string& file, Patient& patient)
    {
        const auto type = lowered(object.acuityType);
        const char* column =
            type.find("pinhole") != std::string::npos                                    ? "va_pinhole_"
            : type.find("best") != std::string::npos                                     ? "va_best_"
            : type.find("uncorrected") != std::string::npos || type == "unaided"         ? "va_unaided_"
            : type.find("habitual") != std::string::npos || type.find("presenting") == 0 ? "va_habitual_"
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
                {QS_SAY("core",
                        "an acuity is kept without being used: \"%1\" at %2 is none that the table has"),
                 {shown(object.acuityType), shown(object.viewingDistance)}});
        }
    }

    /// Without a refraction the objective reading stands in for it, and says so.
    static void settle(Patient& patient)
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
        patient.tell(
            Severity::caution, record.position.file, "dicom-no-refraction",
            {QS_SAY("core", "there is no subjective refraction of %1; what is here is no prescription"),
             {shown(record.person)}});
    }

    const ImportOptions& options_;
    std::vector<Patient> patients_;
    ImportedRows reading_;
};

/// A unique identifier without a root of our own: 2.25 and a random number of 122 bits (PS3.5 B.2).
std::string newUid()
{
    static std::random_device source;
    std::array<unsigned, 16> bytes{};
    for (auto& byte : bytes)
        byte = source() & 0xFFU;
    bytes[6] = (bytes[6] & 0x0FU) | 0x40U;
    bytes[8] = (bytes[8] & 0x3FU) | 0x80U;
    std::string digits;
    while (std::any_of(bytes.begin(), bytes.end(), [](unsigned byte) { return byte != 0; })) {
        unsigned rest = 0;
        for (auto& byte : bytes) { // long division by ten
            const unsigned value = rest * 256 + byte;
            byte = value / 10;
            rest = value % 10;
        }
        digits.insert(digits.begin(), static_cast<char>('0' + rest));
    }
    return "2.25." + digits;
}

std::optional<DicomEye> eyeFor(const EyeRecord& record)
{
    if (!record.seeing())
        return std::nullopt;
    DicomEye eye;
    eye.sphere = record.final.power.sphere.value();
    if (record.final.power.cylinder != Dioptres{}) {
        eye.cylinder = record.final.power.cylinder.value();
        eye.axis = record.final.power.axis.value();
    }
    eye.prism = record.final.prism;
    if (record.addition)
        eye.addition = record.addition->value();
    return eye;
}

} // namespace

ImportedRows readDicom(const std::vector<NamedBytes>& files, const ImportOptions& options)
{
    return DicomReader(options).read(files);
}

Reading<std::string> writeDicom(const ExchangePerson& person, const std::string& today)
{
    Reading<std::string> written;
    const auto& [record, rules] = person;
    if (charactersIn(record.person) > longestCode || record.person.find('\\') != std::string::npos) {
        written.findings.push_back(
            {Severity::error,
             record.position,
             "dicom-text",
             {QS_SAY("core", "\"%1\" cannot be a patient id: at most 64 characters, no backslash"),
              {shown(record.person)}}});
        return written;
    }
    DicomObject object;
    object.patientId = record.person;
    const auto day = record.writtenOn.empty() ? today : record.writtenOn;
    std::copy_if(day.begin(), day.end(), std::back_inserter(object.contentDate),
                 [](char c) { return c != '-'; });
    object.eyes = {eyeFor(record.eyes.right), eyeFor(record.eyes.left)};
    const auto& right = record.eyes.right.monocularPd;
    const auto& left = record.eyes.left.monocularPd;
    object.distancePd = record.distancePd ? record.distancePd
                        : right && left   ? std::optional(*right + *left)
                                          : std::nullopt;
    object.nearPd = record.nearPd;
    object.profile = rules.profile;
    object.profileVersion = rules.version;
    object.rulesHash = rules.hash;
    std::string columns = "{";
    for (const auto& [column, cell] : recordCells(record))
        if (staysHere(column))
            tellStays(record, column, written.findings);
        else if (!((column == "right" || column == "left") &&
                   record.eyes.of(column == "right" ? Eye::right : Eye::left).seeing()))
            addJsonMember(columns, column, jsonQuoted(cell));
    for (const auto& [column, cell] : record.otherColumns)
        if (!isRulesColumn(column))
            addJsonMember(columns, column, jsonQuoted(cell));
    object.record = columns + "}";
    written.value = writeDicomObject(object, {newUid(), newUid(), newUid()});
    return written;
}

} // namespace quarterstep
