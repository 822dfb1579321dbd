// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/prescription_table.hpp"

#include "inventory/text/csv_writing.hpp"
#include "inventory/text/row_checks.hpp"
#include "inventory/text/small_table.hpp"
#include "inventory/text/survey_table.hpp"
#include "inventory/text/table_columns.hpp"
#include "inventory/text/yaml_map.hpp"

#include <algorithm>
#include <unordered_map>

namespace quarterstep
{

namespace
{

Finding errorAt(Position place, std::string code, Sentence sentence)
{
    return {Severity::error, std::move(place), std::move(code), std::move(sentence)};
}

/// va_right, va_left and va alone do not say what was worn.
bool isBareAcuity(const std::string& name)
{
    return name == "va" || name == "va_right" || name == "va_left";
}

class TableReader
{
  public:
    TableReader(const std::string& name, const std::string& today) : name_(name), today_(today) {}

    Reading<PrescriptionTable> read(const std::string& bytes)
    {
        const auto rows = tableRows(bytes, name_, "person,right,left,…", reading_.findings);
        if (rows.empty())
            return finish();
        readHeader(rows.front());
        if (reading_.usable())
            for (std::size_t i = 1; i < rows.size(); ++i)
                reading_.value.rows.push_back(readRow(rows[i]));
        return finish();
    }

  private:
    void tell(Finding finding) { reading_.findings.push_back(std::move(finding)); }

    Reading<PrescriptionTable> finish()
    {
        sortByPlace(reading_.findings);
        return std::move(reading_);
    }

    void readHeader(const CsvRow& header)
    {
        reading_.findings.insert(reading_.findings.end(), header.findings.begin(), header.findings.end());
        for (const auto& cell : header.cells)
            columns_.push_back(lowered(cell.text));
        if (columns_.size() == 1 && columns_[0].find_first_of(";\t") != std::string::npos) {
            tell(errorAt(
                header.cells[0].place, "csv-separator",
                {QS_SAY("core", "the columns are not separated by commas; save the table with commas"), {}}));
            return;
        }
        reading_.value.survey = isSurveyHeader(columns_);
        checkTwice(header);
        for (std::size_t i = 0; i < columns_.size(); ++i)
            checkColumn(header.cells[i], columns_[i]);
        if (!reading_.value.survey)
            for (const char* needed : {"person", "right", "left"})
                if (std::find(columns_.begin(), columns_.end(), needed) == columns_.end())
                    tell(errorAt(
                        header.end, "column-missing",
                        {QS_SAY("core", "the column \"%1\" is missing; person, right and left are needed"),
                         {needed}}));
    }

    void checkTwice(const CsvRow& header)
    {
        for (std::size_t i = 0; i < columns_.size(); ++i)
            if (!columns_[i].empty() &&
                std::find(columns_.begin(), columns_.begin() + static_cast<std::ptrdiff_t>(i), columns_[i]) !=
                    columns_.begin() + static_cast<std::ptrdiff_t>(i))
                tell(errorAt(
                    header.cells[i].place, "column-twice",
                    {QS_SAY("core", "the column \"%1\" stands in the table twice; delete or rename one"),
                     {shown(columns_[i])}}));
    }

    void checkColumn(const CsvCell& cell, const std::string& column)
    {
        const bool known = reading_.value.survey ? isSurveyColumn(column) : columnNamed(column) != nullptr;
        if (known)
            return;
        if (column.empty()) {
            tell(errorAt(cell.place, "column-empty",
                         {QS_SAY("core", "this column has no name; write one"), {}}));
            return;
        }
        if (!reading_.value.survey && isBareAcuity(column)) {
            tell(errorAt(cell.place, "column-acuity",
                         {QS_SAY("core", "\"%1\" does not say which acuity; write one of: %2"),
                          {cell.text, "va_unaided_right, va_habitual_right, va_pinhole_right, va_best_right, "
                                      "va_sphere_right (…_left)"}}));
            return;
        }
        reading_.value.unknownColumns.push_back(cell.text);
        std::vector<const char*> names;
        for (const auto& one : tableColumns())
            names.push_back(one.name);
        const std::string near = reading_.value.survey ? std::string() : nearestWord(column, names);
        if (near.empty())
            tell({Severity::note,
                  cell.place,
                  "column-unknown",
                  {QS_SAY("core", "the column \"%1\" is not known; it is kept but not used"),
                   {shown(cell.text)}}});
        else
            tell({Severity::caution,
                  cell.place,
                  "column-unknown",
                  {QS_SAY("core", "the column \"%1\" is not known and not used; did you mean \"%2\"?"),
                   {shown(cell.text), near}}});
    }

