// SPDX-License-Identifier: GPL-3.0-or-later
// Tables that leave the camp, at three levels.
#include "app/session/keeping.hpp"
#include "app/session/leaving.hpp"
#include "core/record/masking.hpp"
#include "inventory/text/csv_writing.hpp"

#include "core/record/judgement.hpp"

#include <QDateTime>

#include <algorithm>

namespace quarterstep
{

namespace
{

using Counts = std::map<std::string, int>;

std::string textOf(const Entry& entry, const std::string& name)
{
    const auto found = entry.texts.find(name);
    return found == entry.texts.end() ? std::string() : found->second;
}

std::string linesOf(const Entry& entry)
{
    std::string lines;
    for (const auto& movement : entry.movements)
        lines += (lines.empty() ? "" : "; ") + movement.line + " " + std::to_string(movement.delta);
    return lines;
}

/// Entries that stand: neither taken back nor taking back.
std::vector<Entry> standing(const std::vector<Entry>& entries)
{
    const auto gone = takenBack(entries);
    std::vector<Entry> left;
    for (const auto& entry : entries)
        if (gone.count(entry.id) == 0 && entry.kind != EntryKind::enteredInError)
            left.push_back(entry);
    return left;
}

void addBreakdown(ExportTable& table, const std::string& what, const Counts& counts)
{
    std::vector<CountCell> cells;
    cells.reserve(counts.size());
    for (const auto& [name, count] : counts)
        cells.push_back({name, count});
    for (const auto& cell : masked(cells))
        table.rows.push_back(
            {what, cell.name,
             cell.count ? std::to_string(*cell.count) : "under " + std::to_string(leastShown)});
}

ExportTable aggregateTable(const std::vector<Entry>& entries)
{
    ExportTable table{{"what", "of", "count"}, {}};
    std::map<std::string, Counts> breakdowns;
    for (const auto& entry : standing(entries)) {
        if (entry.kind == EntryKind::opened || entry.kind == EntryKind::exported)
            continue;
        ++breakdowns["entries"][wordOf(entry.kind)];
        if (entry.kind != EntryKind::handedOver)
            continue;
        for (const auto* name : {"purpose", "profile", "verdict", "referral"})
            if (const auto value = fieldNamed(entry, name); !value.empty())
                ++breakdowns[std::string("handed-over by ") + name][value];
        if (const auto version = fieldNamed(entry, "profile_version"); !version.empty())
            ++breakdowns["handed-over by rules"][fieldNamed(entry, "profile") + " " + version];
        for (const auto& movement : entry.movements)
            breakdowns["handed-over by line"][movement.line] -= movement.delta;
    }
    for (const auto& [what, counts] : breakdowns)
        addBreakdown(table, what, counts);
    return table;
}

ExportTable pseudonymousTable(const std::vector<Entry>& entries)
{
    ExportTable table{{"day", "site", "kind", "person", "purpose", "profile", "verdict", "referral", "lines",
                       "profile_version", "rules_hash"},
                      {}};
    std::map<std::string, std::string> numbers; // made for this table
    for (const auto& entry : standing(entries)) {
        if (entry.kind == EntryKind::exported)
            continue;
        std::string person;
        if (!entry.person.empty())
            person =
                numbers.emplace(entry.person, "person " + std::to_string(numbers.size() + 1)).first->second;
        table.rows.push_back({localDay(entry.atMs), entry.site, wordOf(entry.kind), person,
                              fieldNamed(entry, "purpose"), fieldNamed(entry, "profile"),
                              fieldNamed(entry, "verdict"), fieldNamed(entry, "referral"), linesOf(entry),
                              fieldNamed(entry, "profile_version"), fieldNamed(entry, "rules_hash")});
    }
    return table;
}

ExportTable fullTable(const Camp& camp, const std::vector<Entry>& entries)
{
    ExportTable table{{"entry", "number", "at", "site", "kind", "person", "name", "actor", "takes_back",
                       "lines", "reason", "note"},
                      {}};
    std::set<std::string> fields;
    for (const auto& entry : entries)
        for (const auto& [name, value] : entry.fields)
            fields.insert(name);
    fields.erase("reason"); // of older entries, shown with those of today
    fields.erase("rules");  // the rules of the time, for the audit alone
    table.columns.insert(table.columns.end(), fields.begin(), fields.end());
    std::map<std::string, std::string> names;
    for (const auto& entry : entries) {
        if (!entry.person.empty() && names.count(entry.person) == 0) {
            const auto known = camp.ledger().person(entry.person);
            names[entry.person] = known ? known->name : std::string();
        }
        const auto moment = QDateTime::fromMSecsSinceEpoch(entry.atMs, Qt::UTC).toString(Qt::ISODateWithMs);
        const auto reason = textOf(entry, "reason");
        std::vector<std::string> row{entry.id,
                                     std::to_string(entry.number),
                                     moment.toStdString(),
                                     entry.site,
                                     wordOf(entry.kind),
                                     entry.person,
                                     entry.person.empty() ? std::string() : names.at(entry.person),
                                     entry.actor,
                                     entry.cancels,
                                     linesOf(entry),
                                     reason.empty() ? fieldNamed(entry, "reason") : reason,
                                     textOf(entry, "note")};
        for (const auto& name : fields)
            row.push_back(fieldNamed(entry, name.c_str()));
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace

ExportTable exportTable(const Camp& camp, ExportLevel level)
{
    const auto entries = camp.ledger().entriesAfter(0);
    if (level == ExportLevel::aggregate)
        return aggregateTable(entries);
    if (level == ExportLevel::rows)
        return pseudonymousTable(entries);
    return fullTable(camp, entries);
}

std::string csvOf(const ExportTable& table)
{
    auto text = csvRow(table.columns);
    for (const auto& row : table.rows)
        text += csvRow(row);
    return text;
}

} // namespace quarterstep
