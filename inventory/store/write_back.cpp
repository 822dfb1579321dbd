// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/write_back.hpp"

#include "inventory/store/finding_at.hpp"
#include "inventory/store/stock_edits.hpp"
#include "inventory/text/source_text.hpp"

#include <dirent.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <optional>
#include <set>

namespace quarterstep
{

namespace
{

using LineNames = std::set<std::string>;

[[noreturn]] void throwFirstError(const std::vector<Finding>& findings)
{
    for (const auto& finding : findings)
        if (finding.severity == Severity::error)
            throw Error(finding, 3);
    throw errorAt({}, "file-unreadable", {QS_SAY("core", "the file cannot be read"), {}}, 3);
}

/// The file as it is now; parsed only when its bytes are not those read last.
StockFile readAgain(const std::string& path, std::optional<StockFile> lastRead)
{
    struct stat status {
    };
    if (lstat(path.c_str(), &status) == 0 && !S_ISREG(status.st_mode) && !S_ISDIR(status.st_mode))
        throw errorAt(
            path, "not-a-regular-file",
            {QS_SAY("core", "this is a link or a device; only a plain file can be kept up to date; put "
                            "the file itself into the camp folder"),
             {}},
            4);
    if (lastRead && holdsBytes(path, lastRead->bytes))
        return *std::move(lastRead);
    auto reading = readStockFile(path);
    if (!reading.usable())
        throwFirstError(reading.findings);
    return std::move(reading.value);
}

/// What a killed program left behind: nobody else writes here while the folder is locked.
void removeLeftovers(const std::string& folder)
{
    DIR* entries = opendir(folder.c_str());
    if (entries == nullptr)
        return;
    const std::string begin = ".stock.yaml.";
    const std::string end = ".part";
    while (const auto* entry = readdir(entries)) {
        const std::string name = entry->d_name;
        if (name.size() > begin.size() + end.size() && name.compare(0, begin.size(), begin) == 0 &&
            name.compare(name.size() - end.size(), end.size(), end) == 0)
            unlink(std::string(folder).append("/").append(name).c_str());
    }
    closedir(entries);
}

/// @param counts  those of `now`
void introduceNewLines(const StockFile& file, Ledger& ledger, Snapshot& now, Counts& counts)
{
    std::vector<Balance> fresh;
    for (const auto& line : file.lines)
        if (counts.find(line.name) == counts.end())
            fresh.push_back({line.name, line.onHand, 0, 0});
    if (fresh.empty())
        return;
    ledger.introduce(file.site, fresh);
    now = ledger.snapshot(file.site);
    counts = countsOf(now.balances);
}

/// The file after a splice, its places moved on by the digits that came or went, without parsing it again.
StockFile afterSplice(StockFile file, std::string bytes, const std::vector<int>& counts, std::int64_t after)
{
    std::vector<std::pair<ByteSpan*, std::size_t>> spans; // and their new lengths
    for (std::size_t i = 0; i < counts.size(); ++i) {
        const auto& span = file.countSpans[i];
        const bool same = counts[i] == file.lines[i].onHand;
        spans.emplace_back(&file.countSpans[i],
                           same ? span.end - span.begin : std::to_string(counts[i]).size());
        file.lines[i].onHand = counts[i];
    }
    spans.emplace_back(&file.afterSpan, std::to_string(after).size());
    spans.emplace_back(&file.hashSpan, std::size_t{8});
    std::sort(spans.begin(), spans.end(),
              [](const auto& a, const auto& b) { return a.first->begin < b.first->begin; });
    std::ptrdiff_t shift = 0;
    const auto linesKey = file.linesKeyBegin;
    for (auto& [span, length] : spans) {
        const auto grown =
            static_cast<std::ptrdiff_t>(length) - static_cast<std::ptrdiff_t>(span->end - span->begin);
        if (span->begin < linesKey)
            file.linesKeyBegin =
                static_cast<std::size_t>(static_cast<std::ptrdiff_t>(file.linesKeyBegin) + grown);
        span->begin = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(span->begin) + shift);
        span->end = span->begin + length;
        shift += grown;
    }
    file.bytes = std::move(bytes);
    file.writtenAfter = after;
    file.countsHash = file.bytes.substr(file.hashSpan.begin, file.hashSpan.end - file.hashSpan.begin);
    return file;
}

StockFile reread(std::string bytes, const std::string& path)
{
    auto reading = readStockText(std::move(bytes), path);
    if (!reading.usable())
        throwFirstError(reading.findings);
    return std::move(reading.value);
}

/// Puts the ledger's counts into the file; lines in `kept` get the counts given there, but the hash is over
/// the ledger's, so that they are seen as edited again at the next opening.
void writeCounts(WriteBackResult& result, const std::string& path, std::int64_t position,
                 const Counts& ledgerCounts, const Counts& kept)
{
    auto& file = result.file;
    std::vector<int> written;
    std::vector<int> hashed;
    for (const auto& line : file.lines) {
        hashed.push_back(ledgerCounts.at(line.name));
        const auto edited = kept.find(line.name);
        written.push_back(edited != kept.end() ? edited->second : hashed.back());
    }
    auto bytes = spliceCounts(file, written, position, hashed);
    if (bytes == file.bytes)
        return;
    const bool known = file.afterSpan.end != 0;
    auto after =
        known ? afterSplice(file, std::move(bytes), written, position) : reread(std::move(bytes), path);
    replaceFile(path, after.bytes);
    file = std::move(after);
    result.replaced = true;
}

void noteMissingEntries(WriteBackResult& result, const std::string& path, const Snapshot& before)
{
    if (result.file.writtenAfter <= before.position)
        return;
    const auto written = std::to_string(result.file.writtenAfter);
    if (before.position == 0)
        result.findings.push_back(
            findingAt(Severity::caution, path, "ledger-begun",
                      {QS_SAY("core", "the file was written after entry %1 of another ledger; a new ledger "
                                      "begins with the counts of the file"),
                       {written}}));
    else
        result.findings.push_back(
            findingAt(Severity::caution, path, "ledger-behind",
                      {QS_SAY("core", "the file was written after entry %1, but the ledger ends at %2; is "
                                      "the ledger an older copy? Counts that differ are shown as edited"),
                       {written, std::to_string(before.position)}}));
}

/// Lines and sites that came or went are the mark of an edit or of damage: nobody should find out by
/// counting.
/// @param counts  of the ledger before
void noteNames(WriteBackResult& result, const std::string& path, std::int64_t position, const Counts& counts)
{
    const auto tell = [&](Severity severity, const char* code, Sentence sentence) {
        result.findings.push_back(findingAt(severity, path, code, std::move(sentence)));
    };
    const auto& file = result.file;
    if (counts.empty()) {
        if (position > 0 && !file.lines.empty())
            tell(
                Severity::caution, "site-new",
                {QS_SAY("core",
                        "the ledger had nothing of the site %1; its lines begin with the counts of the file"),
                 {file.site}});
        return;
    }
    std::size_t known = 0;
    for (const auto& line : file.lines)
        if (counts.count(line.name) > 0)
            ++known;
        else
            tell(Severity::note, "line-new",
                 {QS_SAY("core", "line %1 is new in the file and begins with %2 on hand"),
                  {line.name, std::to_string(line.onHand)}});
    if (known == counts.size()) // no name stands twice in a file
        return;
    auto gone = counts;
    for (const auto& line : file.lines)
        gone.erase(line.name);
    for (const auto& [line, count] : gone)
        if (count > 0)
            tell(Severity::caution, "line-gone",
                 {QS_SAY("core",
                         "line %1 is not in the file any more, and the ledger has %2 of it on hand; put the "
                         "line back, or count it as 0 first"),
                  {line, std::to_string(count)}});
}

/// What people edited and did not settle. Somebody counted at the position the file reflects. What moved
/// since then moved from that count too, and the file is about to reflect today's position: the difference
/// stays, whatever was handed over meanwhile.
Counts keptEdits(WriteBackResult& result, const std::vector<EditedCount>& edits, const Counts& counts,
                 const LineNames& settled)
{
    Counts kept;
    for (const auto& edit : edits) {
        if (settled.count(edit.line) > 0)
            continue;
        const auto is = counts.find(edit.line);
        const int moved = is == counts.end() ? 0 : is->second - edit.inLedger;
        const int carried = std::max(0, edit.inFile + moved);
        kept[edit.line] = carried;
        result.edited.push_back({edit.line, carried, edit.inLedger + moved});
    }
    return kept;
}

/// The folder must be locked. Lines in `settled` take the ledger's count even where they were edited.
WriteBackResult bringUp(const std::string& folder, Ledger& ledger, std::optional<StockFile> lastRead,
                        const LineNames& settled)
{
    WriteBackResult result;
    const auto path = stockPath(folder);
    result.file = readAgain(path, std::move(lastRead));
    removeLeftovers(folder);
    auto now = ledger.snapshot(result.file.site);
    const bool asWritten = countsAsWritten(result.file);
    result.counts = countsOfLines(result.file.lines, now);
    result.position = now.position;
    if (follows(result.file, asWritten, now, result.counts)) // as at most openings
        return result;
    auto counts = countsOf(now.balances);
    noteMissingEntries(result, path, now);
    noteNames(result, path, now.position, counts);
    const auto edits = editsIn(result.file, ledger, now, asWritten);
    introduceNewLines(result.file, ledger, now, counts);
    const auto kept = keptEdits(result, edits, counts, settled);
    writeCounts(result, path, now.position, counts, kept);
    result.counts = countsOfLines(result.file.lines, now);
    result.position = now.position;
    return result;
}

} // namespace

