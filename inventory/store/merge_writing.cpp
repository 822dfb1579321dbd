// SPDX-License-Identifier: GPL-3.0-or-later
// What a merge writes: entries with their movements and words, and what was forgotten there.
#include "inventory/store/merge_work.hpp"

namespace quarterstep
{

void LedgerMerge::insert(std::size_t index)
{
    const auto& step = steps_[index];
    const auto& stored = incoming_[index];
    for (const auto& movement : step.movements)
        makeLine(step.site, movement.line);
    auto& entry = into_.inserts->entry;
    entry.run({Blob{stored.idBytes}, keyOf(step.station), step.number, stored.kind, step.atMs, stored.person,
               stored.cancelsBytes.empty() ? StoreValue{} : StoreValue{Blob{stored.cancelsBytes}},
               stored.payload, Blob{stored.hash}});
    const auto position = entry.next() ? entry.whole(0) : 0;
    entry.finish();
    Entry moved;
    moved.movements = step.movements;
    into_.move(step.site, moved, position);
    for (const auto& text : textsOf(stored.position)) {
        into_.inserts->remark.run({position, text.name,
                                   text.blank ? StoreValue{} : StoreValue{Blob{text.salt}},
                                   text.blank ? StoreValue{} : StoreValue{text.words}});
        into_.inserts->remark.finish();
    }
}

void LedgerMerge::makeLine(const std::string& site, const std::string& line)
{
    if (!lines_.insert({site, line}).second)
        return;
    auto& count = into_.statements->countOf;
    count.run({site, line});
    const bool known = count.next();
    count.finish();
    if (known)
        return;
    into_.inserts->line.run({site, line});
    into_.inserts->line.finish();
}

std::int64_t LedgerMerge::keyOf(const std::string& station)
{
    if (const auto found = keys_.find(station); found != keys_.end())
        return found->second;
    for (const char* sql :
         {"INSERT INTO station (id, own, machine, volume, folder) VALUES (?, 0, '', '', '') "
          "ON CONFLICT (id) DO NOTHING",
          "SELECT key FROM station WHERE id = ?"}) {
        auto statement = ours_.prepare(sql);
        statement.run({Blob{idBytes(station)}});
        if (statement.next())
            keys_[station] = statement.whole(0);
        statement.finish();
    }
    return keys_.at(station);
}

std::vector<IncomingText> LedgerMerge::textsOf(std::int64_t position)
{
    if (!texts_)
        texts_.emplace(theirs_.prepare("SELECT name, salt, words FROM remark WHERE entry = ? ORDER BY name"));
    auto& query = *texts_;
    query.run({position});
    std::vector<IncomingText> texts;
    while (query.next())
        texts.push_back({query.text(0), query.bytes(1), query.text(2), query.isNull(2)});
    query.finish();
    return texts;
}

void LedgerMerge::blankForgotten()
{
    auto forgotten = theirs_.prepare("SELECT entry.id, name FROM remark JOIN entry ON entry.position = "
                                     "remark.entry WHERE words IS NULL");
    auto blank =
        ours_.prepare("UPDATE remark SET salt = NULL, words = NULL WHERE words IS NOT NULL AND name = ? "
                      "AND entry = (SELECT position FROM entry WHERE id = ?) RETURNING 1");
    forgotten.run();
    while (forgotten.next()) {
        blank.run({forgotten.text(1), Blob{forgotten.bytes(0)}});
        report_.blanked += blank.next() ? 1 : 0;
        blank.finish();
    }
    forgotten.finish();
}

} // namespace quarterstep
