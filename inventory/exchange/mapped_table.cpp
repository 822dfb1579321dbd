// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/mapped_table.hpp"

#include "inventory/text/csv.hpp"
#include "inventory/text/csv_writing.hpp"
#include "inventory/text/large_text.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/record_text.hpp"
#include "inventory/text/table_columns.hpp"

#include <algorithm>
#include <array>

namespace quarterstep
{

namespace
{

constexpr std::size_t rowsBetweenProgress = 256;

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

/// Begins with a digit or a point after blanks: a number that nobody gave a sign.
bool withoutSign(const std::string& text)
{
    const auto first = text.find_first_not_of(' ');
    if (first == std::string::npos || std::string("0123456789.,").find(text[first]) == std::string::npos)
        return false;
    return text.find_first_of("123456789") != std::string::npos; // zero needs none
}

/// Text put together from cells, which knows where each part came from.
struct Composed {
    std::string text;
    std::vector<std::pair<int, Position>> parts; ///< offset in characters, place of the cell

    void add(const std::string& between, const std::string& part, const Position& place)
    {
        if (part.empty())
            return;
        text += between;
        parts.emplace_back(static_cast<int>(charactersIn(text)), place);
        text += part;
    }
    [[nodiscard]] Position placeOf(int offset, Position otherwise) const
    {
        for (const auto& [begin, place] : parts)
            if (begin <= offset)
                otherwise = place;
        return otherwise;
    }
};

class MappedReader
{
  public:
    MappedReader(const std::string& name, const TableMap& given, const ImportOptions& options)
        : name_(name), options_(options), rowEnd_(options)
    {
        reading_.value.map = given;
        reading_.value.map.columns.clear();
        given_ = &given;
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
        readHeader(rows.value.front());
        for (std::size_t i = 1; i < rows.value.size() && reading_.usable(); ++i) {
            if (options_.progress && i % rowsBetweenProgress == 0)
                options_.progress(i, rows.value.size());
            reading_.value.rows.push_back(readRow(rows.value[i]));
        }
        if (options_.progress)
            options_.progress(rows.value.size(), rows.value.size());
        tellUnsigned();
    }

    void readHeader(const CsvRow& header)
    {
        for (const auto& cell : header.cells) {
            const auto* given = given_->of(cell.text);
            auto target = given != nullptr ? given->target : targetOfHeading(cell.text);
            if (target.empty()) {
                reading_.value.notUnderstood.push_back(cell.text);
                tell(Severity::note, cell.place, "column-unknown",
                     {QS_SAY("core", "the column \"%1\" is not known; it is kept but not used"),
                      {shown(cell.text)}});
                target = "-";
            }
            if (target != "-" && std::find(targets_.begin(), targets_.end(), target) != targets_.end())
                tell(Severity::error, cell.place, "column-twice",
                     {QS_SAY("core", "the column \"%1\" stands in the table twice; delete or rename one"),
                      {target}});
            targets_.push_back(target);
            headings_.push_back(cell.text);
            reading_.value.map.columns.push_back({cell.text, target});
        }
        for (const auto& column : given_->columns)
            if (std::find(headings_.begin(), headings_.end(), column.heading) == headings_.end())
                tell(Severity::error, header.end, "map-heading",
                     {QS_SAY("core", "the map names a column \"%1\" that the table does not have"),
                      {shown(column.heading)}});
        for (const char* side : {"right", "left"})
            checkEye(side, header.end);
        if (!has("person"))
            tell(Severity::error, header.end, "column-missing",
                 {QS_SAY("core", "no column is understood as %1; a map can say which one is, as in: %2"),
                  {"person", "Number = person"}});
    }

    [[nodiscard]] bool has(const std::string& target) const
    {
        return std::find(targets_.begin(), targets_.end(), target) != targets_.end();
    }

    void checkEye(const std::string& side, const Position& place)
    {
        if (!has(side) && !has(side + " sphere"))
            tell(Severity::error, place, "column-missing",
                 {QS_SAY("core", "no column is understood as %1; a map can say which one is, as in: %2"),
                  {side + " sphere", "Sph " + side.substr(0, 1) + " = " + side + " sphere"}});
        if (has(side) && has(side + " sphere"))
            tell(Severity::error, place, "column-twice",
                 {QS_SAY("core", "the column \"%1\" stands in the table twice; delete or rename one"),
                  {side}});
    }

