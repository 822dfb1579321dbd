// SPDX-License-Identifier: GPL-3.0-or-later
// Writing. Opening stands in ledger_opening.cpp, reading in ledger_reading.cpp, stations in
// ledger_stations.cpp, persons in ledger_persons.cpp, the check of the chain in chain_check.cpp.
#include "inventory/store/ledger.hpp"
#include "inventory/store/ledger_inside.hpp"
#include "inventory/store/payload.hpp"

#include <chrono>

namespace quarterstep
{

namespace
{

std::int64_t nowMs()
{
    using namespace std::chrono;
    return duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
}

/// A disk that failed while the entry was being made to last may keep it or not.
Error commitError(const std::string& path, const StoreFailure& failure)
{
    constexpr int inputOutput = 10;
    if ((failure.code & 0xff) != inputOutput)
        return storeError(path, failure);
    return errorAt(
        path, "ledger-failed",
        {QS_SAY("core", "the disk failed while the entry was written (%1); close the camp, open it again "
                        "and look whether the entry is there before you repeat it"),
         {failure.text}},
        4);
}

} // namespace

LedgerStatements::LedgerStatements(Connection& connection)
    : begin(connection.prepare("BEGIN IMMEDIATE")), commit(connection.prepare("COMMIT")),
      rollback(connection.prepare("ROLLBACK")),
      lastOfStation(connection.prepare(
          "SELECT number, hash, id FROM entry WHERE station = ? ORDER BY number DESC LIMIT 1")),
      countOf(connection.prepare("SELECT on_hand - held - quarantined, held, quarantined FROM balance "
                                 "WHERE site = ? AND line = ?")),
      snapshot(connection.prepare(
          "SELECT line, on_hand, held, quarantined, (SELECT coalesce(max(position), 0) FROM entry) "
          "FROM balance WHERE site = ? ORDER BY line"))
{
}

LedgerInserts::LedgerInserts(Connection& connection)
    : entry(connection.prepare(
          "INSERT INTO entry (id, station, number, kind, at_ms, person, cancels, payload, hash) "
          "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING position")),
      movement(connection.prepare("INSERT INTO movement (entry, place, site, line, delta, part, held, "
                                  "quarantined) VALUES (?, ?, ?, ?, ?, ?, ?, ?)")),
      line(connection.prepare("INSERT INTO balance (site, line) VALUES (?, ?)")),
      remark(connection.prepare("INSERT INTO remark (entry, name, salt, words) VALUES (?, ?, ?, ?)"))
{
}

LedgerTransaction::LedgerTransaction(Ledger::Inside& ledger) : ledger_(ledger)
{
    ledger_.requireWritable();
    ledger_.statements->begin.run();
    ledger_.statements->begin.finish();
    open_ = true;
}

LedgerTransaction::~LedgerTransaction()
{
    if (!open_)
        return;
    auto& rollback = ledger_.statements->rollback;
    (void)rollback.tryRun(); // a failed COMMIT may have rolled back already
    rollback.finish();
}

void LedgerTransaction::commit()
{
    ledger_.requireSameFile();
    auto& commit = ledger_.statements->commit;
    const bool done = commit.tryRun();
    commit.finish();
    if (!done)
        throw commitError(ledger_.path, commit.failure());
    open_ = false;
}

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

void Ledger::Inside::requireSameFile() const
{
    if (identity && identityOf(path) == identity)
        return;
    throw errorAt(
        path, "ledger-replaced",
        {QS_SAY("core", "the ledger file was moved, removed or replaced while it was open; nothing was "
                        "written; close the camp and open it again"),
         {}},
        4);
}

Error Ledger::Inside::shortOf(const std::string& site, const Movement& movement)
{
    auto& count = statements->countOf;
    count.run({site, movement.line});
    const bool known = count.next();
    const auto left = std::to_string(known ? count.whole(0) : 0);
    const auto held = std::to_string(known ? count.whole(1) : 0);
    const auto quarantined = std::to_string(known ? count.whole(2) : 0);
    count.finish();
    if (movement.held == 0 && movement.quarantined == 0)
        return errorAt(path, "stock-short",
                       {QS_SAY("core", "line %1 has %2 left, %3 asked for; nothing was written"),
                        {movement.line, left, std::to_string(-movement.delta)}},
                       1);
    return errorAt(
        path, "stock-short",
        {QS_SAY("core", "line %1 has %2 available, %3 held and %4 in quarantine, too few for this; "
                        "nothing was written"),
         {movement.line, left, held, quarantined}},
        1);
}

void Ledger::Inside::move(const std::string& site, const Entry& entry, std::int64_t position)
{
    auto& insert = inserts->movement;
    std::int64_t place = 0;
    for (const auto& movement : entry.movements) {
        const bool done =
            insert.tryRun({position, ++place, site, movement.line, std::int64_t{movement.delta},
                           movement.part, std::int64_t{movement.held}, std::int64_t{movement.quarantined}});
        insert.finish();
        if (done)
            continue;
        if (insert.failure().code == store_code::check)
            throw shortOf(site, movement);
        if (insert.failure().code == store_code::foreignKey)
            throw errorAt(path, "unknown-line",
                          {QS_SAY("core", "line %1 is not in the ledger of %2; nothing was written"),
                           {movement.line, site}},
                          3);
        throw storeError(path, insert.failure());
    }
}

void Ledger::Inside::keepTexts(const Entry& entry, const std::map<std::string, std::string>& salts,
                               std::int64_t position)
{
    for (const auto& [name, salt] : salts) {
        inserts->remark.run({position, name, Blob{salt}, entry.texts.at(name)});
        inserts->remark.finish();
    }
}

void Ledger::Inside::prepareCancel(Entry& entry)
{
    auto query =
        connection->prepare("SELECT payload, (SELECT count(*) FROM entry AS later WHERE later.cancels = "
                            "entry.id) FROM entry WHERE id = ?");
    query.run({Blob{idBytes(entry.cancels)}});
    const auto cancelled = query.next() ? readPayload(query.text(0)) : std::nullopt;
    const bool again = cancelled && query.whole(1) > 0;
    query.finish();
    if (!cancelled)
        throw errorAt(path, "entry-gone",
                      {QS_SAY("core", "there is no entry %1 to take back"), {entry.cancels}}, 3);
    if (again)
        throw errorAt(path, "entry-gone",
                      {QS_SAY("core", "entry %1 was taken back already"), {entry.cancels}}, 3);
    if (cancelled->entry.kind == EntryKind::enteredInError)
        throw errorAt(
            path, "entry-gone",
            {QS_SAY("core", "entry %1 takes back another one and cannot be taken back itself; enter "
                            "what happened anew"),
             {entry.cancels}},
            3);
    if (cancelled->entry.kind == EntryKind::opened || cancelled->entry.kind == EntryKind::exported)
        throw errorAt(path, "entry-gone",
                      {QS_SAY("core", "entry %1 is “%2” and stays; a wrong count is put right by counting"),
                       {entry.cancels, wordOf(cancelled->entry.kind)}},
                      3);
    if (!entry.movements.empty())
        return;
    entry.movements = turnedRound(cancelled->entry.movements);
}

void Ledger::Inside::write(const std::string& site, Entry& entry)
{
    if (const auto objection = objectionTo(entry))
        throw errorAt(path, "entry-form", *objection, 3);
    if (!entry.cancels.empty())
        prepareCancel(entry);
    auto& last = statements->lastOfStation;
    last.run({stationKey});
    std::string before = chainStart();
    entry.number = 1;
    if (last.next()) {
        entry.number = last.whole(0) + 1;
        before = last.bytes(1);
        ids.startAfter(last.bytes(2));
    }
    last.finish();
    if (entry.atMs == 0)
        entry.atMs = nowMs();
    const auto id = ids.next(nowMs());
    entry.id = idText(id);
    entry.site = site;
    std::erase_if(entry.texts, [](const auto& text) { return text.second.empty(); });
    PayloadEntry stored{entry, site, idText(stationId), {}};
    std::map<std::string, std::string> salts;
    for (auto& [name, words] : entry.texts) {
        words = validUtf8(words); // what is hashed is what will be read back
        salts[name] = randomSalt();
        stored.textHashes[name] = saltedHash(salts[name], words);
    }
    const auto payload = payloadOf(stored);
    const StoreValue cancels =
        entry.cancels.empty() ? StoreValue{} : StoreValue{Blob{idBytes(entry.cancels)}};
    auto& insert = inserts->entry;
    insert.run({Blob{id}, stationKey, entry.number, std::string(wordOf(entry.kind)), entry.atMs, entry.person,
                cancels, payload, Blob{chainHash(before, payload)}});
    const auto position = insert.next() ? insert.whole(0) : 0;
    insert.finish();
    move(site, entry, position);
    keepTexts(entry, salts, position);
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
    LedgerTransaction transaction(*inside_);
    inside_->write(site, entry);
    transaction.commit();
    return entry;
}

std::vector<Entry> Ledger::postAll(const std::string& site, std::vector<Entry> entries,
                                   std::optional<std::int64_t> expected)
{
    LedgerTransaction transaction(*inside_);
    if (expected)
        inside_->requirePosition(*expected);
    for (auto& entry : entries)
        inside_->write(site, entry);
    transaction.commit();
    return entries;
}

void Ledger::introduce(const std::string& site, const std::vector<Balance>& counts)
{
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
}

} // namespace quarterstep
