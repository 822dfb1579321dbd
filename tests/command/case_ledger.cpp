// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/command/case_ledger.hpp"

#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>

#include <functional>
#include <stdexcept>

namespace quarterstep::check
{
namespace
{

/// Opens the ledger for one piece of work and closes it again.
void inLedger(const std::string& path, const std::function<void(QSqlQuery&)>& work)
{
    const auto name = QStringLiteral("case-ledger");
    std::string failed;
    {
        auto ledger = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name);
        ledger.setDatabaseName(QString::fromStdString(path));
        if (!ledger.open())
            failed = ledger.lastError().text().toStdString();
        QSqlQuery query(ledger);
        if (failed.empty())
            work(query);
        if (query.lastError().isValid())
            failed = query.lastError().text().toStdString();
    }
    QSqlDatabase::removeDatabase(name);
    if (!failed.empty())
        throw std::runtime_error("the ledger of the case: " + failed);
}

} // namespace

std::string entryIdOf(const std::string& ledger, int number)
{
    std::string id;
    inLedger(ledger, [&](QSqlQuery& query) {
        if (query.exec(QStringLiteral("SELECT lower(hex(id)) FROM entry WHERE number = %1").arg(number)) &&
            query.next())
            id = query.value(0).toString().toStdString();
    });
    if (id.size() != 32)
        throw std::runtime_error("the ledger of the case has no entry " + std::to_string(number));
    for (const std::size_t at : {8U, 13U, 18U, 23U})
        id.insert(at, "-");
    return id;
}

std::string withEntries(std::string text, const std::string& ledger)
{
    const std::string mark = "{entry-";
    for (auto at = text.find(mark); at != std::string::npos; at = text.find(mark, at + 1)) {
        const auto end = text.find('}', at);
        text.replace(at, end + 1 - at, entryIdOf(ledger, std::stoi(text.substr(at + mark.size()))));
    }
    return text;
}

void rewriteEntry(const std::string& ledger, const std::string& from, const std::string& to)
{
    inLedger(ledger, [&](QSqlQuery& query) {
        if (!query.exec(QStringLiteral("SELECT sql FROM sqlite_schema WHERE name = 'entry_stays'")) ||
            !query.next())
            return;
        const auto rule = query.value(0).toString();
        query.finish();
        const auto change =
            QStringLiteral("UPDATE entry SET payload = replace(payload, '%1', '%2') WHERE position = "
                           "(SELECT min(position) FROM entry WHERE instr(payload, '%1') > 0)")
                .arg(QString::fromStdString(from), QString::fromStdString(to));
        if (query.exec(QStringLiteral("DROP TRIGGER entry_stays")) && query.exec(change)) {
            if (query.numRowsAffected() != 1)
                throw std::runtime_error("no entry of the case has the text " + from);
            query.exec(rule);
        }
    });
}

} // namespace quarterstep::check
