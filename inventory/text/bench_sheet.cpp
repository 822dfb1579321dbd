// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/bench_sheet.hpp"

#include "core/optics/notation.hpp"
#include "inventory/text/csv_writing.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/small_table.hpp"

#include <set>

namespace quarterstep
{

namespace
{

constexpr long mostRows = 100'000;

class BenchReader
{
  public:
    explicit BenchReader(Reading<std::vector<BenchRow>>& reading)
        : reading_(reading), table_(reading.findings)
    {
    }

    void read(const std::vector<CsvRow>& table)
    {
        table_.readHeader(table.front());
        table_.need({"lot", "row", "right", "left"},
                    QS_SAY("core", "the column \"%1\" is missing; needed are lot, row, right and left"));
        if (reading_.usable())
            for (std::size_t i = 1; i < table.size(); ++i)
                readRow(table[i]);
    }

  private:
    bool readKey(const CsvRow& row, BenchRow& bench)
    {
        const auto& lot = table_.at(row, "lot");
        const auto& number = table_.at(row, "row");
        if (lot.text.empty())
            table_.tell(lot.place, "lot-empty",
                        {QS_SAY("core", "the row names no lot; keep the column as it was printed"), {}});
        const auto read = parseWholeNumber(number.text, 1, mostRows);
        if (!read)
            table_.tell(number, read.complaint());
        if (lot.text.empty() || !read)
            return false;
        bench.lot = lot.text;
        bench.row = static_cast<int>(read.value());
        bench.place = lot.place;
        if (!seen_.insert({bench.lot, bench.row}).second) {
            table_.tell(
                number.place, "reading-twice",
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
            return table_.tell(cell, read.complaint());
        if (read.value().state != EyeState::measured)
            return table_.tell(
                cell.place, "reading-no-power",
                {QS_SAY("core", "“%1” is no reading of a focimeter; write sphere, cylinder and axis"),
                 {shown(text)}});
        bench.asRead.of(eye) = text;
        bench.read.of(eye) = {read.value().power, read.value().addition,
                              read.value().prism.value_or(EyePrism{})};
    }

    void readCentres(const CsvRow& row, BenchRow& bench)
    {
        const auto* cell = table_.find(row, "centres_mm");
        if (cell == nullptr || cell->text.empty())
            return;
        const auto read = parseNumber(cell->text, leastCentres, mostCentres);
        if (!read)
            return table_.tell(*cell, read.complaint());
        bench.centres = read.value();
    }

    /// "" or "read" beside readings, "not-found" or nothing at all without them.
    bool readOutcome(const CsvRow& row, bool any, BenchRow& bench)
    {
        const auto* cell = table_.find(row, "outcome");
        const std::string word = cell == nullptr ? "" : cell->text;
        if (word == "not-found" && any)
            table_.tell(
                cell->place, "reading-unfound",
                {QS_SAY("core", "the row says not-found and has a reading; delete one of the two"), {}});
        else if (word == "read" && !any)
            table_.tell(
                cell->place, "reading-missing",
                {QS_SAY("core", "the row says read and has no reading; write both lenses or not-found"), {}});
        else if (!word.empty() && word != "not-found" && word != "read")
            table_.tell(cell->place, "outcome-word",
                        {QS_SAY("core", "“%1” is not an outcome; write read or not-found"), {shown(word)}});
        else {
            bench.notFoundSaid = word == "not-found";
            return true;
        }
        return false;
    }

    void readRow(const CsvRow& row)
    {
        BenchRow bench;
        if (!table_.isWhole(row) || !readKey(row, bench))
            return;
        const auto& right = table_.at(row, "right");
        const auto& left = table_.at(row, "left");
        const bool any = !right.text.empty() || !left.text.empty();
        const auto before = reading_.findings.size();
        if (!readOutcome(row, any, bench))
            return;
        if (any && (right.text.empty() || left.text.empty()))
            table_.tell(right.text.empty() ? right.place : left.place, "reading-missing",
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
    SmallTable table_;
    std::set<std::pair<std::string, int>> seen_;
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
    if (const auto rows = tableRows(bytes, name, "lot,row,right,left", reading.findings); !rows.empty())
        BenchReader(reading).read(rows);
    sortByPlace(reading.findings);
    return reading;
}

Reading<std::vector<BenchRow>> readBenchSheet(const std::string& path)
{
    return readWholeFile(path, readBenchText);
}

} // namespace quarterstep
