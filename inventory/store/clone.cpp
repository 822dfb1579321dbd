// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/clone.hpp"

#include "inventory/store/migrations.hpp"

#include <unistd.h>

namespace quarterstep
{

namespace
{

/// How one column is read and bound.
enum class Column { whole, text, bytes };

StoreValue valueIn(const Statement& row, int column, Column kind)
{
    if (row.isNull(column))
        return {};
    if (kind == Column::whole)
        return row.whole(column);
    if (kind == Column::text)
        return row.text(column);
    return Blob{row.bytes(column)};
}

/// A table to copy: what is read, what is written, and the kinds of its columns, at most nine of them.
struct Table {
    const char* read;
    const char* write;
    std::vector<Column> columns;
};

using enum Column;

/// In the order in which rows may point to each other. The counts of a line come from its movements.
const Table tables[] = {
    {"SELECT key, id FROM station",
     "INSERT INTO station (key, id, own, machine, volume, folder) VALUES (?, ?, 0, '', '', '')",
     {whole, bytes}},
    {"SELECT site, line FROM balance", "INSERT INTO balance (site, line) VALUES (?, ?)", {text, text}},
    {"SELECT position, id, station, number, kind, at_ms, person, cancels, payload, hash FROM entry ORDER BY "
     "position",
     "INSERT INTO entry (position, id, station, number, kind, at_ms, person, cancels, payload, hash) "
     "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
     {whole, bytes, whole, whole, text, whole, text, bytes, text, bytes}},
    {"SELECT entry, place, site, line, delta, part, held, quarantined FROM movement ORDER BY entry, place",
     "INSERT INTO movement (entry, place, site, line, delta, part, held, quarantined) VALUES (?, ?, ?, ?, ?, "
     "?, ?, ?)",
     {whole, whole, text, text, whole, text, whole, whole}},
    {"SELECT entry, name, salt, words FROM remark",
     "INSERT INTO remark (entry, name, salt, words) VALUES (?, ?, ?, ?)",
     {whole, text, bytes, text}},
    {"SELECT code, name FROM person", "INSERT INTO person (code, name) VALUES (?, ?)", {text, text}},
    {"SELECT name, value FROM setting", "INSERT INTO setting (name, value) VALUES (?, ?)", {text, text}}};

void copyTable(Connection& from, Connection& into, const Table& table)
{
    auto rows = from.prepare(table.read);
    auto insert = into.prepare(table.write);
    rows.run();
    std::vector<StoreValue> values;
    while (rows.next()) {
        values.clear();
        for (std::size_t i = 0; i < table.columns.size(); ++i)
            values.push_back(valueIn(rows, static_cast<int>(i), table.columns[i]));
        insert.run(values);
        insert.finish();
    }
    rows.finish();
}

void copyTables(Connection& from, Connection& into)
{
    if (into.wholeOf("SELECT count(*) FROM entry") != 0)
        throw errorAt(
            into.name(), "ledger-not-empty",
            {QS_SAY("core",
                    "there are entries in this ledger already; nothing was written; take them over with "
                    "`quarterstep import`, or name an empty ledger"),
             {}},
            3);
    for (const auto& table : tables)
        copyTable(from, into, table);
}

} // namespace

void cloneLedger(Connection& from, Connection& into)
{
    from.beginReading();
    try {
        into.beginWriting();
        try {
            copyTables(from, into);
            into.commit();
        } catch (...) {
            into.rollback();
            throw;
        }
    } catch (...) {
        from.rollback();
        throw;
    }
    from.rollback();
}

void cloneToFile(Connection& from, const std::string& target)
{
    makeFileForCopy(target);
    try {
        {
            Connection into(target, Connection::Access::readWrite, 2000);
            into.engine().settleToWrite(into, into.engine().state(into));
            into.execute(
                "UPDATE station SET machine = '', volume = '', folder = '', key = 0"); // lives nowhere yet
            cloneLedger(from, into);
        }
        syncFile(target);
    } catch (...) {
        for (const char* end : {"", "-wal", "-shm"})
            unlink((target + end).c_str());
        throw;
    }
}

} // namespace quarterstep
