// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/readings_file.hpp"

#include "core/optics/angle.hpp"
#include "core/optics/notation.hpp"
#include "core/optics/readings.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/small_table.hpp"

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
    explicit ReadingsReader(const std::string& name) : name_(name), table_(reading_.findings) {}

    Reading<std::vector<EyeReadings>> read(const std::string& bytes)
    {
        const auto rows = tableRows(bytes, name_, "person,eye,reading", reading_.findings);
        if (rows.empty())
            return finish();
        readHeader(rows.front());
        if (reading_.usable())
            for (std::size_t i = 1; i < rows.size(); ++i)
                readRow(rows[i]);
        tellTooFew();
        return finish();
    }

  private:
    Reading<std::vector<EyeReadings>> finish()
    {
        sortByPlace(reading_.findings);
        return std::move(reading_);
    }

    void readHeader(const CsvRow& header)
    {
        constexpr const char* sentence =
            QS_SAY("core", "the column \"%1\" is missing; needed are person, eye and reading, or sphere, "
                           "cylinder and axis in place of reading");
        table_.readHeader(header, readingColumns);
        oneText_ = table_.has("reading");
        if (oneText_ && table_.has("sphere"))
            table_.tell(
                table_.at(header, "sphere").place, "columns-both",
                {QS_SAY("core",
                        "write each reading once: in the column reading, or in sphere, cylinder, axis"),
                 {}});
        table_.need({"person", "eye"}, sentence);
        if (!oneText_)
            table_.need({"sphere", "cylinder", "axis"}, sentence);
    }

    void readRow(const CsvRow& row)
    {
        if (!table_.isWhole(row))
            return;
        const CsvCell& person = table_.at(row, "person");
        const CsvCell& side = table_.at(row, "eye");
        if (person.text.empty())
            table_.tell(person.place, "person-empty",
                        {QS_SAY("core", "the row has no person; write the code of the person"), {}});
        const auto eye = eyeOf(side.text);
        if (!eye)
            table_.tell(side.place, "eye-word",
                        {QS_SAY("core", "\"%1\" is not an eye; write right or left"), {shown(side.text)}});
        const auto power = oneText_ ? readText(table_.at(row, "reading")) : readParts(row);
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
        table_.tell(cell, parsed.complaint());
        return std::nullopt;
    }

    void tellEmpty(const CsvCell& cell)
    {
        table_.tell(cell.place, "reading-empty",
                    {QS_SAY("core", "there is no reading here; write it, or delete the row"), {}});
    }

    std::optional<SpheroCylinder> readParts(const CsvRow& row)
    {
        const CsvCell& sphereCell = table_.at(row, "sphere");
        const CsvCell& cylinderCell = table_.at(row, "cylinder");
        const CsvCell& axisCell = table_.at(row, "axis");
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
            table_.tell(axisCell,
                        {"axis-range",
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
        table_.tell(cell, parsed.complaint());
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
                table_.tell(
                    eye.places.back(), "readings-too-few",
                    {eye.eye == Eye::right
                         ? QS_SAY("core", "readings of the right eye of \"%1\": %2; take three or more")
                         : QS_SAY("core", "readings of the left eye of \"%1\": %2; take three or more"),
                     {shown(eye.person), std::to_string(eye.readings.size())}},
                    Severity::caution);
    }

    std::string name_;
    bool oneText_ = true;
    std::map<std::pair<std::string, Eye>, std::size_t> index_;
    Reading<std::vector<EyeReadings>> reading_;
    SmallTable table_; ///< tells into reading_
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
    return readWholeFile(path, readReadingsText);
}

Reading<std::vector<EyeReadings>> readReadingsText(const std::string& bytes, const std::string& name)
{
    return ReadingsReader(name).read(bytes);
}

} // namespace quarterstep
