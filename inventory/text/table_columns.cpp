// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/table_columns.hpp"

#include "inventory/text/prescription_table.hpp"
#include "inventory/text/source_text.hpp"
#include "inventory/text/table_cells.hpp"

#include <algorithm>
#include <array>

namespace quarterstep
{

namespace
{

template <Eye eye>
Said setEye(PersonRecord& record, const std::string& text)
{
    const auto parsed = parseEye(text, eye);
    if (!parsed)
        return parsed.complaint();
    record.eyes.of(eye).final = parsed.value();
    if (parsed.value().addition)
        record.eyes.of(eye).addition = parsed.value().addition;
    return {};
}

Said setBothAdditions(PersonRecord& record, const std::string& text)
{
    auto said = readAddition(record.eyes.right.addition, text);
    if (!said)
        record.eyes.left.addition = record.eyes.right.addition;
    return said;
}

template <Eye eye, auto member>
constexpr TableColumn acuityColumn(const char* name)
{
    return {name,
            [](PersonRecord& record, const std::string& text) {
                return readAcuity(record.eyes.of(eye).acuity.*member, text);
            },
            [](PersonRecord& record) { (record.eyes.of(eye).acuity.*member).reset(); }};
}

template <Eye eye, auto member>
constexpr TableColumn eyePowerColumn(const char* name)
{
    return {name,
            [](PersonRecord& record, const std::string& text) {
                return readPower(record.eyes.of(eye).*member, text);
            },
            [](PersonRecord& record) { (record.eyes.of(eye).*member).reset(); }};
}

template <Eye eye>
constexpr TableColumn eyeColumn(const char* name)
{
    return {name, setEye<eye>, [](PersonRecord& record) { record.eyes.of(eye).final = WrittenEye{}; }};
}

template <Eye eye>
constexpr TableColumn additionColumn(const char* name)
{
    return {name,
            [](PersonRecord& record, const std::string& text) {
                return readAddition(record.eyes.of(eye).addition, text);
            },
            [](PersonRecord& record) { record.eyes.of(eye).addition.reset(); }};
}

template <Eye eye>
constexpr TableColumn monocularColumn(const char* name)
{
    return {name,
            [](PersonRecord& record, const std::string& text) {
                return readPd(record.eyes.of(eye).monocularPd, text, mostMonocular);
            },
            [](PersonRecord& record) { record.eyes.of(eye).monocularPd.reset(); }};
}

template <auto member>
constexpr TableColumn pdColumn(const char* name)
{
    return {
        name,
        [](PersonRecord& record, const std::string& text) { return readPd(record.*member, text, mostPd); },
        [](PersonRecord& record) { (record.*member).reset(); }};
}

template <auto member, int least, int most>
constexpr TableColumn numberColumn(const char* name)
{
    return {name,
            [](PersonRecord& record, const std::string& text) {
                return readNumber(record.*member, text, least, most);
            },
            [](PersonRecord& record) { (record.*member).reset(); }};
}

template <Eye eye>
constexpr TableColumn heightColumn(const char* name)
{
    return {name,
            [](PersonRecord& record, const std::string& text) {
                return readNumber(record.eyes.of(eye).heightMm, text, 5, 50);
            },
            [](PersonRecord& record) { record.eyes.of(eye).heightMm.reset(); }};
}

template <auto member>
constexpr TableColumn textColumn(const char* name)
{
    return {name,
            [](PersonRecord& record, const std::string& text) -> Said {
                record.*member = text;
                return {};
            },
            [](PersonRecord& record) { (record.*member).clear(); }};
}

template <auto member>
constexpr TableColumn nearAcuityColumn(const char* name)
{
    return {name,
            [](PersonRecord& record, const std::string& text) { return readNear(record.*member, text); },
            [](PersonRecord& record) { (record.*member).reset(); }};
}

using R = PersonRecord;
using A = EyeAcuities;
constexpr Eye right = Eye::right;
constexpr Eye left = Eye::left;

constexpr std::array columns{
    textColumn<&R::person>("person"),
    numberColumn<&R::age, 0, 120>("age"),
    textColumn<&R::sex>("sex"),
    TableColumn{"purpose", setPurpose, [](R& record) { record.purpose = Purpose::unstated; }},
    eyeColumn<right>("right"),
    eyeColumn<left>("left"),
    TableColumn{"add", setBothAdditions,
                [](R& record) {
                    record.eyes.right.addition.reset();
                    record.eyes.left.addition.reset();
                }},
    additionColumn<right>("add_right"),
    additionColumn<left>("add_left"),
    eyePowerColumn<right, &EyeRecord::nearPower>("near_right"),
    eyePowerColumn<left, &EyeRecord::nearPower>("near_left"),
    pdColumn<&R::distancePd>("pd_mm"),
    monocularColumn<right>("pd_right_mm"),
    monocularColumn<left>("pd_left_mm"),
    pdColumn<&R::nearPd>("near_pd_mm"),
    numberColumn<&R::workingMm, 150, 1500>("working_mm"),
    numberColumn<&R::intermediateMm, 300, 4000>("intermediate_mm"),
    numberColumn<&R::vertexMm, 5, 25>("vertex_mm"),
    acuityColumn<right, &A::unaided>("va_unaided_right"),
    acuityColumn<left, &A::unaided>("va_unaided_left"),
    acuityColumn<right, &A::habitual>("va_habitual_right"),
    acuityColumn<left, &A::habitual>("va_habitual_left"),
    acuityColumn<right, &A::pinhole>("va_pinhole_right"),
    acuityColumn<left, &A::pinhole>("va_pinhole_left"),
    acuityColumn<right, &A::best>("va_best_right"),
    acuityColumn<left, &A::best>("va_best_left"),
    acuityColumn<right, &A::meanSphere>("va_sphere_right"),
    acuityColumn<left, &A::meanSphere>("va_sphere_left"),
    nearAcuityColumn<&R::nearUnaided>("near_unaided"),
    nearAcuityColumn<&R::nearBest>("near_best"),
    TableColumn{"lens_implant", setLensImplant,
                [](R& record) { record.eyes.right.lensImplant = record.eyes.left.lensImplant = false; }},
    TableColumn{"signs", setSigns, [](R& record) { record.signs.clear(); }},
    textColumn<&R::symptoms>("symptoms"),
    eyePowerColumn<right, &EyeRecord::worn>("worn_right"),
    eyePowerColumn<left, &EyeRecord::worn>("worn_left"),
    TableColumn{"worn_add",
                [](R& record, const std::string& text) { return readAddition(record.wornAddition, text); },
                [](R& record) { record.wornAddition.reset(); }},
    eyePowerColumn<right, &EyeRecord::objective>("objective_right"),
    eyePowerColumn<left, &EyeRecord::objective>("objective_left"),
    TableColumn{"cycloplegia", setCycloplegia, [](R& record) { record.cycloplegia.reset(); }},
    TableColumn{"source", setSource, [](R& record) { record.objectiveOnly = false; }},
    textColumn<&R::prescriber>("prescriber"),
    TableColumn{"written_on", setWrittenOn, clearWrittenOn},
    TableColumn{"frame_size", setFrameSize, [](R& record) { record.frameSize.clear(); }},
    heightColumn<right>("height_right_mm"),
    heightColumn<left>("height_left_mm"),
    textColumn<&R::frame>("frame"),
    textColumn<&R::guardian>("guardian"),
};

} // namespace

std::span<const TableColumn> tableColumns()
{
    return columns;
}

const TableColumn* columnNamed(const std::string& name)
{
    const auto found = std::find_if(columns.begin(), columns.end(),
                                    [&](const TableColumn& column) { return column.name == name; });
    return found == columns.end() ? nullptr : &*found;
}

std::optional<Complaint> setField(PersonRecord& record, const std::string& column, const std::string& text)
{
    const TableColumn* known = columnNamed(column);
    if (known == nullptr)
        return Complaint{
            "column-unknown", {QS_SAY("core", "there is no column \"%1\" in the table"), {shown(column)}}, 0};
    const std::size_t begin = text.find_first_not_of(" \t\r\n");
    if (begin == std::string::npos) {
        known->clear(record);
        return {};
    }
    const std::string trimmed = text.substr(begin, text.find_last_not_of(" \t\r\n") - begin + 1);
    auto said = known->set(record, trimmed);
    if (said)
        said->offset += static_cast<int>(charactersIn(text.substr(0, begin)));
    return said;
}

} // namespace quarterstep
