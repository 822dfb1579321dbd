// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/told_list.hpp"

#include "inventory/text/csv_writing.hpp"
#include "inventory/text/small_table.hpp"

namespace quarterstep
{

namespace
{

std::vector<std::string> linesIn(const std::string& text)
{
    std::vector<std::string> lines;
    std::size_t begin = 0;
    while (begin <= text.size()) {
        // " + " or "+" followed by a blank: line names hold plus signs themselves
        const auto end = std::min(text.find(" + ", begin), text.size());
        lines.push_back(text.substr(begin, end - begin));
        begin = end + 3;
    }
    return lines;
}

class ToldReader
{
  public:
    explicit ToldReader(Reading<std::vector<ToldRow>>& reading) : reading_(reading), table_(reading.findings)
    {
    }

    void read(const std::vector<CsvRow>& table)
    {
        table_.readHeader(table.front());
        table_.need({"person", "lines"},
                    QS_SAY("core", "the column \"%1\" is missing; needed are person and lines"));
        if (reading_.usable())
            for (std::size_t i = 1; i < table.size(); ++i)
                readRow(table[i]);
    }

  private:
    [[nodiscard]] bool readPurpose(const CsvCell& cell, ToldRow& told)
    {
        constexpr std::pair<const char*, Purpose> words[] = {{"distance", Purpose::distance},
                                                             {"near", Purpose::near},
                                                             {"intermediate", Purpose::intermediate},
                                                             {"bifocal", Purpose::bifocal}};
        for (const auto& [word, purpose] : words)
            if (cell.text == word) {
                told.purpose = purpose;
                return true;
            }
        if (cell.text.empty())
            return true;
        table_.tell(cell.place, "purpose-unknown",
                    {QS_SAY("core", "“%1” is not a purpose; write distance, near, intermediate or bifocal"),
                     {shown(cell.text)}});
        return false;
    }

    void readRow(const CsvRow& row)
    {
        if (!table_.isWhole(row))
            return;
        const auto& person = table_.at(row, "person");
        const auto& lines = table_.at(row, "lines");
        if (person.text.empty())
            return table_.tell(row.end, "row-short",
                               {QS_SAY("core", "the row needs a person and lines"), {}});
        ToldRow told;
        told.person = unguarded(person.text);
        told.position = person.place;
        for (auto& line : linesIn(unguarded(lines.text)))
            told.lines.push_back(std::move(line));
        if (told.lines.size() != 1 && told.lines.size() != 3)
            return table_.tell(lines.place, "told-lines",
                               {QS_SAY("core", "write one line, or frame + right lens + left lens"), {}});
        const auto* purpose = table_.find(row, "purpose");
        if (purpose == nullptr || readPurpose(*purpose, told))
            reading_.value.push_back(std::move(told));
    }

    Reading<std::vector<ToldRow>>& reading_;
    SmallTable table_;
};

} // namespace

Reading<std::vector<ToldRow>> readToldText(const std::string& bytes, const std::string& name)
{
    Reading<std::vector<ToldRow>> reading;
    if (const auto rows = tableRows(bytes, name, "person,purpose,lines", reading.findings); !rows.empty())
        ToldReader(reading).read(rows);
    return reading;
}

Reading<std::vector<ToldRow>> readToldList(const std::string& path)
{
    return readWholeFile(path, readToldText);
}

} // namespace quarterstep
