// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/bench_sheet.hpp"

#include "core/optics/notation.hpp"
#include "inventory/text/csv.hpp"
#include "inventory/text/csv_writing.hpp"
#include "inventory/text/numbers.hpp"

#include <map>
#include <set>

namespace quarterstep
{

namespace
{

constexpr long mostRows = 100'000;

class BenchReader
{
  public:
    explicit BenchReader(Reading<std::vector<BenchRow>>& reading) : reading_(reading) {}

    void read(const std::vector<CsvRow>& table)
    {
        readHeader(table.front());
        if (reading_.usable())
            for (std::size_t i = 1; i < table.size(); ++i)
                readRow(table[i]);
    }

  private:
    void tell(const Position& place, const char* code, Sentence sentence)
    {
        reading_.findings.push_back({Severity::error, place, code, std::move(sentence)});
    }
    void tell(const CsvCell& cell, const Complaint& complaint)
    {
        auto place = cell.place;
        place.column += complaint.offset;
        tell(place, complaint.code.c_str(), complaint.sentence);
    }

    void readHeader(const CsvRow& header)
    {
        columns_ = header.cells.size();
        for (std::size_t i = 0; i < columns_; ++i)
            if (!at_.emplace(header.cells[i].text, i).second)
                tell(header.cells[i].place, "column-twice",
                     {QS_SAY("core", "the column \"%1\" stands in the table twice; delete or rename one"),
                      {shown(header.cells[i].text)}});
        for (const char* needed : {"lot", "row", "right", "left"})
            if (at_.count(needed) == 0)
                tell(header.end, "column-missing",
                     {QS_SAY("core", "the column \"%1\" is missing; needed are lot, row, right and left"),
                      {needed}});
    }

    [[nodiscard]] bool countIsRight(const CsvRow& row)
    {
        const std::vector<std::string> counts{std::to_string(row.cells.size()), std::to_string(columns_)};
        if (row.cells.size() < columns_)
            tell(row.end, "row-short",
                 {QS_SAY("core", "the row ends after %1 cells, the header has %2; add the missing commas"),
                  counts});
        if (row.cells.size() > columns_)
            tell(row.cells[columns_].place, "row-long",
                 {QS_SAY("core",
                         "the row has %1 cells, the header %2; put a cell that holds a comma in quotes"),
                  counts});
        return row.cells.size() == columns_;
    }

    [[nodiscard]] const CsvCell* cellOf(const CsvRow& row, const char* column) const
    {
        const auto at = at_.find(column);
        return at == at_.end() ? nullptr : &row.cells[at->second];
    }

    bool readKey(const CsvRow& row, BenchRow& bench)
    {
        const auto& lot = *cellOf(row, "lot");
        const auto& number = *cellOf(row, "row");
        if (lot.text.empty())
            tell(lot.place, "lot-empty",
                 {QS_SAY("core", "the row names no lot; keep the column as it was printed"), {}});
        const auto read = parseWholeNumber(number.text, 1, mostRows);
        if (!read)
            tell(number, read.complaint());
        if (lot.text.empty() || !read)
            return false;
        bench.lot = lot.text;
        bench.row = static_cast<int>(read.value());
        bench.place = lot.place;
        if (!seen_.insert({bench.lot, bench.row}).second) {
            tell(number.place, "reading-twice",
                 {QS_SAY("core", "row %1 of this lot stands in the table twice; keep one"), {number.text}});
            return false;
        }
        return true;
    }

    void readEye(const CsvCell& cell, Eye eye, BenchRow& bench)
    {
        const auto text = unguarded(cell.text);
        const auto read = parseEye(text, eye);
        if (!read)
            return tell(cell, read.complaint());
        if (read.value().state != EyeState::measured)
            return tell(cell.place, "reading-no-power",
                        {QS_SAY("core", "“%1” is no reading of a focimeter; write sphere, cylinder and axis"),
                         {shown(text)}});
        bench.asRead.of(eye) = text;
        bench.read.of(eye) = {read.value().power, read.value().addition,
                              read.value().prism.value_or(EyePrism{})};
    }

