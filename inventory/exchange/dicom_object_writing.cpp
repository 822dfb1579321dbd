// SPDX-License-Identifier: GPL-3.0-or-later
// A Subjective Refraction on its way out.
#include "inventory/exchange/dicom_object.hpp"

#include <dcmtk/config/osconfig.h>

#include <dcmtk/dcmdata/dcdatset.h>
#include <dcmtk/dcmdata/dcdeftag.h>
#include <dcmtk/dcmdata/dcfilefo.h>
#include <dcmtk/dcmdata/dcostrmb.h>
#include <dcmtk/dcmdata/dcuid.h>
#include <dcmtk/oflog/oflog.h>

#include <cmath>

namespace quarterstep
{

namespace
{

constexpr std::size_t roomForMeta = 65536;

void putText(DcmItem& item, const DcmTag& tag, const std::string& text)
{
    (void)item.putAndInsertString(tag, text.c_str());
}

DcmTag privateTag(Uint16 element, DcmEVR vr)
{
    DcmTag tag(dicomPrivateGroup, element);
    tag.setPrivateCreator(dicomPrivateCreator);
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
    putText(data, DcmTag(dicomPrivateGroup, 0x0010, DcmVR(EVR_LO)), dicomPrivateCreator);
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
