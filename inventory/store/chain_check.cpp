// SPDX-License-Identifier: GPL-3.0-or-later
// Walks a ledger once: hashes, numbers, typed columns against payloads, counts against movements.
#include "inventory/store/ledger_inside.hpp"
#include "inventory/store/payload.hpp"

#include <map>

namespace quarterstep
{

namespace
{

/// Where the chain of one station stands.
struct Link {
    std::int64_t number = 0;
    std::string hash = chainStart();
};

/// Rows of `movement` in the order of their entries, read beside the entries.
class MovementRows
{
  public:
    MovementRows(Connection& connection, std::int64_t after)
        : query_(connection.prepare("SELECT entry, site, line, delta, part, held, quarantined FROM movement "
                                    "WHERE entry > ? ORDER BY entry, place"))
    {
        query_.run({after});
        more_ = query_.next();
    }

    /// Whether the rows of this entry are exactly those of its payload.
    [[nodiscard]] bool match(std::int64_t position, const PayloadEntry& stored)
    {
        std::size_t seen = 0;
        bool same = true;
        for (; more_ && query_.whole(0) <= position; more_ = query_.next(), ++seen) {
            const Movement row{query_.text(2), static_cast<int>(query_.whole(3)), query_.text(4),
                               static_cast<int>(query_.whole(5)), static_cast<int>(query_.whole(6))};
            const auto& expected = stored.entry.movements;
            same = same && query_.whole(0) == position && query_.text(1) == stored.site &&
                   seen < expected.size() && row == expected[seen];
        }
        return same && seen == stored.entry.movements.size();
    }

    void finish() { query_.finish(); }

  private:
    Statement query_;
    bool more_ = false;
};

/// Rows of `remark` in the order of their entries, read beside the entries.
class RemarkHashes
{
  public:
    RemarkHashes(Connection& connection, std::int64_t after)
        : query_(connection.prepare(
              "SELECT entry, name, salt, words FROM remark WHERE entry > ? ORDER BY entry, name"))
    {
        query_.run({after});
        more_ = query_.next();
    }

    /// Whether each text of the payload has its row, and words that are still there have their hash.
    [[nodiscard]] bool match(std::int64_t position, const PayloadEntry& stored)
    {
        std::size_t seen = 0;
        bool same = true;
        for (; more_ && query_.whole(0) <= position; more_ = query_.next(), ++seen) {
            const auto expected = stored.textHashes.find(query_.text(1));
            same = same && query_.whole(0) == position && expected != stored.textHashes.end() &&
                   (query_.isNull(3) || saltedHash(query_.bytes(2), query_.text(3)) == expected->second);
        }
        return same && seen == stored.textHashes.size();
    }

    void finish() { query_.finish(); }