    void readCentres(const CsvRow& row, BenchRow& bench)
    {
        const auto* cell = cellOf(row, "centres_mm");
        if (cell == nullptr || cell->text.empty())
            return;
        const auto read = parseNumber(cell->text, leastCentres, mostCentres);
        if (!read)
            return tell(*cell, read.complaint());
        bench.centres = read.value();
    }

    /// "" or "read" beside readings, "not-found" or nothing at all without them.
    bool readOutcome(const CsvRow& row, bool any, BenchRow& bench)
    {
        const auto* cell = cellOf(row, "outcome");
        const std::string word = cell == nullptr ? "" : cell->text;
        if (word == "not-found" && any)
            tell(cell->place, "reading-unfound",
                 {QS_SAY("core", "the row says not-found and has a reading; delete one of the two"), {}});
        else if (word == "read" && !any)
            tell(
                cell->place, "reading-missing",
                {QS_SAY("core", "the row says read and has no reading; write both lenses or not-found"), {}});
        else if (!word.empty() && word != "not-found" && word != "read")
            tell(cell->place, "outcome-word",
                 {QS_SAY("core", "“%1” is not an outcome; write read or not-found"), {shown(word)}});
        else {
            bench.notFoundSaid = word == "not-found";
            return true;
        }
        return false;
    }

    void readRow(const CsvRow& row)
    {
        reading_.findings.insert(reading_.findings.end(), row.findings.begin(), row.findings.end());
        BenchRow bench;
        if (!countIsRight(row) || !row.findings.empty() || !readKey(row, bench))
            return;
        const auto& right = *cellOf(row, "right");
        const auto& left = *cellOf(row, "left");
        const bool any = !right.text.empty() || !left.text.empty();
        const auto before = reading_.findings.size();
        if (!readOutcome(row, any, bench))
            return;
        if (any && (right.text.empty() || left.text.empty()))
            tell(right.text.empty() ? right.place : left.place, "reading-missing",
                 {QS_SAY("core", "a pair is read in both lenses; write this one too"), {}});
        else if (any) {
            bench.found = true;
            readEye(right, Eye::right, bench);
            readEye(left, Eye::left, bench);
            readCentres(row, bench);
        }
        if (reading_.findings.size() == before)
            reading_.value.push_back(std::move(bench));
    }

    Reading<std::vector<BenchRow>>& reading_;
    std::map<std::string, std::size_t> at_;
    std::set<std::pair<std::string, int>> seen_;
    std::size_t columns_ = 0;
};

} // namespace

std::string benchSheetText(const std::string& lot, const std::vector<BenchSheetRow>& rows)
{
    auto text =
        csvRow({"lot", "row", "spare", "hand_over", "day", "person", "purpose", "lines", "label_right",
                "label_left", "label_centres_mm", "outcome", "right", "left", "centres_mm"});
    for (const auto& row : rows)
        text +=
            csvRow({lot, std::to_string(row.row), row.spare ? "spare" : "", row.handOver, row.day, row.person,
                    row.purpose, row.lines, row.label.right, row.label.left, row.centres, "", "", "", ""});
    return text;
}

Reading<std::vector<BenchRow>> readBenchText(const std::string& bytes, const std::string& name)
{
    Reading<std::vector<BenchRow>> reading;
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
             {QS_SAY("core", "the table is empty; its first line names the columns: %1"),
              {"lot,row,right,left"}}});
    if (!reading.usable())
        return reading;
    BenchReader(reading).read(table.value);
    sortByPlace(reading.findings);
    return reading;
}

Reading<std::vector<BenchRow>> readBenchSheet(const std::string& path)
{
    auto bytes = readBytes(path);
    if (!bytes.usable())
        return {{}, std::move(bytes.findings)};
    return readBenchText(bytes.value, path);
}

} // namespace quarterstep
