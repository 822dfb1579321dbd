// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/exchange.hpp"

#include "inventory/text/csv_writing.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/record_text.hpp"
#include "inventory/text/row_checks.hpp"
#include "inventory/text/table_columns.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr std::size_t rowsBetweenProgress = 256;
constexpr const char* stateWords[] = {"", "balance", "artificial", "blind", "not measured"};

std::string prismWords(const EyePrism& prism)
{
    const auto part = [](double value, const char* plus, const char* minus) {
        return value == 0.0 ? std::string()
                            : " " + decimalText(std::abs(value)) + " base " + (value > 0.0 ? plus : minus);
    };
    return part(prism.in, "in", "out") + part(prism.up, "up", "down");
}

bool sameEye(const WrittenEye& a, const WrittenEye& b)
{
    return a.state == b.state && a.power == b.power &&
           a.prism.value_or(EyePrism{}) == b.prism.value_or(EyePrism{});
}

} // namespace

void RowEnd::finish(PersonRecord record, const PartPlaces& places, TableRow& row)
{
    CellsByName cells;
    for (const auto& [column, place] : places)
        cells[column] = {"given", place};
    checkRecord(record, cells, row.findings);
    setMonths(record, cells, options_.today, row.findings);
    row.line = record.position.line;
    row.person = record.person;
    if (!record.person.empty()) {
        const auto [first, isNew] = seen_.emplace(record.person, record.position);
        if (!isNew)
            row.findings.push_back(
                {Severity::error,
                 record.position,
                 "person-twice",
                 {QS_SAY("core",
                         "the person \"%1\" stands in line %2 already; give each row a code of its own"),
                  {shown(record.person), std::to_string(first->second.line)}}});
    }
    sortByPlace(row.findings);
    if (!hasError(row.findings))
        row.record = std::move(record);
}

std::string eyeWords(const WrittenEye& eye, Eye side)
{
    if (eye.state != EyeState::measured)
        return stateWords[static_cast<std::size_t>(eye.state)];
    const auto prism = eye.prism.value_or(EyePrism{});
    const auto power = writePower(eye.power);
    const auto thousandth = [](double value) { return std::round(value * 1000.0) / 1000.0; };
    const auto base = baseOf(prism, side);
    const auto byAngle =
        power + " " + decimalText(thousandth(base.amount)) + " base " + writeNumber(thousandth(base.degrees));
    for (const auto& words : {power + prismWords(prism), byAngle}) {
        const auto read = parseEye(words, side);
        if (read && sameEye(read.value(), eye))
            return words;
    }
    return power + prismWords({thousandth(prism.in), thousandth(prism.up)});
}

std::string decimalText(double value)
{
    const double hundredths = value * 100.0;
    const double thousandths = value * 1000.0;
    constexpr double near = 1e-9;
    if (std::abs(thousandths - std::round(thousandths)) > near)
        return writeNumber(value);
    const long whole = std::lround(thousandths);
    const bool two = std::abs(hundredths - std::round(hundredths)) <= near;
    const auto size = std::to_string(std::abs(whole) % 1000 + 1000).substr(1, two ? 2 : 3);
    return (whole < 0 ? "-" : "") + std::to_string(std::abs(whole) / 1000) + "." + size;
}

Parsed<double> machineNumber(const std::string& text, double most, bool fine)
{
    double value = 0.0;
    const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (failed != std::errc() || end != text.data() + text.size() || !std::isfinite(value))
        return Complaint{"number-not-a-number",
                         {QS_SAY("core", "\"%1\" is not a number; write it as -1.25"), {shown(text)}},
                         0};
    if (std::abs(value) > most)
        return Complaint{
            "number-range", {QS_SAY("core", "%1 is outside -%2 to %2"), {shown(text), writeNumber(most)}}, 0};
    if (fine)
        return value + 0.0;
    constexpr double near = 1e-6;
    const double thousandths = std::round(value * 1000.0);
    if (std::abs(value * 1000.0 - thousandths) > near)
        return Complaint{
            "number-too-fine", {QS_SAY("core", "%1 is finer than a thousandth; round it"), {shown(text)}}, 0};
    return thousandths / 1000.0 + 0.0;
}

std::string tableText(const std::vector<TableRow>& rows, const std::set<std::string>& without,
                      const std::function<void(std::size_t done, std::size_t of)>& progress)
{
    std::vector<std::map<std::string, std::string>> cells;
    std::set<std::string> filled{"person", "right", "left"};
    std::vector<std::string> others;
    for (const auto& row : rows) {
        if (progress && cells.size() % rowsBetweenProgress == 0)
            progress(cells.size(), rows.size());
        if (!row.record)
            continue;
        auto& mine = cells.emplace_back();
        for (auto& [column, cell] : recordCells(*row.record)) {
            filled.insert(column);
            mine[column] = std::move(cell);
        }
        for (const auto& [column, cell] : row.record->otherColumns) {
            if (std::find(others.begin(), others.end(), column) == others.end())
                others.push_back(column);
            mine[column] = cell;
        }
    }
    std::vector<std::string> header;
    for (const auto& column : tableColumns())
        if (filled.count(column.name) > 0 && without.count(column.name) == 0)
            header.emplace_back(column.name);
    header.insert(header.end(), others.begin(), others.end());
    auto text = csvRow(header);
    for (auto& mine : cells) {
        std::vector<std::string> row;
        row.reserve(header.size());
        for (const auto& column : header)
            row.push_back(mine[column]);
        text += csvRow(row);
    }
    return text;
}

bool staysHere(const std::string& column)
{
    return column == "symptoms" || column == "guardian";
}

void tellStays(const PersonRecord& record, const std::string& column, std::vector<Finding>& findings)
{
    findings.push_back({Severity::note,
                        record.position,
                        "not-carried",
                        {QS_SAY("core", "%1 of %2 stays here: it names people or is in their own words"),
                         {column, shown(record.person)}}});
}

bool isRulesColumn(const std::string& column)
{
    return column == "rules_profile" || column == "rules_version" || column == "rules_hash";
}

void keepRules(PersonRecord& record, const RulesStamp& rules)
{
    for (const auto& [column, value] : {std::pair{"rules_profile", &rules.profile},
                                        {"rules_version", &rules.version},
                                        {"rules_hash", &rules.hash}})
        if (!value->empty())
            record.otherColumns.emplace_back(column, *value);
}

bool hasError(const std::vector<Finding>& findings)
{
    return std::any_of(findings.begin(), findings.end(),
                       [](const Finding& finding) { return finding.severity == Severity::error; });
}

} // namespace quarterstep
