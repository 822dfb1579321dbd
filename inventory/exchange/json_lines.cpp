// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/json_lines.hpp"

#include "inventory/exchange/json_text.hpp"
#include "inventory/text/large_text.hpp"
#include "inventory/text/record_text.hpp"
#include "inventory/text/table_columns.hpp"

namespace quarterstep
{

namespace
{

constexpr std::size_t linesBetweenProgress = 256;

void takeMember(const JsonValue& member, PersonRecord& record, PartPlaces& places, TableRow& row,
                std::string& kept)
{
    const auto name = member.name();
    const bool plain = member.kind() == JsonKind::text || member.kind() == JsonKind::number;
    if (member.kind() == JsonKind::null)
        return;
    if (name == "rules" && member.kind() == JsonKind::object) {
        keepRules(record, {member.member("profile").text(), member.member("version").text(),
                           member.member("hash").text()});
        return;
    }
    if (!plain || columnNamed(name) == nullptr) {
        record.otherColumns.emplace_back(name, plain ? member.text() : std::string(member.raw()));
        kept += (kept.empty() ? "" : ", ") + name;
        return;
    }
    if (member.text().empty())
        return;
    places[name] = member.place();
    if (auto said = setField(record, name, member.text())) {
        auto place = member.place();
        place.column += said->offset + (member.kind() == JsonKind::text ? 1 : 0);
        row.findings.push_back({Severity::error, std::move(place), said->code, said->sentence});
    }
}

TableRow rowOf(const SourceText& source, std::size_t begin, std::size_t end, RowEnd& rowEnd)
{
    TableRow row;
    auto parsed = JsonDocument::parse(source, begin, end);
    const auto root = parsed.value.root();
    row.line = source.at(begin).line;
    row.findings = std::move(parsed.findings);
    if (root && root.kind() != JsonKind::object)
        row.findings.push_back({Severity::error,
                                root.place(),
                                "json-syntax",
                                {QS_SAY("core", "each line is one object, as {\"person\":\"0042\",…}"), {}}});
    if (hasError(row.findings))
        return row;
    PersonRecord record;
    PartPlaces places;
    record.position = root.place();
    std::string kept;
    for (const auto& column : tableColumns()) // eyes before additions, as in a table
        if (const auto member = root.member(column.name))
            takeMember(member, record, places, row, kept);
    for (const auto& member : root.children())
        if (columnNamed(member.name()) == nullptr)
            takeMember(member, record, places, row, kept);
    if (!kept.empty())
        row.findings.push_back({Severity::note,
                                record.position,
                                "json-kept",
                                {QS_SAY("core", "kept without being used: %1"), {shown(kept)}}});
    rowEnd.finish(std::move(record), places, row);
    return row;
}

} // namespace

ImportedRows readJsonLines(const std::string& bytes, const std::string& name, const ImportOptions& options)
{
    ImportedRows rows;
    const auto checked = checkLargeText(bytes, name);
    rows.findings = checked.findings;
    if (!rows.usable())
        return rows;
    const auto& text = checked.value.text();
    RowEnd end(options);
    for (std::size_t begin = 0; begin < text.size();) {
        const auto next = std::min(text.find('\n', begin), text.size());
        if (text.find_first_not_of(" \t\r\n", begin) < next)
            rows.value.push_back(rowOf(checked.value, begin, next, end));
        begin = next + 1;
        if (options.progress && rows.value.size() % linesBetweenProgress == 0)
            options.progress(begin, text.size() + 1);
    }
    if (options.progress)
        options.progress(text.size() + 1, text.size() + 1);
    if (rows.value.empty())
        rows.findings.push_back(
            {Severity::error,
             {name, 1, 1},
             "table-empty",
             {QS_SAY("core", "nothing stands in it; each line is one object, as {\"person\":\"0042\",…}"),
              {}}});
    return rows;
}

Reading<std::string> writeJsonLines(std::span<const ExchangePerson> persons)
{
    Reading<std::string> written;
    for (const auto& [record, rules] : persons) {
        std::string object = "{";
        for (const auto& [column, cell] : recordCells(record))
            if (staysHere(column))
                tellStays(record, column, written.findings);
            else
                addJsonMember(object, column, jsonQuoted(cell));
        for (const auto& [column, cell] : record.otherColumns)
            if (!isRulesColumn(column))
                addJsonMember(object, column, jsonQuoted(cell));
        std::string stamp = "{";
        addJsonMember(stamp, "profile", jsonQuoted(rules.profile));
        addJsonMember(stamp, "version", jsonQuoted(rules.version));
        addJsonMember(stamp, "hash", jsonQuoted(rules.hash));
        addJsonMember(object, "rules", stamp + "}");
        written.value += object + "}\n";
    }
    return written;
}

} // namespace quarterstep
