// SPDX-License-Identifier: GPL-3.0-or-later
// Kept ledgers of older forms: ledger_form_N.sql, made as that form wrote it.
#pragma once

#include "inventory/store/connection.hpp"
#include "inventory/store/place.hpp"
#include "tests/inventory/folder.hpp"

#include <sstream>

namespace quarterstep::test
{

/// Its site, lines and number of entries.
inline const std::string formOneSite = "Test bench box";
inline const std::string formOneStock = "format: quarterstep stock 1\nsite: Test bench box\nlines:\n"
                                        "  - {line: D-100-62, kind: ready-made, power: -1.00, on hand: 2}\n"
                                        "  - {line: A, kind: ready-made, power: +2.00, on hand: 50}\n"
                                        "  - {line: B, kind: ready-made, power: +2.50, on hand: 50}\n";
inline constexpr int formOneEntries = 3;

/// Makes ledger.sqlite in the folder; `here`: as if it had always lived at this place. Returns its path.
inline std::string keptForm(int form, const std::string& folder, bool here = true)
{
    auto path = folder + "/ledger.sqlite";
    writeBytes(path, "");
    Connection connection(path, Connection::Access::readWrite, 200);
    std::istringstream script(readBytes(std::string(QS_SOURCE_DIR) + "/tests/inventory/ledger_form_" +
                                        std::to_string(form) + ".sql"));
    std::string statement;
    for (std::string line; std::getline(script, line) || !statement.empty();) {
        if (line.empty() || !script) {
            if (!statement.empty())
                connection.execute(statement);
            statement.clear();
        } else if (line.rfind("--", 0) != 0)
            statement += line + "\n";
    }
    if (here) {
        const auto place = placeOf(path);
        auto settle = connection.prepare("UPDATE station SET machine = ?, volume = ?, folder = ?");
        settle.run({place.machine, place.volume, place.folder});
        settle.finish();
    }
    return path;
}

inline std::string formOne(const std::string& folder, bool here = true)
{
    return keptForm(1, folder, here);
}

/// In form 2: five entries, nothing held any more, words beside three of them.
inline std::string formTwo(const std::string& folder, bool here = true)
{
    return keptForm(2, folder, here);
}

} // namespace quarterstep::test
