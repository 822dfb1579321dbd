// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/leaving.hpp"

#include "inventory/store/place.hpp"
#include "inventory/store/shared_ledger.hpp"
#include "inventory/text/source_text.hpp"

#include <algorithm>
#include <filesystem>
#include <sys/stat.h>

namespace quarterstep
{

namespace
{

namespace fs = std::filesystem;

Finding aboutPath(const std::string& path, const char* code, Sentence sentence)
{
    Finding finding;
    finding.position.file = path;
    finding.code = code;
    finding.sentence = std::move(sentence);
    return finding;
}

Error cannotWrite(const std::string& target, const std::error_code& reason)
{
    return {aboutPath(target, "file-unwritable",
                      {QS_SAY("core", "the file cannot be written: %1; check rights and free space"),
                       {reason.message()}}),
            4};
}

void makeFolder(const std::string& target)
{
    if (mkdir(target.c_str(), 0700) == 0)
        return;
    const std::error_code reason(errno, std::generic_category());
    if (reason == std::errc::file_exists)
        throw Error(
            aboutPath(target, "file-exists",
                      {QS_SAY("core", "something has this name already; name a place that is free"), {}}),
            3);
    throw cannotWrite(target, reason);
}

void copyText(const std::string& from, const std::string& to)
{
    auto bytes = readBytes(from);
    if (!bytes.usable())
        throw Error(bytes.findings.front(), 3);
    replaceFile(to, bytes.value, true);
}

/// The copy of a shared ledger is a file, as every camp folder can have one.
std::string copyName(const Camp& camp)
{
    return isSharedLedger(camp.ledger().path()) ? "ledger.sqlite"
                                                : fs::path(camp.ledger().path()).filename().string();
}

/// The ledger itself, or that of the camp folder named.
std::string ledgerOf(const std::string& path)
{
    std::error_code ignored;
    if (!fs::is_directory(path, ignored))
        return path;
    const auto file = readStockFile(stockPath(path));
    return file.usable() ? ledgerLocation(path, file.value.ledger) : path + "/ledger.sqlite";
}

/// Lets stock.yaml of a folder name this ledger.
void nameLedger(const std::string& folder, const std::string& ledger)
{
    const auto path = stockPath(folder);
    auto file = readStockFile(path);
    if (!file.usable())
        throw CampNotOpened(std::move(file.findings));
    if (file.value.ledger == ledger)
        return;
    auto bytes = spliceLedger(file.value, path, ledger);
    if (!bytes.usable())
        throw CampNotOpened(std::move(bytes.findings));
    replaceFile(path, bytes.value);
}

} // namespace

std::vector<std::string> exportFolder(const Camp& camp, const std::string& target)
{
    makeFolder(target);
    std::vector<std::string> names;
    try {
        const FolderLock lock(camp.folder()); // no write-back between the ledger and the file
        if (camp.hasLedger()) {
            names.push_back(copyName(camp));
            camp.ledger().copyTo(target + "/" + names.back());
        }
        for (const auto* name : {"stock.yaml", "rules.yaml"}) {
            const auto from = fs::path(camp.folder()) / name;
            std::error_code ignored;
            if (!fs::exists(from, ignored))
                continue;
            copyText(from.string(), (fs::path(target) / name).string());
            names.emplace_back(name);
            if (names.back() == "stock.yaml" && camp.hasLedger())
                nameLedger(target, copyName(camp));
        }
        if (!syncFolder(folderOf(target)))
            throw cannotWrite(target, std::error_code(errno, std::generic_category()));
    } catch (const Error&) {
        std::error_code ignored;
        fs::remove_all(target, ignored);
        throw;
    }
    return names;
}

Entry exportEntry(const std::string& actor, const std::string& reason)
{
    Entry entry;
    entry.kind = EntryKind::exported;
    entry.actor = actor;
    entry.fields["level"] = "full";
    entry.texts["reason"] = reason;
    return entry;
}

MergeReport importLedger(Camp& camp, const std::string& path, bool dryRun)
{
    const auto from = Ledger::open(ledgerOf(path), Ledger::Mode::readOnly, camp.folder());
    auto report = mergeLedger(camp.ledger(), from, dryRun);
    if (!dryRun)
        camp.refreshAfterWriting();
    return report;
}

std::int64_t moveLedger(const std::string& folder, const std::string& target, bool dryRun)
{
    std::int64_t entries = 0;
    {
        auto camp = Camp::open(folder, Ledger::Mode::readWrite);
        entries = camp.ledger().position();
        const auto location = ledgerLocation(folder, target);
        if (location == ledgerLocation(folder, readStockFile(stockPath(folder)).value.ledger))
            throw Error(
                aboutPath(location, "merge-itself",
                          {QS_SAY("core", "this is the ledger of the camp itself; name another one"), {}}),
                2);
        if (dryRun)
            return entries;
        camp.ledger().moveTo(location);
    }
    {
        const FolderLock lock(folder);
        nameLedger(folder, target);
    }
    auto camp = Camp::open(folder, Ledger::Mode::readWrite);
    if (camp.ledger().moved()) // a new file lives nowhere yet
        camp.claimPlace();
    return entries;
}

std::vector<std::string> copiesBeside(const Camp& camp)
{
    std::vector<std::string> names;
    if (!camp.hasLedger() || isSharedLedger(camp.ledger().path()))
        return names;
    const fs::path ledger(camp.ledger().path());
    const auto begin = ledger.filename().string() + ".form-";
    std::error_code failed;
    for (const auto& file : fs::directory_iterator(ledger.parent_path(), failed))
        if (const auto name = file.path().filename().string(); name.rfind(begin, 0) == 0)
            names.push_back(file.path().string());
    std::sort(names.begin(), names.end());
    return names;
}

} // namespace quarterstep
