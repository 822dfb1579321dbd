// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/names_list.hpp"

#include "inventory/text/csv_writing.hpp"
#include "inventory/text/small_table.hpp"

#include <array>
#include <map>

namespace quarterstep
{

namespace
{

constexpr std::array nameColumns{"person", "name"};

class NamesReader
{
  public:
    explicit NamesReader(Reading<std::vector<NameRow>>& reading) : reading_(reading), table_(reading.findings)
    {
    }

    void read(const std::vector<CsvRow>& table)
    {
        table_.readHeader(table.front(), nameColumns);
        table_.need({"person", "name"},
                    QS_SAY("core", "the column \"%1\" is missing; needed are person and name"));
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
        const auto& person = table_.at(row, "person");
        const auto& name = table_.at(row, "name");
        const auto code = unguarded(person.text);
        if (code.empty())
            table_.tell(person.place, "person-empty", {QS_SAY("core", "the row names no person"), {}});
        else if (const auto [seen, isNew] = first_.emplace(code, row.line); !isNew)
            table_.tell(person.place, "person-twice",
                        {QS_SAY("core", "%1 stands here twice, first in row %2"),
                         {shown(code), std::to_string(seen->second)}});
        if (name.text.empty())
            table_.tell(name.place, "name-empty",
                        {QS_SAY("core", "no name stands here; to erase one, use `quarterstep forget`"), {}});
        if (!code.empty() && !name.text.empty())
            reading_.value.push_back({code, unguarded(name.text), person.place});
    }

    Reading<std::vector<NameRow>>& reading_;
    SmallTable table_;
    std::map<std::string, int> first_;
};

} // namespace

Reading<std::vector<NameRow>> readNamesText(const std::string& bytes, const std::string& name)
{
    Reading<std::vector<NameRow>> reading;
    if (const auto rows = tableRows(bytes, name, "person,name", reading.findings); !rows.empty())
        NamesReader(reading).read(rows);
    sortByPlace(reading.findings);
    return reading;
}

Reading<std::vector<NameRow>> readNamesList(const std::string& path)
{
    return readWholeFile(path, readNamesText);
}

} // namespace quarterstep
