// SPDX-License-Identifier: GPL-3.0-or-later
// Posting. Opening stands in ledger_opening.cpp, transactions in ledger_transaction.cpp, the writing of one
// entry in ledger_writing.cpp, reading in ledger_reading.cpp, stations in ledger_stations.cpp, persons in
// ledger_persons.cpp, the check of the chain in chain_check.cpp.
#include "inventory/store/ledger.hpp"
#include "inventory/store/ledger_inside.hpp"

namespace quarterstep
{

void Ledger::Inside::requireWritable() const
{
    if (mode == Mode::readOnly)
        throw errorAt(path, "ledger-unwritable",
                      {QS_SAY("core", "this ledger was opened for reading only"), {}}, 4);
    if (moved)
        throw errorAt(path, "ledger-moved",
                      {QS_SAY("core", "this ledger was last written at another place; if it moved here for "
                                      "good, say so first, and do not use the other copy any more"),
                       {}},
                      4);
}

void Ledger::Inside::requirePosition(std::int64_t expected)
{
    if (connection->wholeOf("SELECT coalesce(max(position), 0) FROM entry") == expected)
        return;
    throw errorAt(
        path, "ledger-went-on",
        {QS_SAY("core", "something was posted meanwhile; nothing was written; look again and repeat"), {}},
        4);
}

bool Ledger::Inside::holds(const std::string& id)
{
    auto query = connection->prepare("SELECT 1 FROM entry WHERE id = ?");
    query.run({Blob{idBytes(id)}});
    const bool there = query.next();
    query.finish();
    return there;
}

Ledger::Ledger(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Ledger::Ledger(Ledger&&) noexcept = default;
Ledger& Ledger::operator=(Ledger&&) noexcept = default;
Ledger::~Ledger() = default;

bool Ledger::moved() const
{
    return inside_->moved;
}

bool Ledger::writable() const
{
    return inside_->mode == Mode::readWrite && !inside_->moved;
}

const std::string& Ledger::path() const
{
    return inside_->path;
}

Entry Ledger::post(const std::string& site, Entry entry)
{
    std::vector<Entry> entries;
    entries.push_back(std::move(entry));
    return std::move(postAll(site, std::move(entries)).front());
}

std::vector<Entry> Ledger::postAll(const std::string& site, std::vector<Entry> entries,
                                   std::optional<std::int64_t> expected)
{
    for (auto& entry : entries)
        entry.id.clear();
    inside_->untilWritten([&](bool afterLoss) {
        if (afterLoss && !entries.empty() && inside_->holds(entries.front().id))
            return; // the connection was lost after the commit
        LedgerTransaction transaction(*inside_);
        if (expected)
            inside_->requirePosition(*expected);
        for (auto& entry : entries)
            inside_->write(site, entry);
        transaction.commit();
    });
    return entries;
}

void Ledger::introduce(const std::string& site, const std::vector<Balance>& counts)
{
    inside_->untilWritten([&](bool /*afterLoss*/) { // lines that are known are left alone: it may be repeated
        LedgerTransaction transaction(*inside_);
        Entry opened;
        opened.kind = EntryKind::opened;
        for (const auto& count : counts) {
            inside_->statements->countOf.run({site, count.line});
            const bool known = inside_->statements->countOf.next();
            inside_->statements->countOf.finish();
            if (known)
                continue;
            inside_->inserts->line.run({site, count.line});
            inside_->inserts->line.finish();
            opened.movements.push_back({count.line, count.onHand, {}});
        }
        if (opened.movements.empty())
            return;
        inside_->write(site, opened);
        transaction.commit();
    });
}

void Ledger::setPatience(int ms)
{
    inside_->connection->setPatience(ms);
}

} // namespace quarterstep
