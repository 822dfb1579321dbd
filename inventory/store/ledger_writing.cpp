// SPDX-License-Identifier: GPL-3.0-or-later
// One entry and what belongs to it, inside a transaction.
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

} // namespace

Error Ledger::Inside::shortOf(const std::string& site, const Movement& movement)
{
    abandon(); // a server answers nothing more inside a transaction that failed
    auto& count = statements->countOf;
    count.run({site, movement.line});
    const bool known = count.next();
    Movement left{movement.line,
                  known ? static_cast<int>(count.whole(0)) : 0,
                  {},
                  known ? static_cast<int>(count.whole(1)) : 0,
                  known ? static_cast<int>(count.whole(2)) : 0};
    count.finish();
    for (const auto& [where, before] : done) { // what the same transaction had taken already
        if (where != site || before.line != movement.line)
            continue;
        left.delta += before.delta - before.held - before.quarantined;
        left.held += before.held;
        left.quarantined += before.quarantined;
    }
    if (movement.held == 0 && movement.quarantined == 0)
        return errorAt(path, "stock-short",
                       {QS_SAY("core", "line %1 has %2 left, %3 asked for; nothing was written"),
                        {movement.line, std::to_string(left.delta), std::to_string(-movement.delta)}},
                       1);
    return errorAt(
        path, "stock-short",
        {QS_SAY("core", "line %1 has %2 available, %3 held and %4 in quarantine, too few for this; "
                        "nothing was written"),
         {movement.line, std::to_string(left.delta), std::to_string(left.held),
          std::to_string(left.quarantined)}},
        1);
}

void Ledger::Inside::move(const std::string& site, const Entry& entry, std::int64_t position)
{
    auto& insert = inserts->movement;
    std::int64_t place = 0;
    for (const auto& movement : entry.movements) {
        const bool moves =
            insert.tryRun({position, ++place, site, movement.line, std::int64_t{movement.delta},
                           movement.part, std::int64_t{movement.held}, std::int64_t{movement.quarantined}});
        insert.finish();
        if (moves) {
            done.emplace_back(site, movement);
            continue;
        }
        if (insert.failure().kind == FailureKind::check)
            throw shortOf(site, movement);
        if (insert.failure().kind == FailureKind::foreignKey)
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
    if (entry.id.empty()) // one that is repeated keeps its id
        entry.id = idText(ids.next(nowMs()));
    const auto id = idBytes(entry.id);
    entry.site = site;
    std::erase_if(entry.texts, [](const auto& text) { return text.second.empty(); });
    PayloadEntry stored{std::move(entry), site, idText(stationId), {}}; // lent, not copied
    std::map<std::string, std::string> salts;
    for (auto& [name, words] : stored.entry.texts) {
        words = validUtf8(words); // what is hashed is what will be read back
        salts[name] = randomSalt();
        stored.textHashes[name] = saltedHash(salts[name], words);
    }
    const auto payload = payloadOf(stored);
    entry = std::move(stored.entry);
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

} // namespace quarterstep
