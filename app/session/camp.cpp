// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/camp.hpp"

#include "inventory/store/finding_at.hpp"
#include "inventory/store/shared_ledger.hpp"
#include "inventory/text/rules_hash.hpp"

#include <algorithm>
#include <utility>

namespace quarterstep
{

namespace
{

void takeMovement(StockLine& line, const Movement& movement)
{
    line.onHand += movement.delta;
    line.held += movement.held;
    line.quarantined += movement.quarantined;
}

} // namespace

Ledger& Camp::ledger()
{
    if (!ledger_)
        throw Error(findingAt(Severity::error, folder_, "ledger-missing",
                              {QS_SAY("core", "there is no ledger here yet"), {}}),
                    3);
    return *ledger_;
}

const Ledger& Camp::ledger() const
{
    return const_cast<Camp*>(this)->ledger(); // NOLINT: the camp itself is not changed
}

void Camp::tell(const Finding& finding)
{
    const auto same = [&](const Finding& told) {
        return told.code == finding.code && told.position == finding.position &&
               told.sentence == finding.sentence;
    };
    if (std::none_of(findings_.begin(), findings_.end(), same))
        findings_.push_back(finding);
}

void Camp::take(WriteBackResult result)
{
    for (const auto& finding : result.findings)
        tell(finding);
    edited_ = std::move(result.edited);
    takeFile(std::move(result.file), result.counts);
    position_ = result.position;
}

/// @param counts  of its lines in the ledger; empty: there is none
void Camp::takeFile(StockFile file, const std::vector<LineCount>& counts)
{
    inFile_.clear();
    for (const auto& line : file.lines)
        inFile_.push_back(line.onHand);
    auto lines = std::exchange(file.lines, {});
    if (!counts.empty())
        putCounts(lines, counts);
    if (index_ && !sameToTheEye(stock_, lines))
        index_.reset();
    stock_ = std::move(lines);
    file_ = std::move(file);
}

StockFile Camp::asOnDisk() const
{
    auto file = file_;
    file.lines = stock_;
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
        file.lines[i].onHand = inFile_[i];
        file.lines[i].held = file.lines[i].quarantined = 0;
    }
    return file;
}

const StockIndex& Camp::index() const
{
    if (!index_)
        index_.emplace(stock_);
    return *index_;
}

void Camp::takeBalances(const Snapshot& snapshot)
{
    position_ = snapshot.position;
    putCounts(stock_, countsOfLines(stock_, snapshot));
}

/// From a file that was read, without writing to it.
void Camp::takeUnwritten(StockFile file)
{
    if (ledger_)
        edited_ = editedCounts(file, *ledger_);
    takeFile(std::move(file), {});
    if (ledger_)
        takeBalances(ledger_->snapshot(site()));
}

void Camp::tellBehind(const Error& error)
{
    tell(error.finding());
    tell(
        findingAt(Severity::caution, stockPath(folder_), "stock-file-behind",
                  {QS_SAY("core", "the ledger has the entry, but stock.yaml could not be brought up to date; "
                                  "that is made good at the next opening"),
                   {}}));
}

Entry Camp::post(Entry entry)
{
    return postAll({std::move(entry)}).front();
}

std::vector<Entry> Camp::postAll(std::vector<Entry> entries, std::optional<std::int64_t> expected)
{
    keepRules(entries);
    auto posted = ledger().postAll(site(), std::move(entries), expected);
    rulesKept_ = rulesKept_ || std::any_of(posted.begin(), posted.end(), [](const Entry& entry) {
                     return entry.fields.count("rules") > 0;
                 });
    try { // the entry stands: from here on nothing may look like a refusal
        if (pauses_ > 0)
            takeBalances(ledger_->snapshot(site()));
        else
            take(writeBack(folder_, *ledger_, asOnDisk()));
    } catch (const Error& error) {
        tellBehind(error);
        for (const auto& entry : posted)
            for (const auto& movement : entry.movements)
                if (const auto line = lineNamed(movement.line))
                    takeMovement(stock_[*line], movement);
    }
    return posted;
}

/// The first hand-over under a rules hash carries the rules themselves: an audit needs those of the time, and
/// a merged ledger brings them along. Entries that keep what was supplied are of a program that kept the
/// rules.
void Camp::keepRules(std::vector<Entry>& entries)
{
    if (rulesKept_)
        return;
    const auto judged = std::find_if(entries.begin(), entries.end(), [](const Entry& entry) {
        return entry.kind == EntryKind::handedOver && entry.fields.count("rules_hash") > 0;
    });
    if (judged == entries.end())
        return;
    if (const auto last = ledger().lastOf(EntryKind::handedOver)) {
        const auto hash = last->fields.find("rules_hash");
        rulesKept_ =
            hash != last->fields.end() && hash->second == rules_.hash && last->fields.count("supplied") > 0;
    }
    if (!rulesKept_)
        judged->fields["rules"] = canonicalRules(rules_);
}

Camp::WriteBackPause::~WriteBackPause()
{
    if (--camp_.pauses_ > 0 || !camp_.ledger_ || !camp_.ledger_->writable())
        return;
    try {
        camp_.take(writeBack(camp_.folder_, *camp_.ledger_, camp_.asOnDisk()));
    } catch (const Error& error) {
        camp_.tellBehind(error);
    }
}

bool Camp::isBehind() const
{
    if (!ledger_)
        return false;
    const auto location = ledgerAt();
    if (!isSharedLedger(location))
        return ledger_->position() != position_;
    if (!news_)
        news_ = std::make_unique<LedgerNews>(location);
    return news_->position() > position_;
}

void Camp::refresh()
{
    if (ledger_ && ledger_->writable())
        return take(writeBack(folder_, *ledger_, asOnDisk()));
    auto reading = readStockFile(stockPath(folder_));
    if (!reading.usable())
        throw CampNotOpened(std::move(reading.findings));
    takeUnwritten(std::move(reading.value));
}

void Camp::refreshAfterWriting()
{
    try {
        refresh();
    } catch (const Error& error) {
        tellBehind(error);
    }
}

std::optional<std::size_t> Camp::lineNamed(const std::string& name) const
{
    for (std::size_t i = 0; i < stock_.size(); ++i)
        if (stock_[i].name == name)
            return i;
    return std::nullopt;
}

void Camp::acceptEdits(const std::vector<EditedCount>& lines, const std::string& reason)
{
    take(acceptEdited(folder_, ledger(), lines, reason));
}

void Camp::discardEdits(const std::vector<EditedCount>& lines)
{
    take(discardEdited(folder_, ledger(), lines));
}

void Camp::claimPlace()
{
    ledger().claimPlace();
    placeIsSettled();
}

void Camp::becomeSecondStation()
{
    ledger().becomeSecondStation();
    placeIsSettled();
}

void Camp::placeIsSettled()
{
    std::erase_if(findings_, [](const Finding& finding) { return finding.code == "ledger-moved"; });
    refresh();
}

} // namespace quarterstep
