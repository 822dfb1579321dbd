// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/exchange.hpp"

#include "core/fitting/recommendation.hpp"
#include "inventory/exchange/fhir.hpp"
#include "inventory/exchange/json_lines.hpp"
#include "inventory/store/write_back.hpp"
#include "inventory/text/large_text.hpp"

#include <QDate>

#include <array>
#include <filesystem>

namespace quarterstep
{

namespace
{

constexpr std::array formats{
    std::pair{ExchangeFormat::fhir, "fhir"}, std::pair{ExchangeFormat::fhirAlone, "fhir-alone"},
    std::pair{ExchangeFormat::jsonLines, "json-lines"}, std::pair{ExchangeFormat::table, "table"},
    std::pair{ExchangeFormat::dicom, "dicom"}};

} // namespace

const char* wordOf(ExchangeFormat format)
{
    for (const auto& [each, word] : formats)
        if (each == format)
            return word;
    return "";
}

std::optional<ExchangeFormat> exchangeFormatOf(const std::string& word)
{
    for (const auto& [format, each] : formats)
        if (word == each)
            return format;
    return std::nullopt;
}

ImportedRows importText(ExchangeFormat format, const std::string& bytes, const std::string& name,
                        const ImportOptions& options)
{
    if (format == ExchangeFormat::jsonLines)
        return readJsonLines(bytes, name, options);
    if (format != ExchangeFormat::table)
        return readFhir(bytes, name, options);
    auto table = importTable(bytes, name, {}, options);
    return {std::move(table.value.rows), std::move(table.findings)};
}

Reading<MappedTable> importTable(const std::string& bytes, const std::string& name, const TableMap& given,
                                 const ImportOptions& options)
{
    return readMappedTable(bytes, name, given, options);
}

ImportedRows importFile(ExchangeFormat format, const std::string& path, const ImportOptions& options)
{
    const auto bytes = readLargeBytes(path);
    if (!bytes.usable())
        return {{}, bytes.findings};
    return importText(format, bytes.value, path, options);
}

std::vector<ExchangePerson> stampedWith(const FittingRules& rules, const std::string& profile,
                                        std::vector<PersonRecord> persons)
{
    std::vector<ExchangePerson> stamped;
    stamped.reserve(persons.size());
    for (auto& person : persons) {
        RulesStamp stamp;
        stamp.profile = profile.empty() ? profileFor(person, purposesOf(person).front()) : profile;
        if (const auto* found = rules.find(stamp.profile))
            stamp.version = found->version;
        stamp.hash = rules.hash;
        stamped.push_back({std::move(person), std::move(stamp)});
    }
    return stamped;
}

Reading<std::string> exportText(ExchangeFormat format, std::span<const ExchangePerson> persons,
                                const std::string& today)
{
    if (format == ExchangeFormat::fhirAlone)
        return writeFhirAlone(persons.front(), today);
    if (format == ExchangeFormat::jsonLines)
        return writeJsonLines(persons);
    if (format == ExchangeFormat::table)
        return writeFlatTable(persons);
    return writeFhirBundle(persons, today);
}

void writeNewFile(const std::string& path, const std::string& bytes)
{
    std::error_code ignored;
    if (std::filesystem::is_regular_file(path, ignored))
        throw errorSaying(
            "file-exists",
            {QS_SAY("core", "%1 is there already; name a new file, or move that one away"), {path}}, 3);
    replaceFile(path, bytes, true);
}

std::string todayIso()
{
    return QDate::currentDate().toString(Qt::ISODate).toStdString();
}

} // namespace quarterstep
