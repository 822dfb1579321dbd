// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/names_list.hpp"

#include "inventory/text/csv.hpp"
#include "inventory/text/csv_writing.hpp"

#include <map>

namespace quarterstep
{

namespace
{

class NamesReader
{
  public:
    explicit NamesReader(Reading<std::vector<NameRow>>& reading) : reading_(reading) {}

    void read(const std::vector<CsvRow>& table)
    {
        readHeader(table.front());
        if (!reading_.usable())
            return;
        for (std::size_t i = 1; i < table.size(); ++i)
            readRow(table[i]);
    }

  private:
    void tell(const Position& place, const char* code, Sentence sentence, Severity severity = Severity::error)
    {
        reading_.findings.push_back({severity, place, code, std::move(sentence)});
    }

    void readHeader(const CsvRow& header)
    {
        for (std::size_t i = 0; i < header.cells.size(); ++i) {
            const auto& cell = header.cells[i];
            if (cell.text != "person" && cell.text != "name")
                tell(cell.place, "column-unknown",
                     {QS_SAY("core", "the column \"%1\" is not known; it is not used"), {shown(cell.text)}},
                     Severity::note);
            else if (!at_.emplace(cell.text, i).second)
                tell(cell.place, "column-twice",
                     {QS_SAY("core", "the column \"%1\" stands in the table twice; delete or rename one"),
                      {shown(cell.text)}});
        }
        for (const char* needed : {"person", "name"})
            if (at_.count(needed) == 0)
                tell(header.end, "column-missing",
                     {QS_SAY("core", "the column \"%1\" is missing; needed are person and name"), {needed}});
        columns_ = header.cells.size();
    }

    void readRow(const CsvRow& row)
    {
        reading_.findings.insert(reading_.findings.end(), row.findings.begin(), row.findings.end());
        if (row.cells.size() != columns_) {
            const bool shorter = row.cells.size() < columns_;
            tell(shorter ? row.end : row.cells[columns_].place, shorter ? "row-short" : "row-long",
                 {QS_SAY("core",
                         "the row has %1 cells, the header %2; put a cell that holds a comma in quotes"),
                  {std::to_string(row.cells.size()), std::to_string(columns_)}});
            return;
        }
        const auto& person = row.cells[at_.at("person")];
        const auto& name = row.cells[at_.at("name")];
        const auto code = unguarded(person.text);
        if (code.empty())
            tell(person.place, "person-empty", {QS_SAY("core", "the row names no person"), {}});
        else if (const auto [seen, isNew] = first_.emplace(code, row.line); !isNew)
            tell(person.place, "person-twice",
                 {QS_SAY("core", "%1 stands here twice, first in row %2"),
                  {shown(code), std::to_string(seen->second)}});
        if (name.text.empty())
            tell(name.place, "name-empty",
                 {QS_SAY("core", "no name stands here; to erase one, use `quarterstep forget`"), {}});
        if (!code.empty() && !name.text.empty())
            reading_.value.push_back({code, unguarded(name.text), person.place});
    }

    Reading<std::vector<NameRow>>& reading_;
    std::map<std::string, std::size_t> at_;
    std::map<std::string, int> first_;
    std::size_t columns_ = 0;
};

} // namespace

Reading<std::vector<NameRow>> readNamesText(const std::string& bytes, const std::string& name)
{
    Reading<std::vector<NameRow>> reading;
    auto checked = checkText(bytes, name);
    reading.findings = std::move(checked.findings);
    if (!reading.usable())
        return reading;
    auto table = parseCsv(checked.value);
    reading.findings.insert(reading.findings.end(), table.findings.begin(), table.findings.end());
    if (table.value.empty() && reading.usable())
        reading.findings.push_back(
            {Severity::error,
             {name, 1, 1},
             "table-empty",
             {QS_SAY("core", "the table is empty; its first line names the columns: %1"), {"person,name"}}});
    if (reading.usable())
        NamesReader(reading).read(table.value);
    sortByPlace(reading.findings);
    return reading;
}

Reading<std::vector<NameRow>> readNamesList(const std::string& path)
{
    auto bytes = readBytes(path);
    if (!bytes.usable())
        return {{}, std::move(bytes.findings)};
    return readNamesText(bytes.value, path);
}

} // namespace quarterstep
