// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/readings_file.hpp"

#include "core/optics/angle.hpp"
#include "core/optics/notation.hpp"
#include "core/optics/readings.hpp"
#include "inventory/text/csv.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/source_text.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <optional>

namespace quarterstep
{

namespace
{

constexpr std::array readingColumns{"person", "eye", "reading", "sphere", "cylinder", "axis"};

std::optional<Eye> eyeOf(const std::string& text)
{
    const std::string word = lowered(text);
    if (word == "right" || word == "r" || word == "od")
        return Eye::right;
    if (word == "left" || word == "l" || word == "os")
        return Eye::left;
    return std::nullopt;
}

class ReadingsReader
{
  public:
    explicit ReadingsReader(const std::string& name) : name_(name) {}

    Reading<std::vector<EyeReadings>> read(const std::string& bytes)
    {
        auto checked = checkText(bytes, name_);
        reading_.findings = std::move(checked.findings);
        if (!reading_.usable())
            return finish();
        auto parsed = parseCsv(checked.value);
        reading_.findings = std::move(parsed.findings);
        if (parsed.value.empty() && reading_.usable())
            tell(Severity::error, {name_, 1, 1}, "table-empty",
                 {QS_SAY("core", "the table is empty; its first line names the columns: %1"),
                  {"person,eye,reading"}});
        if (!reading_.usable())
            return finish();
        readHeader(parsed.value.front());
        if (reading_.usable())
            for (std::size_t i = 1; i < parsed.value.size(); ++i)
                readRow(parsed.value[i]);
        tellTooFew();
        return finish();
    }

  private:
    void tell(Severity severity, Position place, const char* code, Sentence sentence)
    {
        reading_.findings.push_back({severity, std::move(place), code, std::move(sentence)});
    }

    void tell(const CsvCell& cell, const Complaint& complaint)
    {
        Position place = cell.place;
        place.column += complaint.offset;
        reading_.findings.push_back({Severity::error, std::move(place), complaint.code, complaint.sentence});
    }

    Reading<std::vector<EyeReadings>> finish()
    {
        sortByPlace(reading_.findings);
        return std::move(reading_);
    }

    [[nodiscard]] bool has(const char* column) const { return at_.count(column) > 0; }

    void readHeader(const CsvRow& header)
    {
        reading_.findings.insert(reading_.findings.end(), header.findings.begin(), header.findings.end());
        columns_ = header.cells.size();
        for (std::size_t i = 0; i < columns_; ++i)
            readColumn(header.cells[i], i);
        oneText_ = has("reading");
        if (oneText_ && has("sphere"))
            tell(Severity::error, header.cells[at_["sphere"]].place, "columns-both",
                 {QS_SAY("core",
                         "write each reading once: in the column reading, or in sphere, cylinder, axis"),
                  {}});
        need(header, "person");
        need(header, "eye");
        if (oneText_)
            return;
        need(header, "sphere");
        need(header, "cylinder");
        need(header, "axis");
    }

    void readColumn(const CsvCell& cell, std::size_t index)
    {
        const std::string column = lowered(cell.text);
        if (std::find(readingColumns.begin(), readingColumns.end(), column) == readingColumns.end()) {
            tell(Severity::note, cell.place, "column-unknown",
                 {QS_SAY("core", "the column \"%1\" is not known; it is not used"), {shown(cell.text)}});
            return;
        }
        if (!at_.emplace(column, index).second)
            tell(Severity::error, cell.place, "column-twice",
                 {QS_SAY("core", "the column \"%1\" stands in the table twice; delete or rename one"),
                  {shown(column)}});
    }

    void need(const CsvRow& header, const char* column)
    {
        if (!has(column))
            tell(Severity::error, header.end, "column-missing",
                 {QS_SAY("core",
                         "the column \"%1\" is missing; needed are person, eye and reading, or sphere, "
                         "cylinder and axis in place of reading"),
                  {column}});
    }

    /// True when the row has as many cells as the header.
    bool countIsRight(const CsvRow& row)
    {
        const std::vector<std::string> counts{std::to_string(row.cells.size()), std::to_string(columns_)};
        if (row.cells.size() < columns_)
            tell(Severity::error, row.end, "row-short",
                 {QS_SAY("core", "the row ends after %1 cells, the header has %2; add the missing commas"),
                  counts});
        if (row.cells.size() > columns_)
            tell(Severity::error, row.cells[columns_].place, "row-long",
                 {QS_SAY("core",
                         "the row has %1 cells, the header %2; put a cell that holds a comma in quotes"),
                  counts});
        return row.cells.size() == columns_;
    }