    TableRow readRow(const CsvRow& csv)
    {
        TableRow row;
        row.line = csv.line;
        row.findings = csv.findings;
        PersonRecord record;
        record.position = {name_, csv.line, 1};
        if (csv.cells.size() != targets_.size() && row.findings.empty())
            row.findings.push_back(
                {Severity::error,
                 csv.end,
                 csv.cells.size() < targets_.size() ? "row-short" : "row-long",
                 {QS_SAY(
                      "core",
                      "the row has %1 cells, the header %2; put a cell that holds the separator in quotes"),
                  {std::to_string(csv.cells.size()), std::to_string(targets_.size())}}});
        if (hasError(row.findings))
            return row;
        PartPlaces places;
        for (const auto& column : tableColumns()) // eyes before additions
            takeColumn(column.name, csv, record, places, row);
        for (const Eye eye : bothEyes)
            takeParts(eye, csv, record, places, row);
        for (std::size_t i = 0; i < targets_.size(); ++i)
            if (targets_[i] == "-" && !csv.cells[i].text.empty())
                record.otherColumns.emplace_back(lowered(headings_[i]), unguarded(csv.cells[i].text));
        rowEnd_.finish(std::move(record), places, row);
        return row;
    }

    [[nodiscard]] const CsvCell* cellOf(const CsvRow& csv, const std::string& target) const
    {
        const auto found = std::find(targets_.begin(), targets_.end(), target);
        return found == targets_.end() ? nullptr
                                       : &csv.cells[static_cast<std::size_t>(found - targets_.begin())];
    }

    void takeColumn(const std::string& column, const CsvRow& csv, PersonRecord& record, PartPlaces& places,
                    TableRow& row)
    {
        const auto* cell = cellOf(csv, column);
        if (cell == nullptr || cell->text.empty())
            return;
        places[column] = cell->place;
        auto text = unguarded(cell->text);
        if (column == "right" || column == "left")
            text = signedSphere(text);
        const auto said = setField(record, column, text);
        if (!said)
            return;
        auto place = cell->place;
        place.column += text == cell->text ? said->offset : 0;
        row.findings.push_back({Severity::error, std::move(place), said->code, said->sentence});
    }

    std::string partOf(const CsvRow& csv, const std::string& target, Position& place) const
    {
        const auto* cell = cellOf(csv, target);
        if (cell == nullptr)
            return {};
        place = cell->place;
        return unguarded(cell->text);
    }

    /// The parts of one eye as one text, read as any eye is.
    void takeParts(Eye eye, const CsvRow& csv, PersonRecord& record, PartPlaces& places, TableRow& row)
    {
        const std::string side = eye == Eye::right ? "right" : "left";
        if (!has(side + " sphere"))
            return;
        Position place = csv.end;
        Composed all;
        const auto sphere = partOf(csv, side + " sphere", place);
        const auto spherePlace = place;
        all.add("", signedSphere(sphere), place);
        const auto cylinder = partOf(csv, side + " cylinder", place);
        const bool toric = isCylinder(cylinder);
        all.add(" ", toric ? signedCylinder(cylinder) : "", place);
        const auto axis = partOf(csv, side + " axis", place);
        if (toric) // without a cylinder an axis means nothing
            all.add(" x ", plainAxis(axis), place);
        const auto prism = partOf(csv, side + " prism", place);
        all.add(" ", prism.find_first_of("123456789") == std::string::npos ? "" : prism, place);
        const auto base = partOf(csv, side + " base", place);
        const auto word = lowered(base);
        const bool oneWord =
            word == "bi" || word == "bo" || word == "bu" || word == "bd" || word.compare(0, 4, "base") == 0;
        all.add(oneWord ? " " : " base ", prism.empty() ? "" : base, place);
        if (all.text.empty())
            return;
        places[side] = spherePlace;
        const auto parsed = parseEye(all.text, eye);
        if (!parsed) {
            row.findings.push_back({Severity::error, all.placeOf(parsed.complaint().offset, spherePlace),
                                    parsed.complaint().code, parsed.complaint().sentence});
            return;
        }
        record.eyes.of(eye).final = parsed.value();
        record.eyes.of(eye).final.asWritten = eyeWords(parsed.value(), eye); // with points, in one cell
        if (parsed.value().addition)
            record.eyes.of(eye).addition = parsed.value().addition;
    }

