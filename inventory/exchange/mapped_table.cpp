// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/mapped_table.hpp"

#include "inventory/exchange/mapped_eye.hpp"
#include "inventory/text/csv_writing.hpp"
#include "inventory/text/large_text.hpp"
#include "inventory/text/table_columns.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

constexpr std::size_t tableRowsBetweenProgress = 256;

/// The separator that stands most often outside quotes in the first line; a comma when none does.
char foundSeparator(const std::string& text)
{
    char best = ',';
    long most = 0;
    const auto line = std::string_view(text).substr(0, text.find('\n'));
    for (const char candidate : {';', '\t', '|', ','}) {
        bool quoted = false;
        long count = 0;
        for (const char c : line) {
            quoted = c == '"' ? !quoted : quoted;
            count += !quoted && c == candidate ? 1 : 0;
        }
        if (count > most) {
            most = count;
            best = candidate;
        }
    }
    return best;
}

constexpr std::size_t rowsForExamples = 50;

/// Columns whose cells are numbers or powers: there a decimal mark means something.
bool isNumeric(const std::string& column)
{
    const auto ends = [&](const std::string& end) {
        return column.size() >= end.size() &&
               column.compare(column.size() - end.size(), end.size(), end) == 0;
    };
    return column == "right" || column == "left" || column == "age" || ends("_mm") ||
           column.compare(0, 3, "add") == 0 || column.compare(0, 5, "worn_") == 0 ||
           column.compare(0, 10, "objective_") == 0;
}

class MappedReader
{
  public:
    MappedReader(const std::string& name, const TableMap& given, const ImportOptions& options)
        : name_(name), options_(options), given_(given), rowEnd_(options)
    {
        reading_.value.map = given;
        reading_.value.map.columns.clear();
    }

    Reading<MappedTable> read(const std::string& bytes)
    {
        auto checked = checkLargeText(bytes, name_);
        reading_.findings = std::move(checked.findings);
        if (reading_.usable())
            readSource(checked.value);
        sortByPlace(reading_.findings);
        return std::move(reading_);
    }

  private:
    void tell(Severity severity, Position place, std::string code, Sentence sentence)
    {
        reading_.findings.push_back({severity, std::move(place), std::move(code), std::move(sentence)});
    }

    void readSource(const SourceText& source)
    {
        auto& map = reading_.value.map;
        if (map.separator == '\0')
            map.separator = foundSeparator(source.text());
        const auto rows = parseCsv(source, map.separator);
        reading_.findings.insert(reading_.findings.end(), rows.findings.begin(), rows.findings.end());
        if (rows.value.empty() && reading_.usable())
            tell(Severity::error, {name_, 1, 1}, "table-empty",
                 {QS_SAY("core", "the table is empty; its first line names the columns: %1"),
                  {"ID;OD Sph;OD Cyl;…"}});
        if (!reading_.usable())
            return;
        header_ = readMappedHeader(rows.value.front(), given_, reading_);
        takeExamples(rows.value);
        for (std::size_t i = 1; i < rows.value.size() && reading_.usable(); ++i) {
            if (options_.progress && i % tableRowsBetweenProgress == 0)
                options_.progress(i, rows.value.size());
            reading_.value.rows.push_back(readRow(rows.value[i]));
        }
        if (options_.progress)
            options_.progress(rows.value.size(), rows.value.size());
        tellUnsigned();
    }

    /// The first filled cell of every column, so that people see what they choose for.
    void takeExamples(const std::vector<CsvRow>& rows)
    {
        auto& examples = reading_.value.examples;
        examples.resize(header_.headings.size());
        for (std::size_t i = 1; i < std::min(rows.size(), rowsForExamples); ++i)
            for (std::size_t at = 0; at < std::min(examples.size(), rows[i].cells.size()); ++at)
                if (examples[at].empty())
                    examples[at] = rows[i].cells[at].text;
    }

    TableRow readRow(const CsvRow& csv)
    {
        const auto wanted = header_.targets.size();
        MappedRow mine;
        mine.csv = &csv;
        mine.row.line = csv.line;
        mine.row.findings = csv.findings;
        mine.record.position = {name_, csv.line, 1};
        if (csv.cells.size() != wanted && mine.row.findings.empty())
            mine.refuse(csv.end,
                        {csv.cells.size() < wanted ? "row-short" : "row-long",
                         {QS_SAY("core", "the row has %1 cells, the header %2; put a cell that holds "
                                         "the separator in quotes"),
                          {std::to_string(csv.cells.size()), std::to_string(wanted)}},
                         0});
        if (hasError(mine.row.findings))
            return std::move(mine.row);
        for (const auto& column : tableColumns()) // eyes before additions
            takeColumn(column.name, mine);
        for (const Eye eye : bothEyes)
            takeEyeParts(eye, header_, reading_.value, mine);
        for (std::size_t i = 0; i < wanted; ++i)
            if (header_.targets[i] == "-" && !csv.cells[i].text.empty())
                mine.record.otherColumns.emplace_back(lowered(header_.headings[i]),
                                                      unguarded(csv.cells[i].text));
        rowEnd_.finish(std::move(mine.record), mine.places, mine.row);
        return std::move(mine.row);
    }

    void takeColumn(const std::string& column, MappedRow& row)
    {
        const auto* cell = header_.cellOf(*row.csv, column);
        if (cell == nullptr || cell->text.empty())
            return;
        row.places[column] = cell->place;
        auto text = unguarded(cell->text);
        if (isNumeric(column) && wrongMark(text, reading_.value))
            return row.refuse(cell->place, markComplaint(text));
        if (column == "right" || column == "left")
            text = signedSphere(text, reading_.value);
        const auto said = setField(row.record, column, text);
        if (!said)
            return;
        auto place = cell->place;
        place.column += text == cell->text ? said->offset : 0;
        row.refuse(place, *said);
    }

    void tellUnsigned()
    {
        const auto& table = reading_.value;
        if (table.unsignedSpheres > 0 && table.map.spheres == Unsigned::refused)
            tell(Severity::caution, {name_, 1, 1}, "table-unsigned",
                 {QS_SAY("core",
                         "%1 spheres have no sign; if this table leaves the plus out, a map says so: %2"),
                  {std::to_string(table.unsignedSpheres), "unsigned spheres = plus"}});
        if (table.unsignedCylinders > 0 && table.map.cylinders == Unsigned::refused)
            tell(Severity::caution, {name_, 1, 1}, "table-unsigned",
                 {QS_SAY("core",
                         "%1 cylinders have no sign; ask whoever made the table, then a map says so: %2"),
                  {std::to_string(table.unsignedCylinders), "unsigned cylinders = minus"}});
    }

    std::string name_;
    const ImportOptions& options_;
    const TableMap& given_;
    RowEnd rowEnd_;
    MappedHeader header_;
    Reading<MappedTable> reading_;
};

} // namespace

Reading<MappedTable> readMappedTable(const std::string& bytes, const std::string& name, const TableMap& given,
                                     const ImportOptions& options)
{
    return MappedReader(name, given, options).read(bytes);
}

} // namespace quarterstep
