// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/keeping.hpp"

#include "core/fitting/line_code.hpp"

#include <algorithm>
#include <map>
#include <tuple>

namespace quarterstep
{

namespace
{

using Balances = std::map<std::string, Balance>;

Balances balancesOf(const Camp& camp)
{
    Balances balances;
    for (const auto& line : camp.stock())
        balances[line.name] = {line.name, line.onHand, line.held, line.quarantined};
    return balances;
}

Error shortOf(const Balance& balance)
{
    return errorSaying(
        "stock-short",
        {QS_SAY("core", "line %1 has %2 on hand, %3 held and %4 in quarantine, too few for this; "
                        "nothing was written"),
         {balance.line, std::to_string(balance.onHand), std::to_string(balance.held),
          std::to_string(balance.quarantined)}},
        1);
}

/// What the ledger would do, refusals included.
void tryOut(const std::vector<Entry>& entries, const Camp& camp, Balances& balances)
{
    for (const auto& entry : entries) {
        if (const auto objection = objectionTo(entry))
            throw errorSaying("entry-form", *objection, 3);
        for (const auto& movement : entry.movements) {
            const auto found = balances.find(movement.line);
            if (found == balances.end())
                throw errorSaying("unknown-line",
                                  {QS_SAY("core", "line %1 is not in the ledger of %2; nothing was written"),
                                   {movement.line, camp.site()}},
                                  3);
            auto after = found->second;
            after.onHand += movement.delta;
            after.held += movement.held;
            after.quarantined += movement.quarantined;
            if (after.held < 0 || after.quarantined < 0 || after.onHand < after.held + after.quarantined)
                throw shortOf(found->second);
            found->second = after;
        }
    }
}

std::vector<LineChange> changesOf(const std::vector<Entry>& entries, const Balances& before,
                                  const Balances& after)
{
    std::vector<LineChange> changes;
    std::set<std::string> seen;
    for (const auto& entry : entries)
        for (const auto& movement : entry.movements)
            if (seen.insert(movement.line).second && before.count(movement.line) > 0)
                changes.push_back({movement.line, before.at(movement.line), after.at(movement.line)});
    return changes;
}

/// One entry with the rows that are not 0.
std::vector<Entry> entryOfRows(EntryKind kind, const std::vector<QuantityRow>& rows, int sign,
                               bool quarantine)
{
    Entry entry;
    entry.kind = kind;
    for (const auto& row : rows)
        if (row.quantity != 0)
            entry.movements.push_back({row.line, sign * row.quantity, "", 0, quarantine ? row.quantity : 0});
    if (entry.movements.empty())
        return {};
    return {entry};
}

} // namespace

KeptWork carryOut(Camp& camp, std::vector<Entry> entries, bool dryRun, std::optional<std::int64_t> expected)
{
    KeptWork work;
    work.dryRun = dryRun;
    const auto before = balancesOf(camp);
    auto after = before;
    if (dryRun) {
        tryOut(entries, camp, after);
        work.entries = std::move(entries);
    } else if (!entries.empty()) {
        work.entries = camp.postAll(std::move(entries), expected);
        after = balancesOf(camp);
    }
    work.lines = changesOf(work.entries, before, after);
    return work;
}

std::vector<Finding> takeNames(const Camp& camp, std::vector<QuantityRow>& rows)
{
    std::vector<Finding> findings;
    std::set<std::string> seen;
    for (auto& row : rows) {
        const auto found = lineScanned(camp.stock(), row.line);
        if (found) {
            row.line = camp.stock()[found.value()].name;
            if (!seen.insert(row.line).second)
                findings.push_back({Severity::error,
                                    row.place,
                                    "line-twice",
                                    {QS_SAY("core", "line %1 stands here by its name and by its code; write "
                                                    "one row with the whole number"),
                                     {row.line}}});
        } else if (found.complaint().code == "unknown-line") {
            findings.push_back(
                {Severity::error,
                 row.place,
                 "unknown-line",
                 {QS_SAY("core", "there is no line %1 in stock.yaml of %2; add it there with on "
                                 "hand: 0, or mend the name"),
                  {row.line, camp.site()}}});
        } else {
            findings.push_back(
                {Severity::error, row.place, found.complaint().code, found.complaint().sentence});
        }
    }
    return findings;
}

std::vector<Entry> deliveryOf(const std::vector<QuantityRow>& rows, const Delivery& delivery)
{
    auto entries = entryOfRows(EntryKind::received, rows, 1, delivery.quarantine);
    for (auto& entry : entries) {
        entry.actor = delivery.actor;
        if (!delivery.from.empty())
            entry.fields["from"] = delivery.from;
        if (!delivery.lot.empty())
            entry.fields["lot"] = delivery.lot;
        entry.texts["note"] = delivery.note;
    }
    return entries;
}

std::vector<SheetLine> countSheet(const Camp& camp, const std::string& bin)
{
    std::vector<SheetLine> sheet;
    for (const auto& line : camp.stock())
        if (bin.empty() || line.bin == bin)
            sheet.push_back({line.bin, line.name});
    std::sort(sheet.begin(), sheet.end(), [](const SheetLine& a, const SheetLine& b) {
        return std::tie(a.bin, a.line) < std::tie(b.bin, b.line);
    });
    return sheet;
}

CountWork countOf(const Camp& camp, const std::vector<QuantityRow>& rows, const CountBy& by)
{
    CountWork work;
    if (by.counter == by.second)
        work.findings.push_back(
            {Severity::error,
             {},
             "count-initials",
             {QS_SAY("core", "a count needs two persons; %1 cannot be both"), {by.counter}}});
    std::map<std::pair<std::string, std::string>, Entry> byReason; // the first has none: no difference
    for (const auto& row : rows) {
        const auto& line = camp.stock()[*camp.lineNamed(row.line)];
        const int difference = row.quantity - line.onHand;
        std::pair<std::string, std::string> why;
        if (difference != 0)
            why = {row.reason.empty() ? by.reason : row.reason, row.cause.empty() ? by.cause : row.cause};
        if (difference != 0 && why.first.empty() && why.second.empty())
            work.findings.push_back(
                {Severity::error,
                 row.place,
                 "count-reason",
                 {QS_SAY("core",
                         "line %1: counted %2, the book says %3; say why, in the row or with --reason"),
                  {row.line, std::to_string(row.quantity), std::to_string(line.onHand)}}});
        byReason[why].movements.push_back({row.line, difference, "", 0, 0});
        work.lines.push_back({row.line, line.onHand, row.quantity});
    }
    for (auto& [why, entry] : byReason) {
        entry.kind = EntryKind::counted;
        entry.actor = by.counter;
        entry.fields = {{"counter", by.counter}, {"second", by.second}};
        if (!why.second.empty())
            entry.fields["cause"] = why.second;
        entry.texts["reason"] = why.first;
        work.entries.push_back(std::move(entry));
    }
    return work;
}

std::vector<Entry> transferOut(const std::vector<QuantityRow>& rows, const Transfer& transfer)
{
    auto entries = entryOfRows(EntryKind::transferredOut, rows, -1, false);
    for (auto& entry : entries) {
        entry.actor = transfer.actor;
        entry.fields["to"] = transfer.site;
        entry.texts["note"] = transfer.note;
    }
    return entries;
}

std::vector<Entry> transferIn(const std::vector<QuantityRow>& rows, const Transfer& transfer)
{
    auto entries = entryOfRows(EntryKind::transferredIn, rows, 1, false);
    for (auto& entry : entries) {
        entry.actor = transfer.actor;
        entry.fields["from"] = transfer.site;
        if (!transfer.sent.empty())
            entry.fields["sent"] = transfer.sent;
        entry.texts["note"] = transfer.note;
    }
    return entries;
}

std::vector<Finding> transferDiffers(const Entry& sent, const std::vector<QuantityRow>& rows)
{
    std::map<std::string, std::pair<int, int>> counts; // sent, arrived
    for (const auto& movement : sent.movements)
        counts[movement.line].first -= movement.delta;
    std::map<std::string, Position> places;
    for (const auto& row : rows) {
        counts[row.line].second += row.quantity;
        places[row.line] = row.place;
    }
    std::vector<Finding> findings;
    for (const auto& [line, count] : counts)
        if (count.first != count.second)
            findings.push_back({Severity::caution,
                                places[line],
                                "transfer-differs",
                                {QS_SAY("core", "line %1: %2 were sent, %3 arrived; the sender should know"),
                                 {line, std::to_string(count.first), std::to_string(count.second)}}});
    return findings;
}

} // namespace quarterstep
