// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/witness_table.hpp"

#include "inventory/text/csv_writing.hpp"
#include "inventory/text/small_table.hpp"
#include "inventory/text/table_columns.hpp"

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
    explicit WitnessReader(Reading<LaterWitnesses>& reading) : reading_(reading), table_(reading.findings) {}

    void read(const std::vector<CsvRow>& table)
    {
        std::vector<const char*> known{"entry"};
        for (const auto& column : witnessColumns)
            known.push_back(column.name);
        table_.readHeader(table.front(), known);
        table_.need({"entry"}, QS_SAY("core", "the column \"%1\" is missing; it names the hand-over"));
        if (!reading_.usable())
            return;
        for (std::size_t i = 1; i < table.size(); ++i)
            readRow(table[i]);
    }

  private:
    void readRow(const CsvRow& row)
    {
        if (!table_.isWhole(row))
            return;
        const auto& cell = table_.at(row, "entry");
        const auto entry = unguarded(cell.text);
        if (entry.empty())
            return table_.tell(cell.place, "witness-entry",
                               {QS_SAY("core", "the row names no hand-over"), {}});
        const auto later = readCells(row);
        if (!reading_.value.emplace(entry, later).second)
            table_.tell(cell.place, "witness-twice",
                        {QS_SAY("core", "%1 stands here twice"), {shown(entry)}});
    }

    std::shared_ptr<const LaterWitness> readCells(const CsvRow& row)
    {
        PersonRecord read; // the cells are those of a prescription, and read as there
        auto later = std::make_shared<LaterWitness>();
        for (const auto& column : witnessColumns) {
            const auto* cell = table_.find(row, column.name);
            if (cell == nullptr || cell->text.empty())
                continue;
            if (const auto complaint = columnNamed(column.reads)->set(read, unguarded(cell->text))) {
                table_.tell(*cell, *complaint);
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
    SmallTable table_;
};

} // namespace

Reading<LaterWitnesses> readWitnessText(const std::string& bytes, const std::string& name)
{
    Reading<LaterWitnesses> reading;
    if (const auto rows = tableRows(bytes, name, "entry,right,left,pair_right,pair_left", reading.findings);
        !rows.empty())
        WitnessReader(reading).read(rows);
    sortByPlace(reading.findings);
    return reading;
}

Reading<LaterWitnesses> readWitnessFile(const std::string& path)
{
    return readWholeFile(path, readWitnessText);
}

} // namespace quarterstep
