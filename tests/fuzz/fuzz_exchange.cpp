// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as FHIR, lines of JSON, a table of another program with its map, and an order file: no crash, no
// hang; what is taken is within its limits and comes back the same. The first byte chooses the format.
#include "inventory/exchange/fhir.hpp"
#include "inventory/exchange/json_lines.hpp"
#include "inventory/exchange/mapped_table.hpp"
#include "inventory/exchange/order_file.hpp"

#include "tests/fuzz/checks.hpp"

#include <cmath>

using namespace quarterstep;
using fuzz::require;

namespace
{

const ImportOptions options{"2026-11-27", {}};

void checkRow(const TableRow& row, int lines)
{
    fuzz::checkFindings(row.findings, lines);
    if (!row.record) {
        require(hasError(row.findings), "a row that is not taken says why");
        return;
    }
    for (const Eye eye : bothEyes) {
        const auto& power = row.record->eyes.of(eye).final.power;
        require(std::fabs(power.sphere.value()) <= 40.0, "a sphere within 40");
        require(std::fabs(power.cylinder.value()) <= 20.0, "a cylinder within 20");
        require(power.axis.value() > 0.0 && power.axis.value() <= 180.0, "an axis in (0, 180]");
    }
}

/// The table made of what was taken is read as the same persons.
void checkTable(const std::vector<TableRow>& rows)
{
    std::size_t taken = 0;
    bool plain = true;
    for (const auto& row : rows) {
        taken += row.record ? 1 : 0;
        if (row.record)
            for (const auto& [column, cell] : row.record->otherColumns)
                plain = plain && (column.rfind("fhir.", 0) == 0 ||
                                  isRulesColumn(column)); // names of others may collide with ours
    }
    if (taken == 0 || !plain)
        return;
    const auto table = readPrescriptionText(tableText(rows), "table", options.today);
    std::size_t read = 0;
    for (const auto& row : table.value.rows)
        read += row.record ? 1 : 0;
    require(read == taken, "what was taken is a table that is read");
}

void checkRows(const ImportedRows& rows, int lines)
{
    fuzz::checkFindings(rows.findings, lines);
    for (const auto& row : rows.value)
        checkRow(row, lines);
    checkTable(rows.value);
}

/// What was taken leaves as FHIR and comes back as many.
void checkBack(const ImportedRows& rows)
{
    std::vector<ExchangePerson> persons;
    for (const auto& row : rows.value)
        if (row.record)
            persons.push_back({*row.record, {"adult-distance", "1", "00"}});
    if (persons.empty())
        return;
    const auto again = readFhir(writeFhirBundle(persons, options.today).value, "again", options);
    std::size_t taken = 0;
    for (const auto& row : again.value)
        taken += row.record ? 1 : 0;
    require(taken == persons.size(), "what left comes back");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    if (size == 0)
        return 0;
    const std::string text(data + 1, data + size);
    const int lines = fuzz::lineCount(text);
    switch (data[0]) {
    case 'f': {
        const auto rows = readFhir(text, "given", options);
        checkRows(rows, lines);
        checkBack(rows);
        break;
    }
    case 'j':
        checkRows(readJsonLines(text, "given", options), lines);
        break;
    case 't': {
        const auto table = readMappedTable(text, "given", {}, options);
        checkRows({table.value.rows, table.findings}, lines);
        break;
    }
    case 'm': { // a map, an empty line, a table
        const auto end = text.find("\n\n");
        const auto map = readTableMap(text.substr(0, end), "map");
        fuzz::checkFindings(map.findings, lines);
        if (map.usable() && end != std::string::npos) {
            const auto table = readMappedTable(text.substr(end + 2), "given", map.value, options);
            checkRows({table.value.rows, table.findings}, lines);
        }
        break;
    }
    case 'o': {
        const auto order = readOrderFile(text, "given");
        fuzz::checkFindings(order.findings, lines);
        break;
    }
    default:
        break;
    }
    return 0;
}
