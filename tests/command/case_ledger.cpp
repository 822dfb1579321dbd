// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/command/case_ledger.hpp"

#include "inventory/store/connection.hpp"

#include <stdexcept>

namespace quarterstep::check
{

std::string entryIdOf(const std::string& ledger, int number)
{
    Connection connection(ledger, Connection::Access::readWrite, 200);
    auto id = connection.textOf("SELECT lower(hex(id)) FROM entry WHERE number = " + std::to_string(number));
    if (id.size() != 32)
        throw std::runtime_error("the ledger of the case has no entry " + std::to_string(number));
    for (const std::size_t at : {8U, 13U, 18U, 23U})
        id.insert(at, "-");
    return id;
}

std::string withEntries(std::string text, const std::string& ledger)
{
    const std::string mark = "{entry-";
    for (auto at = text.find(mark); at != std::string::npos; at = text.find(mark, at + 1)) {
        const auto end = text.find('}', at);
        text.replace(at, end + 1 - at, entryIdOf(ledger, std::stoi(text.substr(at + mark.size()))));
    }
    return text;
}

void rewriteEntry(const std::string& ledger, const std::string& from, const std::string& to)
{
    Connection connection(ledger, Connection::Access::readWrite, 200);
    const auto rule = connection.textOf("SELECT sql FROM sqlite_schema WHERE name = 'entry_stays'");
    const auto holds = "instr(payload, '" + from + "') > 0";
    if (connection.wholeOf("SELECT count(*) FROM entry WHERE " + holds) == 0)
        throw std::runtime_error("no entry of the case has the text " + from);
    connection.execute("DROP TRIGGER entry_stays");
    connection.execute("UPDATE entry SET payload = replace(payload, '" + from + "', '" + to +
                       "') WHERE position = (SELECT min(position) FROM entry WHERE " + holds + ")");
    connection.execute(rule);
}

} // namespace quarterstep::check