std::string stockPath(const std::string& folder)
{
    return folder + "/stock.yaml";
}

WriteBackResult writeBack(const std::string& folder, Ledger& ledger)
{
    const FolderLock lock(folder);
    return bringUp(folder, ledger, std::nullopt, {});
}

WriteBackResult writeBack(const std::string& folder, Ledger& ledger, StockFile lastRead)
{
    const FolderLock lock(folder);
    return bringUp(folder, ledger, std::move(lastRead), {});
}

WriteBackResult acceptEdited(const std::string& folder, Ledger& ledger, const std::vector<EditedCount>& lines,
                             const std::string& reason)
{
    const FolderLock lock(folder);
    auto file = readAgain(stockPath(folder), std::nullopt);
    const auto edited = editedCounts(file, ledger);
    LineNames settled;
    for (const auto& asked : lines)
        for (const auto& edit : edited)
            if (edit.line == asked.line && settled.insert(edit.line).second) {
                Entry counted;
                counted.kind = EntryKind::counted;
                counted.fields = {{"counted", std::to_string(edit.inFile)},
                                  {"expected", std::to_string(edit.inLedger)}};
                counted.texts = {{"reason", reason}};
                counted.movements = {{edit.line, edit.inFile - edit.inLedger, {}}};
                ledger.post(file.site, counted);
            }
    return bringUp(folder, ledger, std::move(file), settled);
}

WriteBackResult discardEdited(const std::string& folder, Ledger& ledger,
                              const std::vector<EditedCount>& lines)
{
    const FolderLock lock(folder);
    LineNames settled;
    for (const auto& line : lines)
        settled.insert(line.line);
    return bringUp(folder, ledger, std::nullopt, settled);
}

} // namespace quarterstep
