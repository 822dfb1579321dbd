// SPDX-License-Identifier: GPL-3.0-or-later
// The table that leaves: parts of each eye in columns of their own.
#include "inventory/exchange/mapped_table.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/record_text.hpp"

#include <array>

namespace quarterstep
{

namespace
{

constexpr std::array flatParts{"sphere", "cylinder", "axis", "prism"};

/// Cells of one eye: sphere (or the word of its state), cylinder, axis, prism.
std::vector<std::string> flatEye(const WrittenEye& eye, Eye side)
{
    if (eye.state != EyeState::measured)
        return {eyeWords(eye, side), "", "", ""};
    const bool toric = eye.power.cylinder != Dioptres{};
    const auto whole = eyeWords(eye, side);
    const auto power = writePower(eye.power);
    return {writeDioptres(eye.power.sphere), toric ? writeDioptres(eye.power.cylinder) : "",
            toric ? writeNumber(eye.power.axis.value()) : "",
            whole.size() > power.size() ? whole.substr(power.size() + 1) : ""};
}

} // namespace

Reading<std::string> writeFlatTable(std::span<const ExchangePerson> persons)
{
    Reading<std::string> written;
    std::vector<TableRow> rows;
    for (const auto& [record, rules] : persons) {
        TableRow row;
        row.record = record;
        auto& others = row.record->otherColumns;
        std::erase_if(others, [](const auto& other) { return isRulesColumn(other.first); });
        std::vector<std::pair<std::string, std::string>> parts;
        for (const Eye side : bothEyes) {
            const auto cells = flatEye(record.eyes.of(side).final, side);
            for (std::size_t i = 0; i < flatParts.size(); ++i)
                parts.emplace_back((side == Eye::right ? "right_" : "left_") + std::string(flatParts[i]),
                                   cells[i]);
        }
        others.insert(others.begin(), parts.begin(), parts.end());
        others.emplace_back("rules_profile", rules.profile);
        others.emplace_back("rules_version", rules.version);
        others.emplace_back("rules_hash", rules.hash);
        for (const auto& [column, cell] : recordCells(record))
            if (staysHere(column))
                tellStays(record, column, written.findings);
        row.record->symptoms.clear();
        row.record->guardian.clear();
        rows.push_back(std::move(row));
    }
    written.value = tableText(rows, {"right", "left"});
    return written;
}

} // namespace quarterstep