    /// Cells that say there is no cylinder: empty, a dash, "DS", "sph", zero.
    static bool isCylinder(const std::string& text)
    {
        const auto word = lowered(text);
        return !(word.empty() || word == "-" || word == "--" || word == "ds" || word == "sph" ||
                 word.find_first_not_of("0.,+-") == std::string::npos);
    }

    static std::string plainAxis(std::string text)
    {
        const auto begin = text.find_first_of("0123456789");
        text = begin == std::string::npos ? text : text.substr(begin);
        const auto zeros = std::min(text.find_first_not_of('0'), text.empty() ? 0 : text.size() - 1);
        return text.substr(zeros); // "090"
    }

    std::string signedSphere(const std::string& text)
    {
        if (!withoutSign(text))
            return text;
        ++reading_.value.unsignedSpheres;
        reading_.value.commaDecimals = reading_.value.commaDecimals || text.find(',') != std::string::npos;
        return withSign(text, reading_.value.map.spheres);
    }

    std::string signedCylinder(const std::string& text)
    {
        auto& table = reading_.value;
        table.commaDecimals = table.commaDecimals || text.find(',') != std::string::npos;
        if (!withoutSign(text)) {
            ++(text.find('-') == std::string::npos && text.find("\u2212") == std::string::npos
                   ? table.plusCylinders
                   : table.minusCylinders);
            return text;
        }
        ++table.unsignedCylinders;
        return withSign(text, table.map.cylinders);
    }

    static std::string withSign(const std::string& text, Unsigned meaning)
    {
        return (meaning == Unsigned::plus ? "+" : meaning == Unsigned::minus ? "-" : "") + text;
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
    const TableMap* given_ = nullptr;
    RowEnd rowEnd_;
    std::vector<std::string> targets_; ///< by column
    std::vector<std::string> headings_;
    Reading<MappedTable> reading_;
};

constexpr std::array flatParts{"sphere", "cylinder", "axis", "prism"};

/// Cells of one eye: sphere (or the word of its state), cylinder, axis, prism.
std::vector<std::string> flatEye(const WrittenEye& eye, Eye side)
{
    if (eye.state != EyeState::measured)
        return {eyeWords(eye, side), "", "", ""};
    const bool toric = eye.power.cylinder != Dioptres{};
    const auto whole = eyeWords(eye, side);
    const auto power = writePower(eye.power);
    return {writeDioptres(eye.power.sphere), toric ? writeDioptres(eye.power.cylinder) : "",
            toric ? writeNumber(eye.power.axis.value()) : "",
            whole.size() > power.size() ? whole.substr(power.size() + 1) : ""};
}

} // namespace

Reading<MappedTable> readMappedTable(const std::string& bytes, const std::string& name, const TableMap& given,
                                     const ImportOptions& options)
{
    return MappedReader(name, given, options).read(bytes);
}

Reading<std::string> writeFlatTable(std::span<const ExchangePerson> persons)
{
    Reading<std::string> written;
    std::vector<TableRow> rows;
    for (const auto& [record, rules] : persons) {
        TableRow row;
        row.record = record;
        auto& others = row.record->otherColumns;
        std::erase_if(others, [](const auto& other) { return isRulesColumn(other.first); });
        std::vector<std::pair<std::string, std::string>> parts;
        for (const Eye side : bothEyes) {
            const auto cells = flatEye(record.eyes.of(side).final, side);
            for (std::size_t i = 0; i < flatParts.size(); ++i)
                parts.emplace_back((side == Eye::right ? "right_" : "left_") + std::string(flatParts[i]),
                                   cells[i]);
        }
        others.insert(others.begin(), parts.begin(), parts.end());
        others.emplace_back("rules_profile", rules.profile);
        others.emplace_back("rules_version", rules.version);
        others.emplace_back("rules_hash", rules.hash);
        for (const auto& [column, cell] : recordCells(record))
            if (staysHere(column))
                tellStays(record, column, written.findings);
        row.record->symptoms.clear();
        row.record->guardian.clear();
        rows.push_back(std::move(row));
    }
    written.value = tableText(rows, {"right", "left"});
    return written;
}

} // namespace quarterstep
