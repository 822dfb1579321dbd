// SPDX-License-Identifier: GPL-3.0-or-later
// Ranges in mm and years are common practice: wide enough for every person, narrow enough for a slip of unit or of the
// decimal point.
#include "inventory/text/table_columns.hpp"

#include "inventory/text/numbers.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/source_text.hpp"
#include "inventory/text/table_dates.hpp"
#include "inventory/text/yaml_map.hpp"

#include <algorithm>
#include <array>

namespace quarterstep
{

namespace
{

using Said = std::optional<Complaint>;

constexpr double least_pd = 20.0;
constexpr double most_pd = 100.0;
constexpr double most_monocular = 50.0;
constexpr double largestAddition = 6.0;

std::string lowered(std::string text)
{
    for (char& c : text)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return text;
}

Complaint notAWord(const std::string& text, std::span<const char* const> words, int offset = 0)
{
    return {"unknown-word",
            {QS_SAY("core", "\"%1\" is not one of the words allowed here; write one of: %2"),
             {shown(text), listed(words)}},
            offset};
}

std::optional<std::size_t> wordIndex(const std::string& text, std::span<const char* const> words)
{
    const auto found = std::find(words.begin(), words.end(), lowered(text));
    return found == words.end() ? std::nullopt : std::optional<std::size_t>(found - words.begin());
}

Said readNumber(std::optional<double>& target, const std::string& text, double least, double most)
{
    const auto parsed = parseNumber(text, least, most, Decimals::dotOrComma);
    if (!parsed)
        return parsed.complaint();
    target = parsed.value();
    return {};
}

/// A pupillary distance: slips of unit and notation get their own words.
Said readPd(std::optional<double>& target, const std::string& text, double most)
{
    if (text.find_first_of("/+") != std::string::npos)
        return Complaint{"pd-two-numbers",
                         {QS_SAY("core", "\"%1\" holds two numbers; write one here, each eye's own in pd_right_mm and "
                                         "pd_left_mm, the near one in near_pd_mm"),
                          {shown(text)}},
                         0};
    constexpr double wide = 1e6;
    const auto parsed = parseNumber(text, -wide, wide, Decimals::dotOrComma);
    if (!parsed)
        return parsed.complaint();
    const double value = parsed.value();
    constexpr double leastCm = 2.0;
    constexpr double mostCm = 10.0;
    if (value >= leastCm && value <= mostCm)
        return Complaint{"pd-in-cm",
                         {QS_SAY("core", "%1 would be a distance in cm; write it in mm: %2"),
                          {shown(text), writeNumber(static_cast<double>(parseThousandths(text, 0.0, mostCm,
                                                                                         Decimals::dotOrComma)
                                                                            .value()) /
                                                    100.0)}},
                         0};
    if (value < least_pd || value > most)
        return Complaint{"pd-range",
                         {QS_SAY("core", "%1 mm is not a pupillary distance; expected are %2 to %3 mm"),
                          {shown(text), writeNumber(least_pd), writeNumber(most)}},
                         0};
    target = value;
    return {};
}

Said readPower(std::optional<SpheroCylinder>& target, const std::string& text)
{
    const auto parsed = parsePower(text);
    if (!parsed)
        return parsed.complaint();
    target = parsed.value();
    return {};
}

Said readAddition(std::optional<Dioptres>& target, const std::string& text)
{
    if (text.front() == '-')
        return Complaint{"addition-negative",
                         {QS_SAY("core", "an addition is never minus; %1 was read; write the addition, not the near "
                                         "power (that goes into near_right and near_left)"),
                          {shown(text)}},
                         0};
    const auto parsed = parseDioptres(text, false);
    if (!parsed)
        return parsed.complaint();
    if (parsed.value() < Dioptres{} || parsed.value() > Dioptres{largestAddition})
        return Complaint{
            "addition-range", {QS_SAY("core", "the addition %1 is outside 0.00 to +6.00"), {shown(text)}}, 0};
    target = parsed.value();
    return {};
}

Said readAcuity(std::optional<Acuity>& target, const std::string& text)
{
    const auto parsed = parseAcuity(text);
    if (!parsed)
        return parsed.complaint();
    target = parsed.value();
    return {};
}

Said readNear(std::optional<NearAcuity>& target, const std::string& text)
{
    const auto parsed = parseNearAcuity(text);
    if (!parsed)
        return parsed.complaint();
    target = parsed.value();
    return {};
}

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

Said setPurpose(PersonRecord& record, const std::string& text)
{
    constexpr std::array words{"distance", "near", "intermediate", "bifocal", "both"};
    constexpr std::array purposes{Purpose::distance, Purpose::near, Purpose::intermediate, Purpose::bifocal,
                                  Purpose::both};
    const auto index = wordIndex(text, words);
    if (!index)
        return notAWord(text, words);
    record.purpose = purposes.at(*index);
    return {};
}

Said setLensImplant(PersonRecord& record, const std::string& text)
{
    constexpr std::array words{"no", "right", "left", "both"};
    const auto index = wordIndex(text, words);
    if (!index)
        return notAWord(text, words);
    record.eyes.right.lensImplant = *index == 1 || *index == 3;
    record.eyes.left.lensImplant = *index == 2 || *index == 3;
    return {};
}

Said setSigns(PersonRecord& record, const std::string& text)
{
    constexpr std::array words{"sudden loss", "pain",        "red eye", "flashes or floaters",
                               "double vision", "white pupil", "squint",  "cycloplegia wanted"};
    constexpr std::array signs{Sign::suddenLoss,   Sign::pain,       Sign::redEye, Sign::flashesOrFloaters,
                               Sign::doubleVision, Sign::whitePupil, Sign::squint, Sign::cycloplegiaWanted};
    std::vector<Sign> found;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find(';', at), text.size());
        const std::size_t begin = std::min(text.find_first_not_of(' ', at), end);
        std::string word = text.substr(begin, end - begin);
        word.erase(word.find_last_not_of(' ') + 1);
        const auto index = wordIndex(word, words);
        if (!index && !word.empty())
            return notAWord(word, words, static_cast<int>(charactersIn(text.substr(0, begin))));
        if (index && std::find(found.begin(), found.end(), signs.at(*index)) == found.end())
            found.push_back(signs.at(*index));
        at = end + 1;
    }
    record.signs = found;
    return {};
}

