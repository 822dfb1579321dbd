// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/table_map.hpp"

#include "inventory/text/source_text.hpp"
#include "inventory/text/table_columns.hpp"

#include <algorithm>
#include <array>

namespace quarterstep
{

namespace
{

constexpr std::array eyeParts{"sphere", "cylinder", "axis", "prism", "base"};
constexpr std::array separatorNames{std::pair{",", ','}, std::pair{";", ';'}, std::pair{"tab", '\t'},
                                    std::pair{"|", '|'}};

bool isTarget(const std::string& target)
{
    const auto all = mapTargets();
    return std::find(all.begin(), all.end(), target) != all.end();
}

std::string trimmedText(const std::string& text)
{
    const auto begin = text.find_first_not_of(" \t\r");
    return begin == std::string::npos ? std::string()
                                      : text.substr(begin, text.find_last_not_of(" \t\r") - begin + 1);
}

bool isQuoted(const std::string& heading)
{
    return heading.size() >= 2 && heading.front() == '"' && heading.back() == '"';
}

/// In quotes where it would be taken for something else: a note, a setting, a heading in quotes.
std::string headingText(const std::string& heading)
{
    const bool plain = !heading.empty() && heading.front() != '#' && !isQuoted(heading) &&
                       trimmedText(heading) == heading && heading != "separator" &&
                       heading != "unsigned spheres" && heading != "unsigned cylinders" &&
                       heading != "decimal";
    return plain ? heading : '"' + heading + '"';
}

class MapReader
{
  public:
    explicit MapReader(const SourceText& source) : source_(source) {}

    Reading<TableMap> read()
    {
        const auto& text = source_.text();
        for (std::size_t begin = 0; begin < text.size();) {
            const auto end = std::min(text.find('\n', begin), text.size());
            const auto line = trimmedText(text.substr(begin, end - begin));
            if (!line.empty() && line.front() != '#')
                takeLine(line, begin);
            begin = end + 1;
        }
        return std::move(reading_);
    }

  private:
    void tell(std::size_t where, const char* code, Sentence sentence)
    {
        reading_.findings.push_back({Severity::error, source_.at(where), code, std::move(sentence)});
    }

    void takeLine(const std::string& line, std::size_t begin)
    {
        const auto equals = line.rfind('=');
        if (equals == std::string::npos) {
            tell(begin, "map-line",
                 {QS_SAY("core", "\"%1\" is no line of a map; write heading = column"), {shown(line)}});
            return;
        }
        auto heading = trimmedText(line.substr(0, equals));
        const auto target = trimmedText(line.substr(equals + 1));
        if (isQuoted(heading))
            takeColumn(heading.substr(1, heading.size() - 2), target, begin);
        else if (heading == "separator")
            takeSeparator(target, begin);
        else if (heading == "unsigned spheres")
            takeUnsigned(reading_.value.spheres, target, begin);
        else if (heading == "unsigned cylinders")
            takeUnsigned(reading_.value.cylinders, target, begin);
        else if (heading == "decimal")
            takeDecimal(target, begin);
        else
            takeColumn(std::move(heading), target, begin);
    }

    void takeColumn(std::string heading, const std::string& target, std::size_t begin)
    {
        if (isTarget(target)) {
            reading_.value.columns.push_back({std::move(heading), target});
            return;
        }
        tell(begin, "map-target",
             {QS_SAY("core",
                     "\"%1\" is nothing a column can be: write right sphere (cylinder, axis, prism, base; "
                     "left), a column of the prescription table, or - to leave it"),
              {shown(target)}});
    }

    void takeSeparator(const std::string& word, std::size_t begin)
    {
        for (const auto& [name, separator] : separatorNames)
            if (word == name) {
                reading_.value.separator = separator;
                return;
            }
        tell(begin, "map-value",
             {QS_SAY("core", "\"%1\" is no separator; write , or ; or | or tab"), {shown(word)}});
    }

    void takeUnsigned(Unsigned& target, const std::string& word, std::size_t begin)
    {
        if (word == "plus")
            target = Unsigned::plus;
        else if (word == "minus")
            target = Unsigned::minus;
        else
            tell(begin, "map-value", {QS_SAY("core", "\"%1\" is not plus or minus"), {shown(word)}});
    }

    void takeDecimal(const std::string& word, std::size_t begin)
    {
        if (word == "point" || word == "comma")
            reading_.value.decimal = word == "point" ? DecimalMark::point : DecimalMark::comma;
        else
            tell(begin, "map-value", {QS_SAY("core", "\"%1\" is not point or comma"), {shown(word)}});
    }

    const SourceText& source_;
    Reading<TableMap> reading_;
};

} // namespace

const MappedColumn* TableMap::of(const std::string& heading, std::size_t which) const
{
    for (const auto& column : columns)
        if (column.heading == heading && which-- == 0)
            return &column;
    return nullptr;
}

std::vector<std::string> mapTargets()
{
    std::vector<std::string> targets{"-", "person"};
    for (const std::string side : {"right", "left"}) {
        targets.push_back(side);
        for (const auto* part : eyeParts)
            targets.push_back(side + " " + part);
    }
    for (const auto& column : tableColumns())
        if (std::find(targets.begin(), targets.end(), column.name) == targets.end())
            targets.emplace_back(column.name);
    return targets;
}

Reading<TableMap> readTableMap(const std::string& bytes, const std::string& name)
{
    const auto checked = checkText(bytes, name);
    if (!checked.usable())
        return {{}, checked.findings};
    return MapReader(checked.value).read();
}

std::string writeTableMap(const TableMap& map)
{
    std::string text = "separator = ";
    text += map.separator == '\t' ? "tab" : std::string(1, map.separator == '\0' ? ',' : map.separator);
    text += "\n";
    const auto addUnsigned = [&](const char* name, Unsigned value) {
        if (value != Unsigned::refused)
            text += std::string(name) + " = " + (value == Unsigned::plus ? "plus" : "minus") + "\n";
    };
    addUnsigned("unsigned spheres", map.spheres);
    addUnsigned("unsigned cylinders", map.cylinders);
    if (map.decimal != DecimalMark::either)
        text += std::string("decimal = ") + (map.decimal == DecimalMark::comma ? "comma" : "point") + "\n";
    for (const auto& column : map.columns)
        if (column.heading.find('\n') == std::string::npos) // a line of a map is one line
            text += headingText(column.heading) + " = " + column.target + "\n";
    return text;
}

} // namespace quarterstep
