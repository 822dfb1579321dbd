// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/told_list.hpp"

#include "inventory/text/csv.hpp"
#include "inventory/text/csv_writing.hpp"
#include "inventory/text/numbers.hpp"

#include <map>

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
    explicit ToldReader(Reading<std::vector<ToldRow>>& reading) : reading_(reading) {}

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

    void readHeader(const CsvRow& header)
    {
        for (std::size_t i = 0; i < header.cells.size(); ++i)
            at_.emplace(header.cells[i].text, i);
        for (const char* needed : {"person", "lines"})
            if (at_.count(needed) == 0)
                tell(header.end, "column-missing",
                     {QS_SAY("core", "the column \"%1\" is missing; needed are person and lines"), {needed}});
    }

    [[nodiscard]] const CsvCell* cellOf(const CsvRow& row, const char* column) const
    {
        const auto found = at_.find(column);
        return found == at_.end() || found->second >= row.cells.size() ? nullptr : &row.cells[found->second];
    }

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
        tell(cell.place, "purpose-unknown",
             {QS_SAY("core", "“%1” is not a purpose; write distance, near, intermediate or bifocal"),
              {shown(cell.text)}});
        return false;
    }

    void readRow(const CsvRow& row)
    {
        for (const auto& finding : row.findings)
            reading_.findings.push_back(finding);
        const auto* person = cellOf(row, "person");
        const auto* lines = cellOf(row, "lines");
        if (person == nullptr || lines == nullptr || person->text.empty())
            return tell(row.end, "row-short", {QS_SAY("core", "the row needs a person and lines"), {}});
        ToldRow told;
        told.person = unguarded(person->text);
        told.position = person->place;
        for (auto& line : linesIn(unguarded(lines->text)))
            told.lines.push_back(std::move(line));
        if (told.lines.size() != 1 && told.lines.size() != 3)
            return tell(lines->place, "told-lines",
                        {QS_SAY("core", "write one line, or frame + right lens + left lens"), {}});
        const auto* purpose = cellOf(row, "purpose");
        if (purpose == nullptr || readPurpose(*purpose, told))
            reading_.value.push_back(std::move(told));
    }

    Reading<std::vector<ToldRow>>& reading_;
    std::map<std::string, std::size_t> at_;
};

} // namespace

Reading<std::vector<ToldRow>> readToldText(const std::string& bytes, const std::string& name)
{
    Reading<std::vector<ToldRow>> reading;
    auto checked = checkText(bytes, name);
    reading.findings = std::move(checked.findings);
    if (!reading.usable())
        return reading;
    auto parsed = parseCsv(checked.value);
    reading.findings = std::move(parsed.findings);
    if (!reading.usable())
        return reading;
    if (parsed.value.empty())
        reading.findings.push_back(
            {Severity::error,
             {name, 1, 1},
             "table-empty",
             {QS_SAY("core", "the table is empty; its first line names the columns: %1"),
              {"person,purpose,lines"}}});
    else
        ToldReader(reading).read(parsed.value);
    return reading;
}

Reading<std::vector<ToldRow>> readToldList(const std::string& path)
{
    auto bytes = readBytes(path);
    if (bytes.usable())
        return readToldText(bytes.value, path);
    return {{}, std::move(bytes.findings)};
}

} // namespace quarterstep