    TableRow readRow(const CsvRow& csv)
    {
        TableRow row;
        row.line = csv.line;
        row.findings = csv.findings;
        const Position place{name_, csv.line, 1};
        CellsByName cells;
        for (std::size_t i = 0; i < std::min(csv.cells.size(), columns_.size()); ++i)
            cells[columns_[i]] = csv.cells[i];
        if (!row.findings.empty()) { // broken quotes: what stands in which cell is not known
            row.person = cells["person"].text;
            return row;
        }
        checkCount(csv, row.findings);
        PersonRecord record = reading_.value.survey ? readSurveyRow(cells, place, row.findings)
                                                    : readPerson(cells, place, row.findings);
        for (std::size_t i = 0; i < std::min(csv.cells.size(), columns_.size()); ++i) {
            const bool known =
                reading_.value.survey ? isSurveyColumn(columns_[i]) : columnNamed(columns_[i]) != nullptr;
            if (!known && !csv.cells[i].text.empty())
                record.otherColumns.emplace_back(columns_[i], unguarded(csv.cells[i].text));
        }
        row.person = record.person;
        checkPersonTwice(record, cells, row.findings);
        sortByPlace(row.findings);
        const bool good = std::none_of(row.findings.begin(), row.findings.end(), [](const Finding& finding) {
            return finding.severity == Severity::error;
        });
        if (good)
            row.record = std::move(record);
        return row;
    }

    void checkCount(const CsvRow& csv, std::vector<Finding>& findings) const
    {
        const std::vector<std::string> counts{std::to_string(csv.cells.size()),
                                              std::to_string(columns_.size())};
        if (csv.cells.size() < columns_.size())
            findings.push_back(errorAt(
                csv.end, "row-short",
                {QS_SAY("core", "the row ends after %1 cells, the header has %2; add the missing commas"),
                 counts}));
        if (csv.cells.size() > columns_.size())
            findings.push_back(
                errorAt(csv.cells[columns_.size()].place, "row-long",
                        {QS_SAY("core", "the row has %1 cells, the header %2; put a cell that holds "
                                        "a comma in quotes"),
                         counts}));
    }

    [[nodiscard]] PersonRecord readPerson(const CellsByName& cells, const Position& place,
                                          std::vector<Finding>& findings) const
    {
        PersonRecord record;
        record.position = place;
        for (const auto& column : tableColumns()) {
            const auto cell = cells.find(column.name);
            if (cell == cells.end() || cell->second.text.empty())
                continue;
            const auto text = unguarded(cell->second.text);
            const auto said = column.set(record, onOneLine(text));
            if (!said)
                continue;
            Position at = cell->second.place;
            at.column += said->offset + (text == cell->second.text ? 0 : 1);
            findings.push_back(errorAt(std::move(at), said->code, said->sentence));
        }
        checkRecord(record, cells, findings);
        setMonths(record, cells, today_, findings);
        return record;
    }

    static std::string onOneLine(std::string text)
    {
        std::replace_if(
            text.begin(), text.end(), [](char c) { return c == '\n' || c == '\r' || c == '\t'; }, ' ');
        return text;
    }

    void checkPersonTwice(const PersonRecord& record, const CellsByName& cells,
                          std::vector<Finding>& findings)
    {
        if (record.person.empty())
            return;
        const auto [first, isNew] = firstLine_.emplace(record.person, record.position.line);
        if (isNew)
            return;
        const auto cell = cells.find(reading_.value.survey ? "id" : "person");
        findings.push_back(errorAt(
            cell == cells.end() ? record.position : cell->second.place, "person-twice",
            {QS_SAY("core", "the person \"%1\" stands in line %2 already; give each row a code of its own"),
             {shown(record.person), std::to_string(first->second)}}));
    }

    std::string name_;
    std::string today_;
    std::vector<std::string> columns_;
    std::unordered_map<std::string, int> firstLine_;
    Reading<PrescriptionTable> reading_;
};

} // namespace

Reading<PrescriptionTable> readPrescriptionTable(const std::string& path, const std::string& today)
{
    const auto bytes = readBytes(path);
    if (bytes.usable())
        return readPrescriptionText(bytes.value, path, today);
    return {{}, bytes.findings};
}

Reading<PrescriptionTable> readPrescriptionText(const std::string& bytes, const std::string& name,
                                                const std::string& today)
{
    return TableReader(name, today).read(bytes);
}

} // namespace quarterstep