    void readRow(const CsvRow& row)
    {
        reading_.findings.insert(reading_.findings.end(), row.findings.begin(), row.findings.end());
        if (!countIsRight(row) || !row.findings.empty())
            return;
        const CsvCell& person = row.cells[at_["person"]];
        const CsvCell& side = row.cells[at_["eye"]];
        if (person.text.empty())
            tell(Severity::error, person.place, "person-empty",
                 {QS_SAY("core", "the row has no person; write the code of the person"), {}});
        const auto eye = eyeOf(side.text);
        if (!eye)
            tell(Severity::error, side.place, "eye-word",
                 {QS_SAY("core", "\"%1\" is not an eye; write right or left"), {shown(side.text)}});
        const auto power = oneText_ ? readText(row.cells[at_["reading"]]) : readParts(row);
        if (!person.text.empty() && eye && power)
            put(person.text, *eye, *power, {name_, row.line, 1});
    }

    std::optional<SpheroCylinder> readText(const CsvCell& cell)
    {
        if (cell.text.empty()) {
            tellEmpty(cell);
            return std::nullopt;
        }
        const auto parsed = parsePower(cell.text);
        if (parsed)
            return parsed.value();
        tell(cell, parsed.complaint());
        return std::nullopt;
    }

    void tellEmpty(const CsvCell& cell)
    {
        tell(Severity::error, cell.place, "reading-empty",
             {QS_SAY("core", "there is no reading here; write it, or delete the row"), {}});
    }

    std::optional<SpheroCylinder> readParts(const CsvRow& row)
    {
        const CsvCell& sphereCell = row.cells[at_["sphere"]];
        const CsvCell& cylinderCell = row.cells[at_["cylinder"]];
        const CsvCell& axisCell = row.cells[at_["axis"]];
        if (sphereCell.text.empty()) {
            tellEmpty(sphereCell);
            return std::nullopt;
        }
        const auto sphere = readDioptres(sphereCell);
        const auto cylinder =
            cylinderCell.text.empty() ? std::optional<Dioptres>(Dioptres{}) : readDioptres(cylinderCell);
        if (!sphere || !cylinder)
            return std::nullopt;
        if (*cylinder == Dioptres{})
            return sphereOf(sphere->value());
        const auto axis = parseNumber(axisCell.text, 0.0, 180.0);
        if (!axis) {
            tell(axisCell, {"axis-range",
                            {QS_SAY("core", "\"%1\" is not an axis; a cylinder needs one from 1 to 180"),
                             {shown(axisCell.text)}},
                            0});
            return std::nullopt;
        }
        return SpheroCylinder{*sphere, *cylinder, foldAxis(axis.value())};
    }

    std::optional<Dioptres> readDioptres(const CsvCell& cell)
    {
        const auto parsed = parseDioptres(cell.text, true);
        if (parsed)
            return parsed.value();
        tell(cell, parsed.complaint());
        return std::nullopt;
    }

    void put(const std::string& person, Eye eye, const SpheroCylinder& power, Position place)
    {
        const auto [known, isNew] = index_.emplace(std::pair(person, eye), reading_.value.size());
        if (isNew)
            reading_.value.push_back({person, eye, {}, {}});
        EyeReadings& readings = reading_.value[known->second];
        readings.readings.push_back(power);
        readings.places.push_back(std::move(place));
    }

    void tellTooFew()
    {
        for (const auto& eye : reading_.value)
            if (eye.readings.size() < fewestReadings)
                tell(Severity::caution, eye.places.back(), "readings-too-few",
                     {eye.eye == Eye::right
                          ? QS_SAY("core", "readings of the right eye of \"%1\": %2; take three or more")
                          : QS_SAY("core", "readings of the left eye of \"%1\": %2; take three or more"),
                      {shown(eye.person), std::to_string(eye.readings.size())}});
    }

    std::string name_;
    std::map<std::string, std::size_t> at_;
    std::size_t columns_ = 0;
    bool oneText_ = true;
    std::map<std::pair<std::string, Eye>, std::size_t> index_;
    Reading<std::vector<EyeReadings>> reading_;
};

} // namespace

std::vector<PowerVector> EyeReadings::vectors() const
{
    std::vector<PowerVector> vectors;
    vectors.reserve(readings.size());
    for (const auto& reading : readings)
        vectors.push_back(toPowerVector(reading));
    return vectors;
}

Reading<std::vector<EyeReadings>> readReadingsFile(const std::string& path)
{
    auto bytes = readBytes(path);
    if (bytes.usable())
        return readReadingsText(bytes.value, path);
    return {{}, std::move(bytes.findings)};
}

Reading<std::vector<EyeReadings>> readReadingsText(const std::string& bytes, const std::string& name)
{
    return ReadingsReader(name).read(bytes);
}

} // namespace quarterstep
