// SPDX-License-Identifier: GPL-3.0-or-later
// The only file that sees DCMTK. A refractive object is small and flat: what nests deeply or is compressed is
// refused before the library reads it, since it would follow it as deep as the stack goes.
#include "inventory/exchange/dicom_object.hpp"

#include <dcmtk/config/osconfig.h>

#include <dcmtk/dcmdata/dcdatset.h>
#include <dcmtk/dcmdata/dcdeftag.h>
#include <dcmtk/dcmdata/dcfilefo.h>
#include <dcmtk/dcmdata/dcistrmb.h>
#include <dcmtk/dcmdata/dcostrmb.h>
#include <dcmtk/dcmdata/dcuid.h>
#include <dcmtk/oflog/oflog.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

namespace quarterstep
{

namespace
{

constexpr std::size_t preamble = 128;
constexpr std::size_t mostItems = 1000;
constexpr std::size_t mostBytes = std::size_t{4} * 1024 * 1024;
constexpr std::size_t roomForMeta = 65536;
constexpr std::size_t mostNames = 24;
constexpr const char* privateCreator = "QUARTERSTEP";
constexpr Uint16 privateGroup = 0x0047;

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

std::size_t countOf(const std::string& bytes, const std::string& mark)
{
    std::size_t count = 0;
    for (auto at = bytes.find(mark); at != std::string::npos; at = bytes.find(mark, at + mark.size()))
        ++count;
    return count;
}

/// Whether all lengths of a file lie inside it: the library reserves what a length says before it reads. Only
/// what is understood here to the last byte goes on; explicit or implicit value representations, little
/// endian.
class Walker
{
  public:
    explicit Walker(const std::string& bytes) : bytes_(bytes) {}

    bool sound()
    {
        std::size_t at = preamble + 4;
        std::string syntax;
        while (at + 8 <= bytes_.size() && u16(at) == 2) {
            const auto element = u16(at + 2);
            const auto begin = at;
            if (!oneElement(at, bytes_.size(), false, 0))
                return false;
            if (element == 0x0010)
                syntax = bytes_.substr(begin + 8, at - begin - 8);
        }
        syntax.resize(std::min(syntax.find('\0'), syntax.size()));
        const bool implicit = syntax == UID_LittleEndianImplicitTransferSyntax;
        if (!implicit && syntax != UID_LittleEndianExplicitTransferSyntax)
            return false;
        return elements(at, bytes_.size(), implicit, 0, false);
    }

  private:
    static constexpr std::uint32_t undefined = 0xFFFFFFFF;
    static constexpr int deepest = 32;

    [[nodiscard]] std::uint32_t byte(std::size_t at) const { return static_cast<unsigned char>(bytes_[at]); }
    [[nodiscard]] std::uint32_t u16(std::size_t at) const { return byte(at) | (byte(at + 1) << 8U); }
    [[nodiscard]] std::uint32_t u32(std::size_t at) const { return u16(at) | (u16(at + 2) << 16U); }
    [[nodiscard]] bool itemAt(std::size_t at) const { return u16(at) == 0xFFFE && u16(at + 2) == 0xE000; }

    /// Elements up to `end`, or up to the mark that ends an item of undefined length.
    bool elements(std::size_t& at, std::size_t end, bool implicit, int depth, bool untilMark)
    {
        while (at < end) {
            if (end - at < 8)
                return false;
            if (u16(at) == 0xFFFE) {
                const bool mark = untilMark && u16(at + 2) == 0xE00D && u32(at + 4) == 0;
                at += 8;
                return mark;
            }
            if (!oneElement(at, end, implicit, depth))
                return false;
        }
        return !untilMark;
    }

    static bool listed(const std::string& words, const std::string& vr)
    {
        const auto found = words.find(vr);
        return found != std::string::npos && found % 3 == 0;
    }

