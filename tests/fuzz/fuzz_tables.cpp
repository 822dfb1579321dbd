// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a prescription table, a list of lines and quantities, and a table of repeated readings: no
// crash, no hang; what is accepted is within its limits.
#include "inventory/text/names_list.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/quantity_list.hpp"
#include "inventory/text/readings_file.hpp"

#include "tests/fuzz/checks.hpp"

#include <cmath>
#include <set>

using namespace quarterstep;
using fuzz::require;

namespace
{

void checkPower(const SpheroCylinder& power)
{
    require(std::fabs(power.sphere.value()) <= 40.0, "a sphere within 40");
    require(std::fabs(power.cylinder.value()) <= 20.0, "a cylinder within 20");
    require(power.axis.value() > 0.0 && power.axis.value() <= 180.0, "an axis in (0, 180]");
}

void checkRecord(const PersonRecord& record)
{
    for (const auto* eye : {&record.eyes.right, &record.eyes.left}) {
        if (eye->seeing())
            checkPower(eye->final.power);
        for (const auto* power : {&eye->nearPower, &eye->worn, &eye->objective})
            if (*power)
                checkPower(**power);
        require(!eye->addition || eye->addition->value() >= 0.0, "an addition is not negative");
    }
    for (const auto* length :
         {&record.age, &record.distancePd, &record.nearPd, &record.workingMm, &record.vertexMm})
        require(!*length || (std::isfinite(**length) && **length >= 0.0),
                "a length or age is finite and not negative");
}

void checkTable(const std::string& text, int lines)
{
    const auto reading = readPrescriptionText(text, "people.csv", "2026-03-01");
    fuzz::checkFindings(reading.findings, lines);
    int last = 0;
    for (const auto& row : reading.value.rows) {
        require(row.line > last, "rows stand in their order");
        last = row.line;
        fuzz::checkFindings(row.findings, lines);
        if (!row.record) {
            require(!row.findings.empty(), "a row that is not read says why");
            continue;
        }
        checkRecord(*row.record);
    }
}

void checkList(const std::string& text, int lines)
{
    const auto reading = readQuantityText(text, "list.csv");
    fuzz::checkFindings(reading.findings, lines);
    std::vector<Position> left;
    if (const auto good = goodRows(reading, left)) {
        require(good->size() <= reading.value.rows.size(), "rows are left out, never made");
        require(reading.usable() == left.empty(), "what was left out is named, and nothing else");
    } else
        require(!reading.usable(), "a list without errors has its rows");
    if (!reading.usable())
        return;
    std::set<std::string> names;
    for (const auto& row : reading.value.rows) {
        require(row.quantity >= 0 && row.quantity <= mostPieces, "a quantity within its limits");
        require(!row.line.empty() && names.insert(row.line).second, "each line once");
    }
}

void checkNames(const std::string& text, int lines)
{
    const auto reading = readNamesText(text, "names.csv");
    fuzz::checkFindings(reading.findings, lines);
    std::set<std::string> codes;
    for (const auto& row : reading.value)
        require(!row.person.empty() && !row.name.empty(), "a name has its code");
    if (reading.usable())
        for (const auto& row : reading.value)
            require(codes.insert(row.person).second, "each code once");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string text(data, data + size);
    const int lines = fuzz::lineCount(text);
    checkTable(text, lines);
    checkList(text, lines);
    checkNames(text, lines);
    fuzz::checkFindings(readReadingsText(text, "readings.csv").findings, lines);
    return 0;
}
