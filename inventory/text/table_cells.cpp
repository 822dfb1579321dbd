// SPDX-License-Identifier: GPL-3.0-or-later
// Ranges in mm are common practice: wide enough for every person, narrow enough for a slip of unit or of the
// decimal point.
#include "inventory/text/table_cells.hpp"

#include "inventory/text/numbers.hpp"
#include "inventory/text/source_text.hpp"
#include "inventory/text/table_dates.hpp"
#include "inventory/text/yaml_map.hpp"

#include <algorithm>
#include <array>
#include <span>

namespace quarterstep
{

namespace
{

constexpr double leastPd = 20.0;
constexpr double largestAddition = 6.0;

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

} // namespace

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
        return Complaint{
            "pd-two-numbers",
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
        return Complaint{
            "pd-in-cm",
            {QS_SAY("core", "%1 would be a distance in cm; write it in mm: %2"),
             {shown(text),
              writeNumber(
                  static_cast<double>(parseThousandths(text, 0.0, mostCm, Decimals::dotOrComma).value()) /
                  100.0)}},
            0};
    if (value < leastPd || value > most)
        return Complaint{"pd-range",
                         {QS_SAY("core", "%1 mm is not a pupillary distance; expected are %2 to %3 mm"),
                          {shown(text), writeNumber(leastPd), writeNumber(most)}},
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
        return Complaint{
            "addition-negative",
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
    constexpr std::array words{"sudden loss",   "pain",        "red eye", "flashes or floaters",
                               "double vision", "white pupil", "squint",  "cycloplegia wanted",
                               "distortion",    "field loss",  "halos"};
    constexpr std::array signs{Sign::suddenLoss,   Sign::pain,       Sign::redEye, Sign::flashesOrFloaters,
                               Sign::doubleVision, Sign::whitePupil, Sign::squint, Sign::cycloplegiaWanted,
                               Sign::distortion,   Sign::fieldLoss,  Sign::halos};
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
        return Complaint{
            "date-form",
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

} // namespace quarterstep
