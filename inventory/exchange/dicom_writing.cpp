// SPDX-License-Identifier: GPL-3.0-or-later
// A prescription as a DICOM object.
#include "inventory/exchange/dicom.hpp"
#include "inventory/exchange/dicom_object.hpp"
#include "inventory/exchange/json_text.hpp"
#include "inventory/text/record_text.hpp"

#include <algorithm>
#include <array>
#include <random>

namespace quarterstep
{

namespace
{

constexpr std::size_t longestCode = 64;

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
