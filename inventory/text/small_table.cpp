// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/small_table.hpp"

#include <algorithm>

namespace quarterstep
{

std::vector<CsvRow> tableRows(const SourceText& source, const char* columns, std::vector<Finding>& findings)
{
    auto table = parseCsv(source);
    if (table.value.empty() && table.usable())
        table.findings.push_back(
            {Severity::error,
             {source.name(), 1, 1},
             "table-empty",
             {QS_SAY("core", "the table is empty; its first line names the columns: %1"), {columns}}});
    findings.insert(findings.end(), table.findings.begin(), table.findings.end());
    if (!table.usable())
        table.value.clear();
    return std::move(table.value);
}

std::vector<CsvRow> tableRows(const std::string& bytes, const std::string& name, const char* columns,
                              std::vector<Finding>& findings)
{
    auto checked = checkText(bytes, name);
    findings.insert(findings.end(), checked.findings.begin(), checked.findings.end());
    return checked.usable() ? tableRows(checked.value, columns, findings) : std::vector<CsvRow>();
}

void SmallTable::readHeader(const CsvRow& header, std::span<const char* const> known)
{
    findings_.insert(findings_.end(), header.findings.begin(), header.findings.end());
    columns_ = header.cells.size();
    headerEnd_ = header.end;
    for (std::size_t i = 0; i < columns_; ++i) {
        const auto& cell = header.cells[i];
        const auto column = lowered(cell.text);
        if (!known.empty() && std::find(known.begin(), known.end(), column) == known.end())
            tell(cell.place, "column-unknown",
                 {QS_SAY("core", "the column \"%1\" is not known; it is not used"), {shown(cell.text)}},
                 Severity::note);
        else if (!at_.emplace(column, i).second)
            tell(cell.place, "column-twice",
                 {QS_SAY("core", "the column \"%1\" stands in the table twice; delete or rename one"),
                  {shown(column)}});
    }
}

void SmallTable::need(std::initializer_list<const char*> columns, const char* sentence)
{
    for (const char* column : columns)
        if (!has(column))
            tell(headerEnd_, "column-missing", {sentence, {column}});
}

bool SmallTable::isWhole(const CsvRow& row)
{
    findings_.insert(findings_.end(), row.findings.begin(), row.findings.end());
    const std::vector<std::string> counts{std::to_string(row.cells.size()), std::to_string(columns_)};
    if (row.cells.size() < columns_)
        tell(row.end, "row-short",
             {QS_SAY("core", "the row ends after %1 cells, the header has %2; add the missing commas"),
              counts});
    if (row.cells.size() > columns_)
        tell(row.cells[columns_].place, "row-long",
             {QS_SAY("core", "the row has %1 cells, the header %2; put a cell that holds a comma in quotes"),
              counts});
    return row.cells.size() == columns_ && row.findings.empty();
}

const CsvCell* SmallTable::find(const CsvRow& row, const char* column) const
{
    const auto at = at_.find(column);
    return at == at_.end() ? nullptr : &row.cells[at->second];
}

void SmallTable::tell(const Position& place, std::string code, Sentence sentence, Severity severity)
{
    findings_.push_back({severity, place, std::move(code), std::move(sentence)});
}

void SmallTable::tell(const CsvCell& cell, const Complaint& complaint)
{
    auto place = cell.place;
    place.column += complaint.offset;
    tell(place, complaint.code, complaint.sentence);
}

} // namespace quarterstep
