// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/mapped_header.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

class HeaderReader
{
  public:
    HeaderReader(const TableMap& given, Reading<MappedTable>& reading) : given_(given), reading_(reading) {}

    MappedHeader read(const CsvRow& row)
    {
        for (const auto& cell : row.cells)
            takeHeading(cell);
        for (const auto& column : given_.columns)
            if (std::find(header_.headings.begin(), header_.headings.end(), column.heading) ==
                header_.headings.end())
                tell(Severity::error, row.end, "map-heading",
                     {QS_SAY("core", "the map names a column \"%1\" that the table does not have"),
                      {shown(column.heading)}});
        for (const char* side : {"right", "left"})
            checkEye(side, row.end);
        if (!header_.has("person"))
            tell(Severity::error, row.end, "column-missing",
                 {QS_SAY("core", "no column is understood as %1; a map can say which one is, as in: %2"),
                  {"person", "Number = person"}});
        return std::move(header_);
    }

  private:
    void tell(Severity severity, const Position& place, const char* code, Sentence sentence)
    {
        reading_.findings.push_back({severity, place, code, std::move(sentence)});
    }

    void tellTwice(const Position& place, const std::string& target)
    {
        tell(Severity::error, place, "column-twice",
             {QS_SAY("core", "the column \"%1\" stands in the table twice; delete or rename one"), {target}});
    }

    void takeHeading(const CsvCell& cell)
    {
        const auto before = std::count(header_.headings.begin(), header_.headings.end(), cell.text);
        const auto* given = given_.of(cell.text, static_cast<std::size_t>(before));
        auto target = given != nullptr ? given->target : targetOfHeading(cell.text);
        if (isRulesColumn(lowered(cell.text)) && given == nullptr)
            target = "-"; // of an earlier export
        if (target.empty()) {
            reading_.value.notUnderstood.push_back(cell.text);
            tell(Severity::note, cell.place, "column-unknown",
                 {QS_SAY("core", "the column \"%1\" is not known; it is kept but not used"),
                  {shown(cell.text)}});
            target = "-";
        }
        if (target != "-" && header_.has(target))
            tellTwice(cell.place, target);
        header_.targets.push_back(target);
        header_.headings.push_back(cell.text);
        reading_.value.map.columns.push_back({cell.text, target});
    }

    void checkEye(const std::string& side, const Position& place)
    {
        if (!header_.has(side) && !header_.has(side + " sphere"))
            tell(Severity::error, place, "column-missing",
                 {QS_SAY("core", "no column is understood as %1; a map can say which one is, as in: %2"),
                  {side + " sphere", "Sph " + side.substr(0, 1) + " = " + side + " sphere"}});
        if (header_.has(side) && header_.has(side + " sphere"))
            tellTwice(place, side);
    }

    const TableMap& given_;
    Reading<MappedTable>& reading_;
    MappedHeader header_;
};

} // namespace

bool MappedHeader::has(const std::string& target) const
{
    return std::find(targets.begin(), targets.end(), target) != targets.end();
}

const CsvCell* MappedHeader::cellOf(const CsvRow& row, const std::string& target) const
{
    const auto found = std::find(targets.begin(), targets.end(), target);
    return found == targets.end() ? nullptr : &row.cells[static_cast<std::size_t>(found - targets.begin())];
}

MappedHeader readMappedHeader(const CsvRow& header, const TableMap& given, Reading<MappedTable>& reading)
{
    return HeaderReader(given, reading).read(header);
}

} // namespace quarterstep
