// SPDX-License-Identifier: GPL-3.0-or-later
// The entries a ledger answers with, and their words.
#include "inventory/store/ledger_inside.hpp"
#include "inventory/store/payload.hpp"

namespace quarterstep
{

namespace
{

Entry entryIn(const Statement& row, int column, const std::string& path)
{
    auto stored = readPayload(row.text(column));
    if (!stored)
        throw errorAt(
            path, "ledger-not-a-database",
            {QS_SAY("core", "an entry of this ledger cannot be read; check the chain and put back the "
                            "latest copy of the camp folder"),
             {}},
            3);
    return std::move(stored->entry);
}

/// Words that are still there, in the order of their entries, read beside the entries.
class RemarkRows
{
  public:
    RemarkRows(Connection& connection, std::int64_t after)
        : query_(connection.prepare("SELECT entry, name, words FROM remark WHERE entry > ? AND words IS NOT "
                                    "NULL ORDER BY entry, name"))
    {
        query_.run({after});
        more_ = query_.next();
    }

    void giveTo(std::map<std::string, std::string>& texts, std::int64_t position)
    {
        for (; more_ && query_.whole(0) <= position; more_ = query_.next())
            if (query_.whole(0) == position)
                texts[query_.text(1)] = query_.text(2);
    }
    void giveTo(Entry& entry, std::int64_t position) { giveTo(entry.texts, position); }

    void finish() { query_.finish(); }