Said setCycloplegia(PersonRecord& record, const std::string& text)
{
    constexpr std::array words{"no", "yes"};
    const auto index = wordIndex(text, words);
    if (!index)
        return notAWord(text, words);
    record.cycloplegia = *index == 1;
    return {};
}

Said setSource(PersonRecord& record, const std::string& text)
{
    constexpr std::array words{"final", "objective"};
    const auto index = wordIndex(text, words);
    if (!index)
        return notAWord(text, words);
    record.objectiveOnly = *index == 1;
    return {};
}

Said setFrameSize(PersonRecord& record, const std::string& text)
{
    constexpr std::array words{"small", "medium", "large"};
    const auto index = wordIndex(text, words);
    if (!index)
        return notAWord(text, words);
    record.frameSize = words.at(*index);
    return {};
}

Said setWrittenOn(PersonRecord& record, const std::string& text)
{
    if (!parseIsoDate(text))
        return Complaint{"date-form",
                         {QS_SAY("core", "\"%1\" is not a date of the form 2026-03-01 (year-month-day)"), {shown(text)}},
                         0};
    record.writtenOn = text;
    record.monthsSinceWritten.reset();
    return {};
}

void clearWrittenOn(PersonRecord& record)
{
    record.writtenOn.clear();
    record.monthsSinceWritten.reset();
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
                return readPd(record.eyes.of(eye).monocularPd, text, most_monocular);
            },
            [](PersonRecord& record) { record.eyes.of(eye).monocularPd.reset(); }};
}

template <auto member>
constexpr TableColumn pdColumn(const char* name)
{
    return {name,
            [](PersonRecord& record, const std::string& text) { return readPd(record.*member, text, most_pd); },
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
    textColumn<&R::guardian>("guardian"),
};

} // namespace

std::span<const TableColumn> tableColumns() { return columns; }

const TableColumn* columnNamed(const std::string& name)
{
    const auto found =
        std::find_if(columns.begin(), columns.end(), [&](const TableColumn& column) { return column.name == name; });
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
