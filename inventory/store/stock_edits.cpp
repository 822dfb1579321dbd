// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/stock_edits.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

/// What each line of the file should say if nobody had edited it: the count at the position the file
/// reflects; for a line introduced later, the count it was introduced with.
Counts expectedCounts(const StockFile& file, const Ledger& ledger, const Snapshot& now)
{
    if (file.writtenAfter < 0 || file.writtenAfter > now.position)
        return countsOf(now.balances);
    auto expected = countsOf(ledger.firstCounts(file.site));
    for (const auto& [line, count] : countsOf(ledger.balancesAt(file.site, file.writtenAfter)))
        expected[line] = count;
    return expected;
}

/// Whether somebody counted the line after the position the file reflects and said what the file says: the
/// edit was accepted, and the program ended before it wrote the file; or the line was counted by a sheet as
/// well. A file that says what the ledger says by now for another reason, since others handed over meanwhile,
/// is still edited.
bool isSettled(const EditedCount& edit, const Counts& current, const std::vector<Entry>& later)
{
    const auto is = current.find(edit.line);
    const bool asInLedger = is != current.end() && is->second == edit.inFile;
    const auto says = [](const Entry& entry, const char* field, int count) {
        const auto found = entry.fields.find(field);
        return found != entry.fields.end() && found->second == std::to_string(count);
    };
    return std::any_of(later.begin(), later.end(), [&](const Entry& entry) {
        const auto moves = [&](const Movement& movement) { return movement.line == edit.line; };
        return entry.kind == EntryKind::counted &&
               std::any_of(entry.movements.begin(), entry.movements.end(), moves) &&
               (asInLedger ||
                (says(entry, "counted", edit.inFile) && says(entry, "expected", edit.inLedger)));
    });
}

} // namespace

Counts countsOf(const std::vector<Balance>& balances)
{
    Counts counts;
    for (const auto& balance : balances) // they come in the order of their names
        counts.insert_or_assign(counts.end(), balance.line, balance.onHand);
    return counts;
}

bool countsAsWritten(const StockFile& file)
{
    return file.writtenAfter >= 0 && file.countsHash == countsHash(file.lines);
}

std::vector<LineCount> countsOfLines(const std::vector<StockLine>& lines, const Snapshot& now)
{
    std::vector<LineCount> counts;
    counts.reserve(lines.size());
    for (const auto& line : lines) {
        const auto* balance = now.of(line.name);
        counts.push_back(balance ? LineCount{balance->onHand, balance->held, balance->quarantined, true}
                                 : LineCount{});
    }
    return counts;
}

void putCounts(std::vector<StockLine>& lines, const std::vector<LineCount>& counts)
{
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (const auto& count = counts[i]; count.known) {
            lines[i].onHand = count.onHand;
            lines[i].held = count.held;
            lines[i].quarantined = count.quarantined;
        }
}

bool follows(const StockFile& file, bool asWritten, const Snapshot& now, const std::vector<LineCount>& counts)
{
    return asWritten && file.writtenAfter == now.position && file.lines.size() == now.balances.size() &&
           std::equal(file.lines.begin(), file.lines.end(), counts.begin(), counts.end(),
                      [](const StockLine& line, const LineCount& count) {
                          return count.known && count.onHand == line.onHand;
                      });
}

std::vector<EditedCount> editsIn(const StockFile& file, const Ledger& ledger, const Snapshot& now,
                                 bool asWritten)
{
    const bool ledgerBehind = file.writtenAfter > now.position;
    if (!ledgerBehind && asWritten)
        return {};
    const auto expected = expectedCounts(file, ledger, now);
    std::vector<EditedCount> edited;
    for (const auto& line : file.lines)
        if (const auto should = expected.find(line.name);
            should != expected.end() && should->second != line.onHand)
            edited.push_back({line.name, line.onHand, should->second});
    if (edited.empty() || ledgerBehind || file.writtenAfter < 0)
        return edited;
    const auto later = ledger.entriesAfter(file.writtenAfter);
    const auto current = countsOf(now.balances);
    std::erase_if(edited, [&](const EditedCount& edit) { return isSettled(edit, current, later); });
    return edited;
}

std::vector<EditedCount> editedCounts(const StockFile& file, const Ledger& ledger)
{
    return editsIn(file, ledger, ledger.snapshot(file.site), countsAsWritten(file));
}

} // namespace quarterstep
