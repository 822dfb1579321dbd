// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/content/lot_rows.hpp"

#include "app/session/keeping.hpp"
#include "app/session/lot.hpp"

#include <algorithm>

namespace quarterstep
{
namespace
{

std::string fieldOf(const Entry& entry, const char* name)
{
    const auto found = entry.fields.find(name);
    return found == entry.fields.end() ? std::string() : found->second;
}

} // namespace

AuditRow auditRowOf(const Entry& entry)
{
    AuditRow row;
    row.entry = std::to_string(entry.number);
    row.day = localDay(entry.atMs);
    row.person = entry.person;
    row.purpose = fieldOf(entry, "purpose");
    const auto final = fieldOf(entry, "final"); // "R … L …"
    const auto left = final.find(" L ");
    row.right =
        final.substr(std::min<std::size_t>(2, final.size()), left == std::string::npos ? left : left - 2);
    row.left = left == std::string::npos ? "" : final.substr(left + 3);
    for (const auto& movement : entry.movements)
        row.lines += (row.lines.empty() ? "" : ", ") + movement.line;
    row.profile = fieldOf(entry, "profile") + " " + fieldOf(entry, "profile_version");
    return row;
}

std::vector<AuditRow> lotRows(const Camp& camp, const std::string& id)
{
    const auto lot = lotNamed(camp, id);
    std::vector<AuditRow> rows;
    for (const auto& handOver : lot.handOvers)
        if (const auto entry = camp.ledger().entry(handOver)) {
            auto row = auditRowOf(*entry);
            const auto place = rows.size() + 1;
            row.entry =
                std::to_string(place) + (place > static_cast<std::size_t>(lot.plan.plan.sample) ? "*" : "");
            if (const auto facts = factsOf(*entry); facts.supply) {
                row.labelRight = writePower(facts.supply->power.right);
                row.labelLeft = writePower(facts.supply->power.left);
            }
            rows.push_back(std::move(row));
        }
    return rows;
}

} // namespace quarterstep
