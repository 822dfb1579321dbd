// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/record_text.hpp"

#include "core/fitting/words.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/prescription_table.hpp"

#include <charconv>
#include <sstream>

namespace quarterstep
{

namespace
{

/// Collects columns and cells; empty cells are left out.
class RecordWriter
{
  public:
    void put(const std::string& column, const std::string& cell)
    {
        if (!cell.empty())
            cells_.emplace_back(column, cell);
    }
    void put(const std::string& column, const std::optional<double>& number)
    {
        put(column, number ? writeNumber(*number) : std::string());
    }
    void put(const std::string& column, const std::optional<SpheroCylinder>& power)
    {
        put(column, power ? writePower(*power) : std::string());
    }
    void put(const std::string& column, const std::optional<Dioptres>& power)
    {
        put(column, power ? writeDioptres(*power) : std::string());
    }
    void put(const std::string& column, const std::optional<Acuity>& acuity)
    {
        put(column, acuity ? acuity->asRecorded : std::string());
    }
    void put(const std::string& column, const std::optional<NearAcuity>& acuity)
    {
        put(column, acuity ? acuity->asRecorded : std::string());
    }
    [[nodiscard]] std::vector<std::pair<std::string, std::string>> take() { return std::move(cells_); }

  private:
    std::vector<std::pair<std::string, std::string>> cells_;
};

/// The text as written where it says the same; a record made elsewhere may have none.
std::string eyeText(const WrittenEye& eye, Eye side)
{
    const auto read = parseEye(eye.asWritten, side);
    if (read && read.value().state == eye.state && read.value().power == eye.power)
        return eye.asWritten;
    constexpr const char* states[] = {"", "balance", "artificial", "blind", "not measured"};
    if (eye.state != EyeState::measured)
        return states[static_cast<std::size_t>(eye.state)];
    return writePower(eye.power) + (eye.prism ? " " + writePrism(*eye.prism) : std::string());
}

std::string signWords(const std::vector<Sign>& signs)
{
    constexpr const char* words[] = {"sudden loss",   "pain",        "red eye", "flashes or floaters",
                                     "double vision", "white pupil", "squint",  "cycloplegia wanted",
                                     "distortion",    "field loss",  "halos"};
    std::string text;
    for (const auto sign : signs)
        text.append(text.empty() ? "" : "; ").append(words[static_cast<std::size_t>(sign)]);
    return text;
}

const char* implantWord(const PersonRecord& person)
{
    const bool right = person.eyes.right.lensImplant;
    const bool left = person.eyes.left.lensImplant;
    return right && left ? "both" : right ? "right" : left ? "left" : "";
}

void putEye(RecordWriter& writer, const EyeRecord& eye, const std::string& side)
{
    writer.put("add_" + side, eye.addition);
    writer.put("near_" + side, eye.nearPower);
    writer.put("pd_" + side + "_mm", eye.monocularPd);
    writer.put("va_unaided_" + side, eye.acuity.unaided);
    writer.put("va_habitual_" + side, eye.acuity.habitual);
    writer.put("va_pinhole_" + side, eye.acuity.pinhole);
    writer.put("va_best_" + side, eye.acuity.best);
    writer.put("va_sphere_" + side, eye.acuity.meanSphere);
    writer.put("worn_" + side, eye.worn);
    writer.put("objective_" + side, eye.objective);
    writer.put("height_" + side + "_mm", eye.heightMm);
}

/// Words of a supply, one after the other.
class SupplyWords
{
  public:
    explicit SupplyWords(const std::string& text) : stream_(text) {}
    bool skip(const char* word) { return next() == word; }
    std::string next()
    {
        std::string word;
        stream_ >> word;
        return word;
    }
    /// False where there is no number; "-" gives an empty one.
    bool number(std::optional<double>& value)
    {
        const auto word = next();
        value.reset();
        if (word == "-")
            return true;
        double read = 0.0;
        const auto [end, failed] = std::from_chars(word.data(), word.data() + word.size(), read);
        if (failed != std::errc() || end != word.data() + word.size())
            return false;
        value = read;
        return true;
    }
    bool power(SpheroCylinder& power)
    {
        std::optional<double> sphere;
        std::optional<double> cylinder;
        std::optional<double> axis;
        if (!number(sphere) || !number(cylinder) || !number(axis) || !sphere || !cylinder || !axis)
            return false;
        power = {Dioptres{*sphere}, Dioptres{*cylinder}, AxisDegrees{*axis}};
        return true;
    }