  private:
    Statement query_;
    bool more_ = false;
};

/// What stands beside the entries.
struct Beside {
    MovementRows movements;
    RemarkHashes remarks;
    Beside(Connection& connection, std::int64_t after)
        : movements(connection, after), remarks(connection, after)
    {
    }
};

const char* columnsDiffer(const Statement& row, const Entry& entry, bool movementsMatch)
{
    if (idText(row.bytes(1)) != entry.id || row.whole(3) != entry.number)
        return "id or number is not that of the stored text";
    if (row.text(4) != wordOf(entry.kind) || row.whole(5) != entry.atMs || row.text(6) != entry.person)
        return "kind, time or person is not that of the stored text";
    if (idText(row.bytes(7)) != entry.cancels)
        return "the entry taken back is not that of the stored text";
    return movementsMatch ? nullptr : "movements are not those of the stored text";
}

/// What is wrong with one row, nullptr when nothing is; moves the link on.
const char* faultOf(const Statement& row, Link& link, Beside& beside, const std::string& station)
{
    const auto payload = row.text(8);
    const auto hash = row.bytes(9);
    const auto expected = chainHash(link.hash, payload);
    const bool follows = row.whole(3) == link.number + 1;
    link.number = row.whole(3);
    link.hash = hash;
    if (!follows)
        return "an entry before this one is missing";
    if (hash != expected)
        return "the stored text or an entry before it was changed";
    const auto stored = readPayload(payload);
    if (!stored || stored->station != station)
        return "the stored text cannot be read";
    if (const auto* fault = columnsDiffer(row, stored->entry, beside.movements.match(row.whole(0), *stored)))
        return fault;
    return beside.remarks.match(row.whole(0), *stored) ? nullptr
                                                       : "a reason or note is not as it was written";
}

std::string countsDiffer(Connection& connection)
{
    return connection.textOf(
        "SELECT balance.line FROM balance LEFT JOIN (SELECT site, line, sum(delta) AS moved, sum(held) AS "
        "held, sum(quarantined) AS quarantined FROM movement GROUP BY site, line) AS sums ON sums.site = "
        "balance.site AND sums.line = balance.line WHERE balance.on_hand <> coalesce(sums.moved, 0) OR "
        "balance.held <> coalesce(sums.held, 0) OR balance.quarantined <> coalesce(sums.quarantined, 0) "
        "ORDER BY balance.line LIMIT 1");
}

/// Where each station's chain stood at a position.
std::map<std::int64_t, Link> linksAt(Connection& connection, std::int64_t position)
{
    std::map<std::int64_t, Link> links;
    if (position == 0)
        return links;
    auto stations = connection.prepare("SELECT key FROM station");
    auto last = connection.prepare("SELECT number, hash FROM entry WHERE station = ? AND position <= ? "
                                   "ORDER BY number DESC LIMIT 1");
    stations.run();
    while (stations.next()) {
        last.run({stations.whole(0), position});
        if (last.next())
            links[stations.whole(0)] = {last.whole(0), last.bytes(1)};
        last.finish();
    }
    stations.finish();
    return links;
}

/// Walks the entries after a position; counts are not looked at.
ChainCheck walk(Connection& connection, std::int64_t after, const ChainWatch& watch = {})
{
    constexpr std::int64_t tellEach = 256; // entries between two words of progress
    ChainCheck check;
    auto links = linksAt(connection, after);
    std::string badStation;
    {
        Beside beside(connection, after);
        auto rows =
            connection.prepare("SELECT position, entry.id, station, number, kind, at_ms, person, cancels, "
                               "payload, hash, station.id FROM entry JOIN station ON station.key = "
                               "entry.station WHERE position > ? ORDER BY position");
        rows.run({after});
        while (rows.next()) {
            if (++check.checked % tellEach == 0 && watch)
                watch(check.checked);
            const auto* fault = faultOf(rows, links[rows.whole(2)], beside, idText(rows.bytes(10)));
            if (fault != nullptr && check.ok) {
                check.ok = false;
                check.firstBad = rows.whole(3);
                check.badPosition = rows.whole(0);
                check.what = fault;
                badStation = idText(rows.bytes(10));
            }
        }
        rows.finish();
        beside.movements.finish();
        beside.remarks.finish();
    }
    if (!check.ok && links.size() > 1)
        check.what += ", station " + badStation;
    return check;
}

} // namespace

ChainCheck Ledger::checkChain(const ChainWatch& watch) const
{
    auto& connection = inside_->live();
    const ReadTransaction transaction(connection);
    auto check = walk(connection, 0, watch);
    check.entries = check.checked;
    if (const auto line = check.ok ? countsDiffer(connection) : std::string(); !line.empty()) {
        check.ok = false;
        check.what = "the count of line " + line + " is not the sum of its movements";
    }
    if (const auto damage = check.ok ? connection.damage() : std::string(); !damage.empty()) {
        check.ok = false;
        check.what = "the file is damaged beside the entries (" + damage + ")";
    }
    return check;
}

ChainCheck Ledger::checkRecent(std::int64_t most) const
{
    auto& connection = inside_->live();
    const ReadTransaction transaction(connection);
    const auto entries = position(); // entries are never removed: positions have no gap
    auto check = walk(connection, std::max<std::int64_t>(0, entries - most));
    check.entries = entries;
    return check;
}

} // namespace quarterstep
