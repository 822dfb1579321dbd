// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/csv_writing.hpp"

#include "inventory/text/numbers.hpp"

namespace quarterstep
{

namespace
{

bool beginsFormula(const std::string& text)
{
    return !text.empty() && std::string("=+-@\t\r").find(text.front()) != std::string::npos;
}

bool isNumber(const std::string& text)
{
    constexpr double widest = 1e15;
    const bool sign = text.size() > 1 && (text.front() == '+' || text.front() == '-');
    return static_cast<bool>(parseNumber(sign ? text.substr(1) : text, 0.0, widest));
}

} // namespace

std::string guarded(const std::string& text)
{
    return beginsFormula(text) && !isNumber(text) ? "'" + text : text;
}

std::string unguarded(const std::string& text)
{
    return text.size() > 1 && text.front() == '\'' && beginsFormula(text.substr(1)) ? text.substr(1) : text;
}

std::string csvCell(const std::string& text)
{
    auto cell = guarded(text);
    if (cell.find_first_of(",\"\r\n") == std::string::npos)
        return cell;
    std::string quoted = "\"";
    for (const char c : cell)
        quoted.append(c == '"' ? "\"\"" : std::string(1, c));
    return quoted + "\"";
}

std::string csvRow(const std::vector<std::string>& cells)
{
    std::string row;
    for (std::size_t i = 0; i < cells.size(); ++i)
        row.append(i == 0 ? "" : ",").append(csvCell(cells[i]));
    return row + "\n";
}

} // namespace quarterstep