  private:
    Statement query_;
    bool more_ = false;
};

/// Entries of a query for payload and position, each with its words.
std::vector<Entry> entriesIn(Connection& connection, Statement& query, const std::string& path)
{
    auto words = connection.prepare("SELECT name, words FROM remark WHERE entry = ? AND words IS NOT NULL");
    std::vector<Entry> entries;
    while (query.next()) {
        entries.push_back(entryIn(query, 0, path));
        words.run({query.whole(1)});
        while (words.next())
            entries.back().texts[words.text(0)] = words.text(1);
        words.finish();
    }
    query.finish();
    return entries;
}

} // namespace

std::vector<Entry> Ledger::entriesAfter(std::int64_t position) const
{
    return inside_->reading([&] {
        RemarkRows remarks(inside_->live(), position);
        auto query = inside_->live().prepare(
            "SELECT payload, position FROM entry WHERE position > ? ORDER BY position");
        query.run({position});
        std::vector<Entry> entries;
        while (query.next()) {
            entries.push_back(entryIn(query, 0, inside_->path));
            remarks.giveTo(entries.back(), query.whole(1));
        }
        query.finish();
        remarks.finish();
        return entries;
    });
}

std::vector<Entry> Ledger::entriesOfKinds(std::initializer_list<EntryKind> kinds) const
{
    std::string sql =
        "SELECT payload, position FROM entry WHERE kind <> 'handed-over' AND kind IN ('entered-in-error'";
    for (const auto kind : kinds)
        sql.append(", '").append(wordOf(kind)).append("'"); // words of ours, no text from outside
    auto query = inside_->live().prepare((sql + ") ORDER BY position").c_str());
    query.run();
    return entriesIn(inside_->live(), query, inside_->path);
}

std::vector<Entry> Ledger::entriesOfPerson(const std::string& code) const
{
    if (code.empty())
        return {};
    auto query = inside_->live().prepare(
        "SELECT payload, position FROM entry WHERE person <> '' AND person = ? ORDER BY position");
    query.run({code});
    return entriesIn(inside_->live(), query, inside_->path);
}

std::vector<Entry> Ledger::entriesHolding() const
{
    auto query =
        inside_->live().prepare("SELECT payload, position FROM entry WHERE position IN (SELECT entry FROM "
                                "movement WHERE held <> 0) ORDER BY position");
    query.run();
    return entriesIn(inside_->live(), query, inside_->path);
}

void Ledger::replay(const std::function<void(const Entry&)>& take) const
{
    auto query = inside_->live().prepare(
        "SELECT entry.position, id, kind, at_ms, person, cancels, line, delta, movement.held, "
        "movement.quarantined, "
        "site, CASE WHEN line IS NULL OR kind = 'counted' THEN payload END FROM entry LEFT JOIN movement ON "
        "movement.entry = entry.position ORDER BY entry.position, place");
    query.run();
    Entry entry;
    std::int64_t position = 0;
    while (query.next()) {
        if (query.whole(0) != position) {
            if (position != 0)
                take(entry);
            position = query.whole(0);
            entry = query.isNull(11) ? Entry{} : entryIn(query, 11, inside_->path);
            entry.movements.clear();
            entry.id = idText(query.bytes(1));
            entry.kind = entryKindFrom(query.text(2)).value_or(entry.kind);
            entry.atMs = query.whole(3);
            entry.person = query.text(4);
            entry.cancels = idText(query.bytes(5));
        }
        if (query.isNull(6))
            continue;
        entry.site = query.text(10);
        entry.movements.push_back({query.text(6), static_cast<int>(query.whole(7)), "",
                                   static_cast<int>(query.whole(8)), static_cast<int>(query.whole(9))});
    }
    query.finish();
    if (position != 0)
        take(entry);
}

void Ledger::eachStored(std::int64_t position, const std::function<bool(StoredEntry)>& take) const
{
    RemarkRows remarks(inside_->live(), position);
    auto query =
        inside_->live().prepare("SELECT payload, position FROM entry WHERE position > ? ORDER BY position");
    query.run({position});
    bool more = true;
    while (more && query.next()) {
        StoredEntry stored{query.whole(1), query.text(0), {}};
        remarks.giveTo(stored.texts, stored.position);
        more = take(std::move(stored));
    }
    query.finish();
    remarks.finish();
}

std::optional<Entry> entryFrom(const StoredEntry& stored)
{
    auto read = readPayload(stored.payload);
    if (!read)
        return std::nullopt;
    read->entry.texts = stored.texts;
    return std::move(read->entry);
}

std::set<std::string> Ledger::takenBackIds() const
{
    auto query = inside_->live().prepare("SELECT cancels FROM entry WHERE cancels IS NOT NULL");
    query.run();
    std::set<std::string> ids;
    while (query.next())
        ids.insert(idText(query.bytes(0)));
    query.finish();
    return ids;
}

std::optional<Entry> Ledger::lastOf(EntryKind kind) const
{
    auto query =
        inside_->live().prepare("SELECT payload FROM entry WHERE kind = ? ORDER BY position DESC LIMIT 1");
    query.run({std::string(wordOf(kind))});
    std::optional<Entry> found;
    if (query.next())
        found = entryIn(query, 0, inside_->path);
    query.finish();
    return found;
}

std::optional<Entry> Ledger::entry(const std::string& id) const
{
    return inside_->reading([&] {
        auto query = inside_->live().prepare("SELECT payload, position FROM entry WHERE id = ?");
        query.run({Blob{idBytes(id)}});
        std::optional<Entry> found;
        if (query.next()) {
            found = entryIn(query, 0, inside_->path);
            RemarkRows remarks(inside_->live(), query.whole(1) - 1);
            remarks.giveTo(*found, query.whole(1));
            remarks.finish();
        }
        query.finish();
        return found;
    });
}

std::vector<CardRow> Ledger::card(const std::string& site, const std::string& line) const
{
    return inside_->reading([&] {
        RemarkRows remarks(inside_->live(), 0);
        auto query = inside_->live().prepare("SELECT payload, position, delta, part, held, quarantined FROM "
                                             "movement JOIN entry ON entry.position = "
                                             "movement.entry WHERE movement.site = ? AND movement.line = ? "
                                             "ORDER BY movement.entry, movement.place");
        query.run({site, line});
        std::vector<CardRow> rows;
        std::int64_t balance = 0;
        while (query.next()) {
            CardRow row;
            row.position = query.whole(1);
            row.entry = entryIn(query, 0, inside_->path);
            remarks.giveTo(row.entry, row.position);
            if (!rows.empty() && rows.back().position == row.position) // the same line twice in one entry
                row.entry.texts = rows.back().entry.texts;
            row.movement = {line, static_cast<int>(query.whole(2)), query.text(3),
                            static_cast<int>(query.whole(4)), static_cast<int>(query.whole(5))};
            balance += row.movement.delta;
            row.balance = balance;
            rows.push_back(std::move(row));
        }
        query.finish();
        remarks.finish();
        return rows;
    });
}

} // namespace quarterstep
