// SPDX-License-Identifier: GPL-3.0-or-later
// This file and that of the writer are all that sees DCMTK. A refractive object is small and flat: what nests
// deeply or is compressed is refused before the library reads it, since it would follow it as deep as the
// stack goes.
#include "inventory/exchange/dicom_object.hpp"

#include "inventory/exchange/dicom_bytes.hpp"

#include <dcmtk/config/osconfig.h>

#include <dcmtk/dcmdata/dcdatset.h>
#include <dcmtk/dcmdata/dcdeftag.h>
#include <dcmtk/dcmdata/dcfilefo.h>
#include <dcmtk/dcmdata/dcistrmb.h>
#include <dcmtk/dcmdata/dcuid.h>
#include <dcmtk/oflog/oflog.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr std::size_t mostItems = 1000;
constexpr std::size_t mostBytes = std::size_t{4} * 1024 * 1024;
constexpr std::size_t mostNames = 24;

struct KindRow {
    DicomKind kind;
    const char* uid;
    DcmTagKey right;
    DcmTagKey left;
};

const std::array<KindRow, 4>& kinds()
{
    static const std::array<KindRow, 4> rows{
        KindRow{DicomKind::lensometry, UID_LensometryMeasurementsStorage, DCM_RightLensSequence,
                DCM_LeftLensSequence},
        KindRow{DicomKind::autorefraction, UID_AutorefractionMeasurementsStorage,
                DCM_AutorefractionRightEyeSequence, DCM_AutorefractionLeftEyeSequence},
        KindRow{DicomKind::subjective, UID_SubjectiveRefractionMeasurementsStorage,
                DCM_SubjectiveRefractionRightEyeSequence, DCM_SubjectiveRefractionLeftEyeSequence},
        KindRow{DicomKind::acuity, UID_VisualAcuityMeasurementsStorage, DCM_VisualAcuityRightEyeSequence,
                DCM_VisualAcuityLeftEyeSequence}};
    return rows;
}

class ObjectReader
{
  public:
    ObjectReader(const std::string& bytes, const std::string& name) : bytes_(bytes), name_(name) {}

    Reading<DicomObject> read()
    {
        OFLog::configure(OFLogger::OFF_LOG_LEVEL);
        if (mayBeRead())
            parse();
        return std::move(reading_);
    }

  private:
    void refuse(const char* code, Sentence sentence)
    {
        reading_.findings.push_back({Severity::error, {name_, 0, 0}, code, std::move(sentence)});
    }

    bool mayBeRead()
    {
        const auto items = dicomItems(bytes_);
        if (!isDicom(bytes_))
            refuse("dicom-not",
                   {QS_SAY("core", "this is no DICOM file: the letters DICM do not stand at byte 128"), {}});
        else if (items > mostItems || bytes_.size() > mostBytes)
            refuse("dicom-too-deep",
                   {QS_SAY("core", "this is too large for a refraction: %1 bytes, %2 items"),
                    {std::to_string(bytes_.size()), std::to_string(items)}});
        else if (!dicomSound(bytes_))
            refuse("dicom-broken",
                   {QS_SAY("core", "the DICOM file is broken, or neither explicit nor implicit little "
                                   "endian: a length points out of it, or a part is not understood"),
                    {}});
        return reading_.findings.empty();
    }

    void parse()
    {
        DcmInputBufferStream stream;
        stream.setBuffer(bytes_.data(), static_cast<offile_off_t>(bytes_.size()));
        stream.setEos();
        DcmFileFormat file;
        file.transferInit();
        const auto status = file.read(stream);
        file.transferEnd();
        auto* data = file.getDataset();
        if (status.bad() || data == nullptr) {
            refuse("dicom-broken", {QS_SAY("core", "the DICOM file is broken: %1"), {status.text()}});
            return;
        }
        const auto uid = textOf(*data, DCM_SOPClassUID);
        for (const auto& row : kinds())
            if (uid == row.uid) {
                fill(*data, row);
                return;
            }
        refuse(
            "dicom-class",
            {QS_SAY(
                 "core",
                 "the object \"%1\" is none of lensometry, autorefraction, subjective refraction or visual "
                 "acuity"),
             {uid.substr(0, 64)}});
    }

    static std::string textOf(DcmItem& item, const DcmTagKey& tag)
    {
        OFString text;
        if (item.findAndGetOFStringArray(tag, text).bad())
            return {};
        std::string value(text.c_str(), text.length());
        value.erase(value.find_last_not_of(' ') + 1);
        return value;
    }

    /// A number of any of the two floating types; empty when there is none or it is not finite.
    static std::optional<double> numberOf(DcmItem& item, const DcmTagKey& tag, std::string& wrong)
    {
        if (!item.tagExistsWithValue(tag))
            return std::nullopt;
        Float64 wide = 0.0;
        Float32 narrow = 0.0F;
        std::optional<double> value;
        double near = 1e-9;
        if (item.findAndGetFloat64(tag, wide).good()) {
            value = wide;
        } else if (item.findAndGetFloat32(tag, narrow).good()) {
            value = static_cast<double>(narrow);
            near = 1e-4; // four bytes hold six digits: what was a thousandth becomes one again
        }
        constexpr double widest = 1e6;
        constexpr double thousand = 1000.0;
        if (!value || !std::isfinite(*value) || std::abs(*value) > widest) {
            wrong = DcmTag(tag).getTagName();
            return std::nullopt;
        }
        const double rounded = std::round(*value * thousand) / thousand + 0.0;
        return std::abs(rounded - *value) < near ? rounded : *value;
    }