  private:
    std::istringstream stream_;
};

std::string optionalNumber(const std::optional<double>& value)
{
    return value ? writeNumber(*value) : "-";
}

std::string powerWords(const SpheroCylinder& power)
{
    return writeNumber(power.sphere.value()) + " " + writeNumber(power.cylinder.value()) + " " +
           writeNumber(power.axis.value());
}

} // namespace

std::vector<std::pair<std::string, std::string>> recordCells(const PersonRecord& person)
{
    RecordWriter writer;
    writer.put("person", person.person);
    writer.put("age", person.age);
    writer.put("sex", person.sex);
    if (person.purpose != Purpose::unstated)
        writer.put("purpose", std::string(wordOf(person.purpose)));
    writer.put("right", eyeText(person.eyes.right.final, Eye::right));
    writer.put("left", eyeText(person.eyes.left.final, Eye::left));
    putEye(writer, person.eyes.right, "right");
    putEye(writer, person.eyes.left, "left");
    writer.put("pd_mm", person.distancePd);
    writer.put("near_pd_mm", person.nearPd);
    writer.put("working_mm", person.workingMm);
    writer.put("intermediate_mm", person.intermediateMm);
    writer.put("vertex_mm", person.vertexMm);
    writer.put("near_unaided", person.nearUnaided);
    writer.put("near_best", person.nearBest);
    writer.put("lens_implant", std::string(implantWord(person)));
    writer.put("signs", signWords(person.signs));
    writer.put("symptoms", person.symptoms);
    writer.put("worn_add", person.wornAddition);
    if (person.cycloplegia)
        writer.put("cycloplegia", std::string(*person.cycloplegia ? "yes" : "no"));
    if (person.objectiveOnly)
        writer.put("source", std::string("objective"));
    writer.put("prescriber", person.prescriber);
    writer.put("written_on", person.writtenOn);
    writer.put("frame_size", person.frameSize);
    writer.put("frame", person.frame);
    writer.put("guardian", person.guardian);
    return writer.take();
}

std::string recordText(const PersonRecord& person)
{
    std::string text;
    for (const auto& [column, cell] : recordCells(person)) {
        const bool words = column == "symptoms" || column == "prescriber" || column == "guardian";
        if (column != "frame")
            text.append(column).append(": ").append(words ? "yes" : cell).append("\n");
    }
    return text;
}

std::optional<PersonRecord> readRecordText(const std::string& text)
{
    PersonRecord person;
    std::istringstream lines(text);
    bool any = false;
    for (std::string line; std::getline(lines, line); any = true) {
        const auto colon = line.find(": ");
        if (colon == std::string::npos || setField(person, line.substr(0, colon), line.substr(colon + 2)))
            return std::nullopt;
    }
    return any ? std::optional(std::move(person)) : std::nullopt;
}

std::string supplyText(const Supply& supply)
{
    return "right " + powerWords(supply.power.right) + " left " + powerWords(supply.power.left) + " add " +
           (supply.bifocalAddition ? writeNumber(supply.bifocalAddition->value()) : "-") + " centres " +
           (supply.centres ? writeNumber(supply.centres->least) + " " + writeNumber(supply.centres->most)
                           : "- -") +
           " assumed " + (supply.centresAssumed ? "yes" : "no") + " heights " +
           optionalNumber(supply.heightsDiffer) + " equal " + (supply.equalPair ? "yes" : "no") + " size " +
           (supply.frameSize.empty() ? "-" : supply.frameSize);
}

std::optional<Supply> readSupplyText(const std::string& text)
{
    SupplyWords words(text);
    Supply supply;
    std::optional<double> addition;
    std::optional<double> least;
    std::optional<double> most;
    if (!words.skip("right") || !words.power(supply.power.right) || !words.skip("left") ||
        !words.power(supply.power.left) || !words.skip("add") || !words.number(addition) ||
        !words.skip("centres") || !words.number(least) || !words.number(most) ||
        least.has_value() != most.has_value() || !words.skip("assumed"))
        return std::nullopt;
    supply.centresAssumed = words.next() == "yes";
    if (!words.skip("heights") || !words.number(supply.heightsDiffer) || !words.skip("equal"))
        return std::nullopt;
    supply.equalPair = words.next() == "yes";
    if (!words.skip("size"))
        return std::nullopt;
    if (addition)
        supply.bifocalAddition = Dioptres{*addition};
    if (least)
        supply.centres = Range{*least, *most};
    const auto size = words.next();
    supply.frameSize = size == "-" ? "" : size;
    return supply;
}

} // namespace quarterstep
