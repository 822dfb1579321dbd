// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/survey_table.hpp"

#include "inventory/text/numbers.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr std::array neededColumns{"survey",     "id",          "right_sphere",  "right_cylinder",
                                   "right_axis", "left_sphere", "left_cylinder", "left_axis"};
constexpr std::array usedColumns{"age",      "sex",     "right_va_refracted", "left_va_refracted",
                                 "right_va", "left_va", "cataract_surgery",   "comment"};

constexpr double mostSphere = 40.0;
constexpr double mostCylinder = 20.0;
constexpr long worseThanChart = 666;
constexpr double floorLogMar = 1.1;
constexpr double chartDistance = 20.0;

class RowReader
{
  public:
    RowReader(const CellsByName& cells, std::vector<Finding>& findings) : cells_(cells), findings_(findings)
    {
    }

    [[nodiscard]] std::string text(const std::string& column) const
    {
        const auto cell = cells_.find(column);
        return cell == cells_.end() ? std::string() : cell->second.text;
    }

    std::optional<double> number(const std::string& column, double least, double most)
    {
        const auto cell = cells_.find(column);
        if (cell == cells_.end() || cell->second.text.empty())
            return std::nullopt;
        const auto parsed = parseNumber(cell->second.text, least, most);
        if (parsed)
            return parsed.value();
        findings_.push_back(
            {Severity::error, cell->second.place, parsed.complaint().code, parsed.complaint().sentence});
        return std::nullopt;
    }

    void tell(Severity severity, const Position& place, const char* code, Sentence sentence)
    {
        findings_.push_back({severity, place, code, std::move(sentence)});
    }

    [[nodiscard]] Position placeOf(const std::string& column, const Position& otherwise) const
    {
        const auto cell = cells_.find(column);
        return cell == cells_.end() ? otherwise : cell->second.place;
    }

  private:
    const CellsByName& cells_;
    std::vector<Finding>& findings_;
};

WrittenEye readEye(RowReader& row, const std::string& side)
{
    const auto sphere = row.number(side + "_sphere", -mostSphere, mostSphere);
    const auto cylinder = row.number(side + "_cylinder", -mostCylinder, mostCylinder);
    const auto axis = row.number(side + "_axis", 0.0, 180.0);
    WrittenEye eye;
    if (!sphere || !cylinder || !axis) {
        eye.state = EyeState::notMeasured;
        return eye;
    }
    const bool turned = *axis > 0.0 && *cylinder != 0.0;
    eye.power = {Dioptres{*sphere}, Dioptres{*cylinder}, AxisDegrees{turned ? *axis : 180.0}};
    eye.asWritten = writePower(eye.power);
    return eye;
}

std::optional<Acuity> readAcuity(RowReader& row, const std::string& column)
{
    const auto denominator = row.number(column, 5.0, static_cast<double>(worseThanChart));
    if (!denominator)
        return std::nullopt;
    if (std::lround(*denominator) == worseThanChart)
        return Acuity{floorLogMar, "worse than 20/200"};
    return Acuity{std::log10(*denominator / chartDistance), "20/" + writeNumber(*denominator)};
}

/// Comments 2, 3 and 5: contact lenses were in during the reading, so that it is not the eye's.
void checkComment(RowReader& row, const Position& place)
{
    const std::string comment = row.text("comment");
    if (comment == "2" || comment == "3" || comment == "5")
        row.tell(Severity::error, row.placeOf("comment", place), "survey-contact-lens",
                 {QS_SAY("core", "contact lenses were worn during this reading; the row is left out"), {}});
}

void checkEyes(RowReader& row, const PersonRecord& person)
{
    if (!person.eyes.right.seeing() && !person.eyes.left.seeing()) {
        row.tell(Severity::error, person.position, "survey-no-eye",
                 {QS_SAY("core", "neither eye has sphere, cylinder and axis; the row is left out"), {}});
        return;
    }
    for (const Eye eye : bothEyes) {
        const char* column = eye == Eye::right ? "right_sphere" : "left_sphere";
        if (!person.eyes.of(eye).seeing())
            row.tell(Severity::note, row.placeOf(column, person.position), "survey-eye-missing",
                     {QS_SAY("core", "this eye has no complete reading and is taken as not measured"), {}});
    }
}

} // namespace

bool isSurveyHeader(const std::vector<std::string>& names)
{
    return std::all_of(neededColumns.begin(), neededColumns.end(), [&](const char* needed) {
        return std::find(names.begin(), names.end(), needed) != names.end();
    });
}

bool isSurveyColumn(const std::string& name)
{
    return std::find(neededColumns.begin(), neededColumns.end(), name) != neededColumns.end() ||
           std::find(usedColumns.begin(), usedColumns.end(), name) != usedColumns.end();
}

PersonRecord readSurveyRow(const CellsByName& cells, const Position& place, std::vector<Finding>& findings)
{
    RowReader row(cells, findings);
    PersonRecord person;
    person.position = place;
    person.person = row.text("survey") + "-" + row.text("id");
    person.age = row.number("age", 0.0, 120.0);
    person.sex = row.text("sex");
    person.purpose = Purpose::distance;
    person.objectiveOnly = true;
    person.cycloplegia = false;
    for (const Eye eye : bothEyes) {
        const std::string side = eye == Eye::right ? "right" : "left";
        EyeRecord& record = person.eyes.of(eye);
        record.final = readEye(row, side);
        if (record.seeing())
            record.objective = record.final.power;
        record.acuity.habitual = readAcuity(row, side + "_va");
        record.acuity.best = readAcuity(row, side + "_va_refracted");
    }
    const std::string surgery = row.text("cataract_surgery");
    person.eyes.right.lensImplant = surgery == "R" || surgery == "B";
    person.eyes.left.lensImplant = surgery == "L" || surgery == "B";
    checkComment(row, place);
    checkEyes(row, person);
    return person;
}

} // namespace quarterstep