    bool oneElement(std::size_t& at, std::size_t end, bool implicit, int depth)
    {
        if (depth > deepest || end - at < 8)
            return false;
        static const std::string wide = "OB OD OF OL OV OW SQ SV UC UN UR UT UV ";
        static const std::string narrow = "AE AS AT CS DA DS DT FD FL IS LO LT PN SH SL SS ST TM UI UL US ";
        const auto vr = implicit ? std::string() : bytes_.substr(at + 4, 2) + " ";
        const bool isWide = !implicit && listed(wide, vr);
        if (!implicit && !isWide && !listed(narrow, vr))
            return false;
        if (isWide && end - at < 12)
            return false;
        const auto length = implicit ? u32(at + 4) : isWide ? u32(at + 8) : u16(at + 6);
        at += isWide ? 12 : 8;
        if (length == undefined && (implicit || isWide))
            return items(at, end, implicit || vr == "UN ", depth + 1, true);
        if (length > end - at)
            return false;
        const auto behind = at + length;
        const bool sequence = vr == "SQ " || ((implicit || vr == "UN ") && length >= 8 && itemAt(at));
        if (!sequence) {
            at = behind;
            return true;
        }
        return items(at, behind, implicit || vr == "UN ", depth + 1, false) && at == behind;
    }

    bool items(std::size_t& at, std::size_t end, bool implicit, int depth, bool untilMark)
    {
        while (untilMark || at < end) {
            if (end - at < 8)
                return false;
            const auto length = u32(at + 4);
            const bool mark = u16(at) == 0xFFFE && u16(at + 2) == 0xE0DD;
            const bool item = itemAt(at);
            at += 8;
            if (mark)
                return untilMark && length == 0;
            if (!item || (length != undefined && length > end - at))
                return false;
            const auto behind = length == undefined ? end : at + length;
            if (!elements(at, behind, implicit, depth, length == undefined))
                return false;
        }
        return true;
    }

    const std::string& bytes_;
};

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
        const bool marked = bytes_.size() > preamble + 4 && bytes_.compare(preamble, 4, "DICM") == 0;
        const auto items = countOf(bytes_, std::string("\xFE\xFF\x00\xE0", 4)) +
                           countOf(bytes_, std::string("\xFF\xFE\xE0\x00", 4));
        if (!marked)
            refuse("dicom-not",
                   {QS_SAY("core", "this is no DICOM file: the letters DICM do not stand at byte 128"), {}});
        else if (items > mostItems || bytes_.size() > mostBytes)
            refuse("dicom-too-deep",
                   {QS_SAY("core", "this is too large for a refraction: %1 bytes, %2 items"),
                    {std::to_string(bytes_.size()), std::to_string(items)}});
        else if (!Walker(bytes_).sound())
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
        if (textOf(data, DcmTagKey(privateGroup, 0x0010)) == privateCreator)
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
        object.profile = textOf(data, DcmTagKey(privateGroup, 0x1001));
        object.profileVersion = textOf(data, DcmTagKey(privateGroup, 0x1002));
        object.rulesHash = textOf(data, DcmTagKey(privateGroup, 0x1003));
        object.record = textOf(data, DcmTagKey(privateGroup, 0x1010));
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
                (tag.getGroup() == privateGroup && !reading_.value.profile.empty()))
                continue;
            if (names.size() < mostNames)
                names.emplace_back(tag.isPrivate() ? tag.toString().c_str() : tag.getTagName());
        }
    }

    const std::string& bytes_;
    std::string name_;
    Reading<DicomObject> reading_;
};

void putText(DcmItem& item, const DcmTag& tag, const std::string& text)
{
    (void)item.putAndInsertString(tag, text.c_str());
}

DcmTag privateTag(Uint16 element, DcmEVR vr)
{
    DcmTag tag(privateGroup, element);
    tag.setPrivateCreator(privateCreator);
    tag.setVR(DcmVR(vr));
    return tag;
}

void putEye(DcmDataset& data, const DcmTagKey& sequence, const DicomEye& eye)
{
    DcmItem* item = nullptr;
    if (data.findOrCreateSequenceItem(sequence, item, -2).bad())
        return;
    (void)item->putAndInsertFloat64(DCM_SpherePower, eye.sphere.value_or(0.0));
    DcmItem* part = nullptr;
    if (eye.cylinder && item->findOrCreateSequenceItem(DCM_CylinderSequence, part, -2).good()) {
        (void)part->putAndInsertFloat64(DCM_CylinderPower, *eye.cylinder);
        (void)part->putAndInsertFloat32(DCM_CylinderAxis, static_cast<Float32>(eye.axis.value_or(0.0)));
    }
    if (eye.prism && item->findOrCreateSequenceItem(DCM_PrismSequence, part, -2).good()) {
        (void)part->putAndInsertFloat64(DCM_HorizontalPrismPower, std::abs(eye.prism->in));
        putText(*part, DCM_HorizontalPrismBase, eye.prism->in < 0.0 ? "OUT" : "IN");
        (void)part->putAndInsertFloat64(DCM_VerticalPrismPower, std::abs(eye.prism->up));
        putText(*part, DCM_VerticalPrismBase, eye.prism->up < 0.0 ? "DOWN" : "UP");
    }
    if (eye.addition && item->findOrCreateSequenceItem(DCM_AddNearSequence, part, -2).good())
        (void)part->putAndInsertFloat64(DCM_AddPower, *eye.addition);
}

