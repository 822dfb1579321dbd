// SPDX-License-Identifier: GPL-3.0-or-later
// Persons and the words about them stand beside the chain, so that both can go while every hash stays.
#include "inventory/store/ledger_inside.hpp"

namespace quarterstep
{

namespace
{

/// First column of the first row of a statement with one text to bind.
std::int64_t countWith(Connection& connection, const char* sql, const std::string& text)
{
    auto query = connection.prepare(sql);
    query.run({text});
    const auto count = query.next() ? query.whole(0) : 0;
    query.finish();
    return count;
}

} // namespace

void Ledger::putPersons(const std::vector<LedgerPerson>& persons)
{
    LedgerTransaction transaction(*inside_);
    auto put = inside_->live().prepare("INSERT INTO person (code, name) VALUES (?, ?) "
                                       "ON CONFLICT (code) DO UPDATE SET name = excluded.name");
    for (const auto& person : persons) {
        put.run({person.code, person.name});
        put.finish();
    }
    transaction.commit();
}

std::string Ledger::setting(const std::string& name) const
{
    auto query = inside_->live().prepare("SELECT value FROM setting WHERE name = ?");
    query.run({name});
    const auto value = query.next() ? query.text(0) : std::string();
    query.finish();
    return value;
}

void Ledger::setSetting(const std::string& name, const std::string& value)
{
    auto& connection = inside_->live();
    LedgerTransaction transaction(*inside_);
    auto change = value.empty()
                      ? connection.prepare("DELETE FROM setting WHERE name = ?")
                      : connection.prepare("INSERT INTO setting (name, value) VALUES (?, ?) "
                                           "ON CONFLICT (name) DO UPDATE SET value = excluded.value");
    if (value.empty())
        change.run({name});
    else
        change.run({name, value});
    change.finish();
    transaction.commit();
}

std::optional<LedgerPerson> Ledger::person(const std::string& code) const
{
    auto query = inside_->live().prepare("SELECT code, name FROM person WHERE code = ?");
    query.run({code});
    std::optional<LedgerPerson> found;
    if (query.next())
        found = LedgerPerson{query.text(0), query.text(1)};
    query.finish();
    return found;
}

Forgotten Ledger::toForget(const std::string& code) const
{
    auto& connection = inside_->live();
    Forgotten found;
    found.known = countWith(connection, "SELECT count(*) FROM person WHERE code = ?", code) > 0;
    found.texts = countWith(connection,
                            "SELECT count(*) FROM remark JOIN entry ON entry.position = remark.entry "
                            "WHERE entry.person = ? AND remark.words IS NOT NULL",
                            code);
    found.entries = countWith(connection, "SELECT count(*) FROM entry WHERE person = ?", code);
    found.older = countWith(connection, // a payload's keys are sorted: fields, id … texts
                            "SELECT count(*) FROM entry WHERE person = ? AND payload LIKE "
                            "'%\"fields\":{%\"reason\":\"%\"id\":\"%' AND payload NOT LIKE "
                            "'%\"fields\":{%\"reason\":\"\"%\"id\":\"%'",
                            code);
    return found;
}

Forgotten Ledger::forgetPerson(const std::string& code)
{
    auto& connection = inside_->live();
    inside_->engine().overwriteErased(connection);
    const auto found = toForget(code);
    LedgerTransaction transaction(*inside_);
    for (const char* sql :
         {"DELETE FROM person WHERE code = ?",
          "UPDATE remark SET salt = NULL, words = NULL WHERE words IS NOT NULL AND entry IN "
          "(SELECT position FROM entry WHERE person = ?)"}) {
        auto erase = connection.prepare(sql);
        erase.run({code});
        erase.finish();
    }
    transaction.commit();
    if (!inside_->engine().emptyJournal(connection))
        throw errorAt(inside_->path, "journal-held",
                      {QS_SAY("core", "the person is forgotten, but another program reads the ledger and old "
                                      "text stays in its journal; close it there and repeat"),
                       {}},
                      4);
    return found;
}

} // namespace quarterstep
