// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/quantity_list.hpp"

#include "core/record/entry.hpp"
#include "inventory/text/csv_writing.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/small_table.hpp"
#include "inventory/text/yaml_map.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <set>

namespace quarterstep
{

namespace
{

constexpr const char* listFormat = "quarterstep list 1";
constexpr std::array listColumns{"line", "quantity", "reason", "cause", "bin", "box"};

std::string causesListed()
{
    return listed(causesOfLoss());
}

/// Collects rows; each line once.
class Rows
{
  public:
    explicit Rows(Reading<QuantityList>& reading) : reading_(reading) {}

    void add(QuantityRow row)
    {
        auto& rows = reading_.value.rows;
        const auto [seen, isNew] = at_.emplace(row.line, rows.size());
        if (isNew) {
            rows.push_back(std::move(row));
            return;
        }
        auto& first = rows[seen->second];
        if (reading_.value.scanned) {
            first.quantity += row.quantity;
            return;
        }
        tell(row.place, "line-twice",
             {QS_SAY("core",
                     "line %1 stands here twice, first in row %2; write one row with the whole number"),
              {shown(row.line), std::to_string(first.place.line)}});
    }

    void tell(const Position& place, const char* code, Sentence sentence, Severity severity = Severity::error)
    {
        reading_.findings.push_back({severity, place, code, std::move(sentence)});
    }

    bool causeIsKnown(const std::string& cause, const Position& place)
    {
        if (cause.empty() || isCauseOfLoss(cause))
            return true;
        tell(place, "cause-word",
             {QS_SAY("core", "“%1” is not a cause; write one of %2"), {shown(cause), causesListed()}});
        return false;
    }

  private:
    Reading<QuantityList>& reading_;
    std::map<std::string, std::size_t> at_;
};

class SheetReader
{
  public:
    SheetReader(Reading<QuantityList>& reading, Rows& rows)
        : reading_(reading), rows_(rows), table_(reading.findings)
    {
    }

    void read(const std::vector<CsvRow>& table)
    {
        table_.readHeader(table.front(), listColumns);
        table_.need({"line", "quantity"},
                    QS_SAY("core", "the column \"%1\" is missing; needed are line and quantity"));
        if (!reading_.usable())
            return;
        for (std::size_t i = 1; i < table.size(); ++i)
            readRow(table[i]);
    }

  private:
    void readRow(const CsvRow& row)
    {
        reading_.value.places.push_back({row.cells.front().place.file, row.line, 1});
        if (!table_.isWhole(row))
            return;
        const auto& line = table_.at(row, "line");
        const auto& quantity = table_.at(row, "quantity");
        if (line.text.empty())
            rows_.tell(line.place, "line-empty", {QS_SAY("core", "the row names no line"), {}});
        const auto number = parseWholeNumber(quantity.text, 0, mostPieces);
        if (!number)
            table_.tell(quantity, number.complaint());
        const auto* cause = table_.find(row, "cause");
        const bool known = cause == nullptr || rows_.causeIsKnown(cause->text, cause->place);
        if (line.text.empty() || !number || !known)
            return;
        const auto textOf = [&](const char* column) {
            const auto* cell = table_.find(row, column);
            return cell == nullptr ? std::string() : cell->text;
        };
        rows_.add({unguarded(line.text), static_cast<int>(number.value()), textOf("reason"), textOf("cause"),
                   line.place, textOf("bin"), textOf("box")});
    }

