// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/check_values.hpp"

#include <fstream>
#include <ostream>
#include <stdexcept>

namespace quarterstep::check
{
namespace
{

/// Cells of one line of RFC 4180 text without line breaks in cells.
std::vector<std::string> cellsOf(const std::string& line)
{
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (line[i] == '"' && quoted && i + 1 < line.size() && line[i + 1] == '"')
            cells.back() += line[i++];
        else if (line[i] == '"')
            quoted = !quoted;
        else if (line[i] == ',' && !quoted)
            cells.emplace_back();
        else
            cells.back() += line[i];
    }
    return cells;
}

std::string trimmed(const std::string& text)
{
    const auto first = text.find_first_not_of(' ');
    return first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

} // namespace

std::vector<std::string> split(const std::string& text, char separator)
{
    std::vector<std::string> parts(1);
    for (const char sign : text)
        if (sign == separator)
            parts.emplace_back();
        else
            parts.back() += sign;
    for (auto& part : parts)
        part = trimmed(part);
    return parts;
}

std::vector<std::string> Row::parts() const
{
    return split(expected, ';');
}

std::map<std::string, std::string> Row::named() const
{
    std::map<std::string, std::string> named;
    for (const auto& part : parts()) {
        const auto equals = part.find('=', part.rfind("6/=", 0) == 0 ? 2 : 0);
        if (equals == std::string::npos)
            throw std::runtime_error(id + ": expected part without a name: " + part);
        named[part.substr(0, equals)] = part.substr(equals + 1);
    }
    return named;
}

double Row::within() const
{
    return std::stod(tolerance);
}

double Row::withinDegrees() const
{
    const auto both = split(tolerance, ',');
    return std::stod(both.back());
}

std::ostream& operator<<(std::ostream& out, const Row& row)
{
    return out << row.id << ": " << row.input << " [" << row.source
               << (row.locator.empty() ? "" : ", " + row.locator) << "]";
}

std::vector<Row> rowsOf(const std::string& fileName)
{
    std::ifstream file(std::string(QS_SOURCE_DIR) + "/tests/check_values/" + fileName);
    std::string line;
    if (!std::getline(file, line))
        throw std::runtime_error("no check values in " + fileName);
    const auto header = cellsOf(line);
    std::vector<Row> rows;
    while (std::getline(file, line)) {
        const auto cells = cellsOf(line);
        if (cells.size() != header.size())
            throw std::runtime_error(fileName + ": row of another width: " + line);
        std::map<std::string, std::string> cell;
        for (std::size_t i = 0; i < cells.size(); ++i)
            cell[header[i]] = cells[i];
        rows.push_back({cell["id"], cell["input"], cell["expected"], cell["tolerance"], cell["label"],
                        cell["function"], split(cell["arguments"], ';'), cell["source"], cell["locator"]});
    }
    return rows;
}

std::vector<Row> rowsOf(const std::string& fileName, const std::string& label)
{
    std::vector<Row> chosen;
    for (auto& row : rowsOf(fileName))
        if (row.label == label)
            chosen.push_back(row);
    return chosen;
}

} // namespace quarterstep::check