    void fill(DcmDataset& data, const KindRow& row)
    {
        auto& object = reading_.value;
        std::string wrong;
        object.kind = row.kind;
        object.patientId = textOf(data, DCM_PatientID);
        object.contentDate = textOf(data, DCM_ContentDate);
        object.distancePd = numberOf(data, DCM_DistancePupillaryDistance, wrong);
        object.nearPd = numberOf(data, DCM_NearPupillaryDistance, wrong);
        object.vertexMm = numberOf(data, DcmTagKey(0x0022, 0x000F), wrong);
        object.viewingDistance = textOf(data, DCM_ViewingDistanceType);
        DcmItem* code = nullptr;
        if (data.findAndGetSequenceItem(DCM_VisualAcuityTypeCodeSequence, code).good() && code != nullptr)
            object.acuityType = textOf(*code, DCM_CodeMeaning);
        object.eyes.right = eyeOf(data, row.right);
        object.eyes.left = eyeOf(data, row.left);
        if (textOf(data, DcmTagKey(dicomPrivateGroup, 0x0010)) == dicomPrivateCreator)
            fillPrivate(data);
        listUnused(data, row);
        if (!wrong.empty() && object.eyes.right)
            object.eyes.right->wrong = wrong;
        else if (!wrong.empty() && object.eyes.left)
            object.eyes.left->wrong = wrong;
    }

    void fillPrivate(DcmDataset& data)
    {
        auto& object = reading_.value;
        object.profile = textOf(data, DcmTagKey(dicomPrivateGroup, 0x1001));
        object.profileVersion = textOf(data, DcmTagKey(dicomPrivateGroup, 0x1002));
        object.rulesHash = textOf(data, DcmTagKey(dicomPrivateGroup, 0x1003));
        object.record = textOf(data, DcmTagKey(dicomPrivateGroup, 0x1010));
    }

    std::optional<DicomEye> eyeOf(DcmDataset& data, const DcmTagKey& sequence)
    {
        DcmItem* item = nullptr;
        DcmSequenceOfItems* all = nullptr;
        if (data.findAndGetSequence(sequence, all).bad() || all == nullptr || all->card() == 0 ||
            data.findAndGetSequenceItem(sequence, item).bad() || item == nullptr)
            return std::nullopt;
        DicomEye eye;
        if (all->card() > 1)
            eye.wrong = DcmTag(sequence).getTagName();
        eye.sphere = numberOf(*item, DCM_SpherePower, eye.wrong);
        eye.decimalAcuity = numberOf(*item, DCM_DecimalVisualAcuity, eye.wrong);
        DcmItem* part = nullptr;
        if (item->findAndGetSequenceItem(DCM_CylinderSequence, part).good() && part != nullptr) {
            eye.cylinder = numberOf(*part, DCM_CylinderPower, eye.wrong);
            eye.axis = numberOf(*part, DCM_CylinderAxis, eye.wrong);
            if (!eye.cylinder || !eye.axis)
                eye.wrong = "CylinderSequence";
        }
        part = nullptr;
        if (item->findAndGetSequenceItem(DCM_PrismSequence, part).good() && part != nullptr)
            eye.prism = prismOf(*part, eye.wrong);
        part = nullptr;
        if (item->findAndGetSequenceItem(DCM_AddNearSequence, part).good() && part != nullptr)
            eye.addition = numberOf(*part, DCM_AddPower, eye.wrong);
        noteUnused(*item, {DCM_SpherePower, DCM_CylinderSequence, DCM_PrismSequence, DCM_AddNearSequence,
                           DCM_DecimalVisualAcuity});
        return eye;
    }

    static EyePrism prismOf(DcmItem& item, std::string& wrong)
    {
        const auto part = [&](const DcmTagKey& power, const DcmTagKey& base, const char* plus,
                              const char* minus) {
            const auto amount = numberOf(item, power, wrong);
            const auto word = textOf(item, base);
            if (!amount || *amount < 0.0 || (*amount != 0.0 && word != plus && word != minus))
                wrong = DcmTag(power).getTagName();
            return amount.value_or(0.0) * (word == minus ? -1.0 : 1.0) + 0.0;
        };
        return {part(DCM_HorizontalPrismPower, DCM_HorizontalPrismBase, "IN", "OUT"),
                part(DCM_VerticalPrismPower, DCM_VerticalPrismBase, "UP", "DOWN")};
    }

    void listUnused(DcmDataset& data, const KindRow& row)
    {
        noteUnused(data, {DCM_SOPClassUID, DCM_PatientID, DCM_ContentDate, DCM_DistancePupillaryDistance,
                          DCM_NearPupillaryDistance, DcmTagKey(0x0022, 0x000F), DCM_ViewingDistanceType,
                          DCM_VisualAcuityTypeCodeSequence, row.right, row.left, DCM_SpecificCharacterSet});
    }

    void noteUnused(DcmItem& item, std::initializer_list<DcmTagKey> used)
    {
        auto& names = reading_.value.unused;
        for (auto* object = item.nextInContainer(nullptr); object != nullptr;
             object = item.nextInContainer(object)) {
            DcmTag tag = object->getTag();
            const DcmTagKey key(tag.getGroup(), tag.getElement());
            const bool empty = object->getLength() == 0;
            if (std::find(used.begin(), used.end(), key) != used.end() || empty ||
                (tag.getGroup() == dicomPrivateGroup && !reading_.value.profile.empty()))
                continue;
            if (names.size() < mostNames)
                names.emplace_back(tag.isPrivate() ? tag.toString().c_str() : tag.getTagName());
        }
    }

    const std::string& bytes_;
    std::string name_;
    Reading<DicomObject> reading_;
};

} // namespace

Reading<DicomObject> readDicomObject(const std::string& bytes, const std::string& name)
{
    return ObjectReader(bytes, name).read();
}

} // namespace quarterstep