    Reading<QuantityList>& reading_;
    Rows& rows_;
    SmallTable table_;
};

void readItem(YamlDocument& document, const YamlValue& item, Rows& rows)
{
    YamlMap map(document, item, {"line", "quantity", "reason", "cause", "bin", "box"});
    if (!map.isMap())
        return;
    const auto* name = map.need("line");
    const auto line = name == nullptr ? std::nullopt : document.text(*name);
    const auto quantity =
        map.need("quantity") == nullptr ? std::nullopt : map.wholeNumber("quantity", 0, mostPieces);
    const auto cause = map.text("cause").value_or("");
    const auto* causeAt = map.find("cause");
    const bool known = causeAt == nullptr || rows.causeIsKnown(cause, document.at(*causeAt));
    if (line && line->empty())
        rows.tell(document.at(*name), "line-empty", {QS_SAY("core", "the row names no line"), {}});
    else if (line && quantity && known)
        rows.add({*line, static_cast<int>(*quantity), map.text("reason").value_or(""), cause,
                  document.at(*name), map.text("bin").value_or(""), map.text("box").value_or("")});
}

void readYaml(const std::string& bytes, const std::string& name, Reading<QuantityList>& reading, Rows& rows)
{
    YamlDocument document(bytes, name);
    if (document.readable()) {
        YamlMap map(document, document.root(), {"format", "lines"});
        const auto* format = map.need("format");
        if (format != nullptr && document.text(*format).value_or("") != listFormat)
            document.tell(Severity::error, *format, "format-unknown",
                          {QS_SAY("core", "write format: %1"), {listFormat}});
        const auto* lines = map.need("lines");
        if (lines != nullptr && lines->kind != YamlValue::Kind::list)
            document.tell(Severity::error, *lines, "lines-not-a-list",
                          {QS_SAY("core", "lines is a list, one item with line and quantity each"), {}});
        else if (lines != nullptr)
            for (const auto& item : lines->items) {
                reading.value.places.push_back(document.at(item));
                readItem(document, item, rows);
            }
    }
    for (auto& finding : document.takeFindings())
        reading.findings.push_back(std::move(finding));
}

void readScanned(const std::vector<CsvRow>& table, Reading<QuantityList>& reading, Rows& rows)
{
    reading.value.scanned = true;
    for (const auto& row : table) {
        reading.value.places.push_back(row.cells.front().place);
        reading.findings.insert(reading.findings.end(), row.findings.begin(), row.findings.end());
        if (!row.findings.empty())
            continue;
        if (row.cells.size() == 1 && row.cells[0].text.empty())
            rows.tell(row.cells[0].place, "line-empty", {QS_SAY("core", "the row names no line"), {}});
        else if (row.cells.size() != 1)
            rows.tell(
                row.cells[1].place, "row-long",
                {QS_SAY("core", "one scanned line a row; a table begins with a row that names its columns: "
                                "line,quantity"),
                 {}});
        else
            rows.add({row.cells[0].text, 1, "", "", row.cells[0].place});
    }
}

bool looksLikeYaml(const std::string& text)
{
    std::size_t at = 0;
    while (at < text.size() && (text[at] == '#' || text[at] == '\n' || text[at] == '\r' || text[at] == ' '))
        at = text[at] == '#' ? std::min(text.find('\n', at), text.size()) : at + 1;
    return text.compare(at, 7, "format:") == 0 || text.compare(at, 6, "lines:") == 0 ||
           text.compare(at, 1, "{") == 0;
}

} // namespace

std::optional<std::vector<QuantityRow>> goodRows(const Reading<QuantityList>& reading,
                                                 std::vector<Position>& left)
{
    const auto& places =
        reading.value.places; // rows begin on rising lines; those of one line stand or fall together
    const auto rowAt = [&](int line) {
        int begin = 0;
        for (const auto& place : places)
            begin = place.line <= line ? place.line : begin;
        return begin;
    };
    std::set<int> bad;
    for (const auto& finding : reading.findings) {
        if (finding.severity != Severity::error)
            continue;
        const int row = rowAt(finding.position.line);
        if (row == 0)
            return std::nullopt;
        bad.insert(row);
    }
    if (places.empty() && !reading.usable())
        return std::nullopt;
    for (const auto& place : places)
        if (bad.count(place.line) > 0)
            left.push_back(place);
    std::vector<QuantityRow> rows;
    for (const auto& row : reading.value.rows)
        if (bad.count(rowAt(row.place.line)) == 0)
            rows.push_back(row);
    return rows;
}

Reading<QuantityList> readQuantityText(const std::string& bytes, const std::string& name)
{
    Reading<QuantityList> reading;
    auto checked = checkText(bytes, name);
    reading.findings = std::move(checked.findings);
    if (!reading.usable())
        return reading;
    Rows rows(reading);
    if (looksLikeYaml(checked.value.text())) {
        reading.findings.clear(); // the YAML reader tells them again
        readYaml(bytes, name, reading, rows);
        sortByPlace(reading.findings);
        return reading;
    }
    const auto table = tableRows(checked.value, "line,quantity", reading.findings);
    if (table.empty())
        return reading;
    const auto& first = table.front().cells;
    const bool header = std::any_of(first.begin(), first.end(), [](const CsvCell& cell) {
        const auto column = lowered(cell.text);
        return column == "line" || column == "quantity";
    });
    if (header)
        SheetReader(reading, rows).read(table);
    else
        readScanned(table, reading, rows);
    sortByPlace(reading.findings);
    return reading;
}

Reading<QuantityList> readQuantityList(const std::string& path)
{
    return readWholeFile(path, readQuantityText);
}

} // namespace quarterstep
