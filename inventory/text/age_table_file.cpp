// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/age_table_file.hpp"

#include "inventory/defaults/default_texts.hpp"
#include "inventory/text/yaml_map.hpp"

#include <algorithm>
#include <cassert>

namespace quarterstep
{

namespace
{

constexpr const char* ageTablesFormat = "quarterstep age tables 1";
constexpr double oldest = 120.0;
constexpr double largestValue = 20.0;

std::string neededText(YamlMap& map, const char* key)
{
    const YamlValue* value = map.need(key);
    return value ? map.document().text(*value).value_or("") : "";
}

std::optional<double> neededNumber(YamlMap& map, const char* key, double least, double most)
{
    const YamlValue* value = map.need(key);
    return value ? map.document().number(*value, least, most) : std::nullopt;
}

/// `value`, or `least` and `most`.
bool readValues(YamlMap& map, AgeRow& row)
{
    if (map.find("value") != nullptr) {
        const auto value = map.number("value", 0.0, largestValue);
        row.least = row.most = value.value_or(0.0);
        return value.has_value();
    }
    const auto least = neededNumber(map, "least", 0.0, largestValue);
    const auto most = neededNumber(map, "most", 0.0, largestValue);
    row.least = least.value_or(0.0);
    row.most = most.value_or(0.0);
    return least && most;
}

void readRow(YamlDocument& document, const YamlValue& item, std::vector<AgeRow>& rows)
{
    YamlMap map(document, item, {"ages", "value", "least", "most"});
    const YamlValue* ages = map.need("ages");
    if (ages == nullptr)
        return;
    if (ages->kind != YamlValue::Kind::list || ages->items.size() != 2) {
        document.tell(Severity::error, *ages, "ages-form",
                      {QS_SAY("core", "write the first and the last age, for example [40, 44]"), {}});
        return;
    }
    const auto from = document.number(ages->items[0], 0.0, oldest);
    const auto to = document.number(ages->items[1], 0.0, oldest);
    AgeRow row{from.value_or(0.0), to.value_or(0.0), 0.0, 0.0};
    if (!readValues(map, row) || !from || !to)
        return;
    if (row.from > row.to || row.least > row.most || (!rows.empty() && rows.back().to >= row.from)) {
        document.tell(Severity::error, item, "ages-order",
                      {QS_SAY("core", "ages and values rise, and bands do not overlap"), {}});
        return;
    }
    rows.push_back(row);
}

void readConfidence(YamlMap& map, AgeTable& table)
{
    constexpr AgeTable::Confidence confidences[] = {
        AgeTable::Confidence::seenInSource, AgeTable::Confidence::secondHand,
        AgeTable::Confidence::commonPractice, AgeTable::Confidence::fromMemory};
    if (map.need("confidence") != nullptr)
        table.confidence = confidences[map.word("confidence", {"seen in source", "second-hand",
                                                               "common practice", "from memory"})
                                           .value_or(2)];
    if (map.need("holds") != nullptr)
        table.holds = map.word("holds", {"addition", "amplitude"}).value_or(0) == 0
                          ? AgeTable::Holds::addition
                          : AgeTable::Holds::amplitude;
}

AgeTable readTable(YamlDocument& document, const YamlValue& value)
{
    YamlMap map(document, value,
                {"name", "holds", "population", "source", "confidence", "working mm", "spread",
                 "spread source", "rows"});
    AgeTable table;
    if (!map.isMap())
        return table;
    table.name = neededText(map, "name");
    table.population = neededText(map, "population");
    table.source = neededText(map, "source");
    readConfidence(map, table);
    table.workingMm = neededNumber(map, "working mm", 100.0, 2000.0).value_or(table.workingMm);
    table.spread = neededNumber(map, "spread", 0.05, 5.0).value_or(0.0);
    table.spreadSource = neededText(map, "spread source");
    const YamlValue* rows = map.need("rows");
    if (rows && (rows->kind != YamlValue::Kind::list || rows->items.empty()))
        document.tell(Severity::error, *rows, "rows-not-a-list",
                      {QS_SAY("core", "write the rows as a list: [{ages: [40, 44], value: 0.65}, …]"), {}});
    else if (rows)
        for (const auto& item : rows->items)
            readRow(document, item, table.rows);
    return table;
}

void putTable(AgeTable table, std::vector<AgeTable>& tables)
{
    if (table.name.empty())
        return;
    const auto same = std::find_if(tables.begin(), tables.end(),
                                   [&table](const AgeTable& other) { return other.name == table.name; });
    if (same != tables.end())
        *same = std::move(table);
    else
        tables.push_back(std::move(table));
}

Reading<std::vector<AgeTable>> readOver(std::vector<AgeTable> builtIn, std::string bytes,
                                        const std::string& name)
{
    Reading<std::vector<AgeTable>> reading;
    reading.value = std::move(builtIn);
    YamlDocument document(std::move(bytes), name);
    if (document.readable()) {
        YamlMap top(document, document.root(), {"format", "tables"});
        const YamlValue* format = top.need("format");
        if (format && format->text != ageTablesFormat)
            document.tell(
                Severity::error, *format, "format-unknown",
                {QS_SAY("core", "this is not a file of age tables of this program; the first key should "
                                "read format: %1"),
                 {ageTablesFormat}});
        const YamlValue* list = top.need("tables");
        if (list && list->kind != YamlValue::Kind::list)
            document.tell(Severity::error, *list, "tables-not-a-list",
                          {QS_SAY("core", "`tables` is a list; begin each table with a dash"), {}});
        else if (list)
            for (const auto& item : list->items)
                putTable(readTable(document, item), reading.value);
    }
    reading.findings = document.takeFindings();
    return reading;
}

std::vector<AgeTable> readDefaults()
{
    auto reading = readOver({}, std::string(defaultAgeTablesText()), "age_tables.yaml (built in)");
    assert(reading.findings.empty());
    return std::move(reading.value);
}

} // namespace

const std::vector<AgeTable>& defaultAgeTables()
{
    static const std::vector<AgeTable> tables = readDefaults();
    return tables;
}

Reading<std::vector<AgeTable>> readAgeTableText(std::string bytes, const std::string& name)
{
    return readOver(defaultAgeTables(), std::move(bytes), name);
}

} // namespace quarterstep
