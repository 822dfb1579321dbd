// SPDX-License-Identifier: GPL-3.0-or-later
// How a camp folder is opened: its files, its ledger, and what is told of them.
#include "app/session/camp.hpp"

#include "inventory/store/finding_at.hpp"
#include "inventory/store/shared_ledger.hpp"
#include "inventory/store/sqlite_file.hpp"

#include <algorithm>
#include <filesystem>
#include <future>

namespace quarterstep
{

namespace
{

Finding firstError(const std::vector<Finding>& findings)
{
    const auto found = std::find_if(findings.begin(), findings.end(), [](const Finding& finding) {
        return finding.severity == Severity::error;
    });
    return found == findings.end() ? Finding{} : *found;
}

bool exists(const std::string& path)
{
    std::error_code ignored;
    return std::filesystem::exists(std::filesystem::symlink_status(path, ignored));
}

std::optional<Finding> brokenAtTheEnd(const Ledger& ledger)
{
    const auto recent = ledger.checkRecent();
    if (recent.ok)
        return std::nullopt;
    return findingAt(Severity::caution, ledger.path(), "chain-broken", brokenChain(recent));
}

/// What is wrong with it is told when it is opened again.
std::optional<Ledger> openedIfItCan(const std::string& location, const std::string& folder)
{
    try {
        return Ledger::open(location, Ledger::Mode::readWrite, folder);
    } catch (const Error&) {
        return std::nullopt;
    }
}

} // namespace

std::string ledgerLocation(const std::string& folder, const std::string& ledger)
{
    return isSharedLedger(ledger) ? ledger : (std::filesystem::path(folder) / ledger).string();
}

CampNotOpened::CampNotOpened(std::vector<Finding> findings)
    : Error(firstError(findings), 3), findings_(std::move(findings))
{
}

Camp Camp::open(const std::string& folder, Ledger::Mode mode)
{
    return open(readCampFiles(folder), mode);
}

Camp Camp::open(CampFiles files, Ledger::Mode mode, LastEntries last)
{
    Camp camp;
    camp.folder_ = std::move(files.folder);
    camp.file_ = std::move(files.stock);
    camp.rules_ = std::move(files.rules);
    camp.findings_ = std::move(files.findings);
    camp.openLedger(mode, last, std::move(files.ledger));
    return camp;
}

CampFiles readCampFiles(const std::string& folder)
{
    auto stock = readStockFile(stockPath(folder));
    auto found = stock.findings;
    FittingRules rules;
    const auto rulesPath = folder + "/rules.yaml";
    if (exists(rulesPath)) {
        auto read = readRulesFile(rulesPath);
        found.insert(found.end(), read.findings.begin(), read.findings.end());
        rules = std::move(read.value);
    } else {
        rules = defaultRules();
        found.push_back(findingAt(Severity::note, rulesPath, "rules-default",
                                  {QS_SAY("core", "there is no rules.yaml; the rules built in apply"), {}}));
    }
    if (std::any_of(found.begin(), found.end(),
                    [](const Finding& f) { return f.severity == Severity::error; }))
        throw CampNotOpened(std::move(found));
    return {folder, std::move(stock.value), std::move(rules), std::move(found), {}};
}

CampFiles readCampFilesAndLedger(const std::string& folder)
{
    auto ledger =
        std::async(std::launch::async, [location = ledgerLocation(folder, StockFile().ledger), &folder] {
            return isLedgerOfToday(location) ? openedIfItCan(location, folder) : std::nullopt;
        });
    auto files = readCampFiles(folder);
    files.ledger = ledger.get();
    return files;
}

void Camp::openLedger(Ledger::Mode mode, LastEntries last, std::optional<Ledger> opened)
{
    const auto location = ledgerAt();
    if (mode == Ledger::Mode::readOnly && !isSharedLedger(location) && !exists(location))
        return takeUnwritten(std::move(file_));
    if (opened && mode == Ledger::Mode::readWrite && opened->path() == location)
        ledger_ = std::move(opened);
    else
        ledger_ = Ledger::open(location, mode, folder_);
    if (ledger_->moved())
        tell(findingAt(
            Severity::caution, ledger_->path(), "ledger-moved",
            {QS_SAY("core", "this ledger was last written at another place and is open for reading only; if "
                            "the folder moved here for good, say so, and do not use the other copy any "
                            "more"),
             {}}));
    tellMigrated();
    if (const auto broken = last == LastEntries::lookedAt ? brokenAtTheEnd(*ledger_) : std::nullopt)
        tell(*broken);
    if (ledger_->writable())
        return take(writeBack(folder_, *ledger_, std::move(file_)));
    takeUnwritten(std::move(file_));
}

std::optional<Finding> lookAtLastEntries(const std::string& location, const std::string& folder)
{
    try {
        return brokenAtTheEnd(Ledger::open(location, Ledger::Mode::readOnly, folder));
    } catch (const Error&) { // what is wrong with it was told by whoever opened the camp
        return std::nullopt;
    }
}

void Camp::tellMigrated()
{
    if (ledger_->migratedFrom().empty())
        return;
    tell(findingAt(
        Severity::note, ledger_->path(), "ledger-brought-up",
        {QS_SAY("core", "this ledger had an older form and was brought up; as it was it stands in %1"),
         {ledger_->migratedFrom()}}));
}

Sentence brokenChain(const ChainCheck& chain)
{
    return {
        QS_SAY("core",
               "ledger entry %1 is not as it was written: %2; keep the folder as it is and compare it with "
               "a copy"),
        {std::to_string(chain.firstBad.value_or(0)), chain.what}};
}

} // namespace quarterstep