/// Attributes of the modules that every object has; what nobody knows stays empty where the standard allows
/// it.
void putModules(DcmDataset& data, const DicomObject& object, const std::vector<std::string>& uids)
{
    putText(data, DCM_SpecificCharacterSet, "ISO_IR 192");
    putText(data, DCM_SOPClassUID, UID_SubjectiveRefractionMeasurementsStorage);
    putText(data, DCM_SOPInstanceUID, uids.at(0));
    putText(data, DCM_SeriesInstanceUID, uids.at(1));
    putText(data, DCM_StudyInstanceUID, uids.at(2));
    putText(data, DCM_Modality, "SRF");
    for (const auto& tag : {DCM_StudyDate, DCM_ContentDate})
        putText(data, tag, object.contentDate);
    for (const auto& tag : {DCM_StudyTime, DCM_ContentTime})
        putText(data, tag, "000000");
    for (const auto& tag : {DCM_PatientName, DCM_PatientBirthDate, DCM_PatientSex, DCM_ReferringPhysicianName,
                            DCM_StudyID, DCM_AccessionNumber})
        putText(data, tag, "");
    putText(data, DCM_PatientID, object.patientId);
    putText(data, DCM_SeriesNumber, "1");
    putText(data, DCM_InstanceNumber, "1");
    putText(data, DCM_Manufacturer, "Quarterstep");
    putText(data, DCM_ManufacturerModelName, "quarterstep");
    putText(data, DCM_DeviceSerialNumber, "none");
    putText(data, DCM_SoftwareVersions, object.profile + " " + object.profileVersion);
    const bool right = object.eyes.right.has_value();
    const bool left = object.eyes.left.has_value();
    if (right || left)
        putText(data, DcmTagKey(0x0024, 0x0113), right && left ? "B" : right ? "R" : "L");
}

} // namespace

Reading<DicomObject> readDicomObject(const std::string& bytes, const std::string& name)
{
    return ObjectReader(bytes, name).read();
}

std::string writeDicomObject(const DicomObject& object, const std::vector<std::string>& uids)
{
    OFLog::configure(OFLogger::OFF_LOG_LEVEL);
    DcmFileFormat file;
    auto& data = *file.getDataset();
    putModules(data, object, uids);
    if (object.eyes.right)
        putEye(data, DCM_SubjectiveRefractionRightEyeSequence, *object.eyes.right);
    if (object.eyes.left)
        putEye(data, DCM_SubjectiveRefractionLeftEyeSequence, *object.eyes.left);
    if (object.distancePd)
        (void)data.putAndInsertFloat64(DCM_DistancePupillaryDistance, *object.distancePd);
    if (object.nearPd)
        (void)data.putAndInsertFloat64(DCM_NearPupillaryDistance, *object.nearPd);
    putText(data, DcmTag(privateGroup, 0x0010, DcmVR(EVR_LO)), privateCreator);
    putText(data, privateTag(0x1001, EVR_LO), object.profile);
    putText(data, privateTag(0x1002, EVR_LO), object.profileVersion);
    putText(data, privateTag(0x1003, EVR_LO), object.rulesHash);
    putText(data, privateTag(0x1010, EVR_UT), object.record);
    std::string bytes(roomForMeta + object.record.size(), '\0');
    DcmOutputBufferStream stream(bytes.data(), static_cast<offile_off_t>(bytes.size()));
    (void)file.validateMetaInfo(EXS_LittleEndianExplicit);
    file.transferInit();
    (void)file.write(stream, EXS_LittleEndianExplicit, EET_ExplicitLength, nullptr);
    file.transferEnd();
    void* begin = nullptr;
    offile_off_t length = 0;
    stream.flushBuffer(begin, length);
    return {static_cast<const char*>(begin), static_cast<std::size_t>(length)};
}

} // namespace quarterstep
