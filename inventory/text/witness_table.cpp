// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/witness_table.hpp"

#include "inventory/text/csv.hpp"
#include "inventory/text/csv_writing.hpp"
#include "inventory/text/table_columns.hpp"

#include <algorithm>
#include <array>

namespace quarterstep
{

namespace
{

/// A column here, and the column of the prescription table that reads its cells.
struct WitnessColumn {
    const char* name;
    const char* reads;
};
constexpr std::array witnessColumns{WitnessColumn{"right", "right"},
                                    WitnessColumn{"left", "left"},
                                    WitnessColumn{"add", "add"},
                                    WitnessColumn{"add_right", "add_right"},
                                    WitnessColumn{"add_left", "add_left"},
                                    WitnessColumn{"pd_mm", "pd_mm"},
                                    WitnessColumn{"pair_right", "worn_right"},
                                    WitnessColumn{"pair_left", "worn_left"}};

class WitnessReader
{
  public:
    explicit WitnessReader(Reading<LaterWitnesses>& reading) : reading_(reading) {}

    void read(const std::vector<CsvRow>& table)
    {
        readHeader(table.front());
        if (!reading_.usable())
            return;
        for (std::size_t i = 1; i < table.size(); ++i)
            readRow(table[i]);
    }

  private:
    void tell(const Position& place, std::string code, Sentence sentence, Severity severity = Severity::error)
    {
        reading_.findings.push_back({severity, place, std::move(code), std::move(sentence)});
    }

    void readHeader(const CsvRow& header)
    {
        for (std::size_t i = 0; i < header.cells.size(); ++i) {
            const auto& cell = header.cells[i];
            const bool known = cell.text == "entry" ||
                               std::any_of(witnessColumns.begin(), witnessColumns.end(),
                                           [&](const auto& column) { return cell.text == column.name; });
            if (!known)
                tell(cell.place, "column-unknown",
                     {QS_SAY("core", "the column \"%1\" is not known; it is not used"), {shown(cell.text)}},
                     Severity::note);
            else if (!at_.emplace(cell.text, i).second)
                tell(cell.place, "column-twice",
                     {QS_SAY("core", "the column \"%1\" stands in the table twice; delete or rename one"),
                      {shown(cell.text)}});
        }
        if (at_.count("entry") == 0)
            tell(header.end, "column-missing",
                 {QS_SAY("core", "the column \"%1\" is missing; it names the hand-over"), {"entry"}});
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
        const auto& cell = row.cells[at_.at("entry")];
        const auto entry = unguarded(cell.text);
        if (entry.empty())
            return tell(cell.place, "witness-entry", {QS_SAY("core", "the row names no hand-over"), {}});
        const auto later = readCells(row);
        if (!reading_.value.emplace(entry, later).second)
            tell(cell.place, "witness-twice", {QS_SAY("core", "%1 stands here twice"), {shown(entry)}});
    }

    std::shared_ptr<const LaterWitness> readCells(const CsvRow& row)
    {
        PersonRecord read; // the cells are those of a prescription, and read as there
        auto later = std::make_shared<LaterWitness>();
        for (const auto& column : witnessColumns) {
            const auto at = at_.find(column.name);
            if (at == at_.end() || row.cells[at->second].text.empty())
                continue;
            const auto& cell = row.cells[at->second];
            if (const auto complaint = columnNamed(column.reads)->set(read, unguarded(cell.text))) {
                auto place = cell.place;
                place.column += static_cast<int>(complaint->offset);
                tell(place, complaint->code, complaint->sentence);
                continue;
            }
            const auto has = [&](const char* name) { return std::string(column.name) == name; };
            if (has("right"))
                later->final.right = read.eyes.right.final.power;
            if (has("left"))
                later->final.left = read.eyes.left.final.power;
        }
        for (const Eye eye : bothEyes) {
            later->addition.of(eye) = read.eyes.of(eye).addition;
            later->pair.of(eye) = read.eyes.of(eye).worn;
        }
        later->distancePd = read.distancePd;
        return later;
    }

    Reading<LaterWitnesses>& reading_;
    std::map<std::string, std::size_t> at_;
    std::size_t columns_ = 0;
};

} // namespace

Reading<LaterWitnesses> readWitnessText(const std::string& bytes, const std::string& name)
{
    Reading<LaterWitnesses> reading;
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
              {"entry,right,left,pair_right,pair_left"}}});
    if (reading.usable())
        WitnessReader(reading).read(table.value);
    sortByPlace(reading.findings);
    return reading;
}

Reading<LaterWitnesses> readWitnessFile(const std::string& path)
{
    auto bytes = readBytes(path);
    if (!bytes.usable())
        return {{}, std::move(bytes.findings)};
    return readWitnessText(bytes.value, path);
}

} // namespace quarterstep
