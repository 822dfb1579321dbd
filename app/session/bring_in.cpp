// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/bring_in.hpp"

#include "app/session/dicom_answer.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/large_text.hpp"
#include "inventory/text/record_text.hpp"

#include <QDir>
#include <QStringList>

namespace quarterstep
{

namespace
{

constexpr std::size_t dicomMark = 128; ///< bytes before the letters DICM (PS3.10, 7.1)
constexpr std::size_t looksInto = 65536;

void refuseKnown(const std::set<std::string>& known, BroughtIn& read)
{
    for (auto& row : read.rows)
        if (row.record && known.count(row.person) > 0) {
            row.findings.push_back(
                {Severity::error,
                 row.record->position,
                 "person-waiting",
                 {QS_SAY("core", "%1 stands in the waiting list already; the row is left out"),
                  {row.person}}});
            row.record.reset();
        }
}

void countRows(BroughtIn& read)
{
    for (std::size_t at = 0; at < read.rows.size(); ++at) {
        ++(read.rows[at].record ? read.taken : read.refused);
        if (!read.rows[at].findings.empty())
            read.told.push_back(at);
    }
}

} // namespace

ExchangeFormat formatFound(const std::string& bytes)
{
    if (bytes.size() > dicomMark + 4 && bytes.compare(dicomMark, 4, "DICM") == 0)
        return ExchangeFormat::dicom;
    const auto first = bytes.find_first_not_of("\xEF\xBB\xBF \t\r\n");
    if (first == std::string::npos || (bytes[first] != '{' && bytes[first] != '<'))
        return ExchangeFormat::table;
    const bool fhir =
        bytes[first] == '<' || bytes.substr(0, looksInto).find("\"resourceType\"") != std::string::npos;
    return fhir ? ExchangeFormat::fhir : ExchangeFormat::jsonLines;
}

Reading<BringSource> withBytes(BringSource source)
{
    Reading<BringSource> reading;
    if (!source.bytes) {
        auto bytes = readLargeBytes(source.name());
        reading.findings = std::move(bytes.findings);
        source.bytes = std::make_shared<const std::string>(std::move(bytes.value));
    }
    reading.value = std::move(source);
    return reading;
}

BroughtIn readBroughtIn(const BringSource& source, const TableMap& given, const std::set<std::string>& known,
                        const ImportOptions& options)
{
    BroughtIn read;
    read.format = formatFound(*source.bytes);
    if (read.format == ExchangeFormat::table) {
        auto table = importTable(*source.bytes, source.name(), given, options);
        read.findings = std::move(table.findings);
        read.rows = std::move(table.value.rows);
        table.value.rows.clear();
        read.table = std::move(table.value);
    } else {
        auto rows = read.format == ExchangeFormat::dicom
                        ? importDicomFiles(source.paths, options)
                        : importText(read.format, *source.bytes, source.name(), options);
        read.findings = std::move(rows.findings);
        read.rows = std::move(rows.value);
    }
    refuseKnown(known, read);
    countRows(read);
    return read;
}

QString recordWords(const PersonRecord& person)
{
    QStringList parts;
    for (const auto& [name, cell] : recordCells(person))
        if (name != "person")
            parts << ltr(std::string(name).append(" ").append(cell));
    return parts.join(QStringLiteral("; "));
}

std::string keepBroughtIn(const std::string& folder, const std::vector<TableRow>& rows,
                          const ImportOptions& options)
{
    const auto bytes = tableText(rows, {}, options.progress);
    const auto stem = folder + "/brought-in-" + options.today;
    auto path = stem + ".csv";
    for (int number = 2; QFile::exists(QString::fromStdString(path)); ++number)
        path = stem + "-" + std::to_string(number) + ".csv";
    writeNewFile(path, bytes);
    return path;
}

std::vector<std::string> broughtInTables(const std::string& folder)
{
    std::vector<std::string> paths;
    const QDir camp(QString::fromStdString(folder));
    for (const auto& name :
         camp.entryList({QStringLiteral("brought-in-*.csv")}, QDir::Files | QDir::Readable, QDir::Name))
        paths.push_back(camp.filePath(name).toStdString());
    return paths;
}

} // namespace quarterstep
