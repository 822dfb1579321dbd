// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/connection.hpp"

#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QUrl>
#include <QVariant>

#include <atomic>

namespace quarterstep
{

namespace
{

/// Primary result codes of SQLite (sqlite3.h), the low byte of what the driver reports.
enum Primary {
    busy = 5,
    locked = 6,
    readOnlyFile = 8,
    inputOutput = 10,
    corrupt = 11,
    full = 13,
    cantOpen = 14,
    notADatabase = 26
};

StoreFailure failureOf(const QSqlError& error)
{
    StoreFailure failure;
    bool numeric = false;
    failure.code = error.nativeErrorCode().toInt(&numeric);
    if (!numeric || failure.code == 0)
        failure.code = 1; // the driver itself failed: SQLITE_ERROR
    failure.text = error.text().toStdString();
    return failure;
}

QVariant variantOf(const StoreValue& value)
{
    if (const auto* whole = std::get_if<std::int64_t>(&value))
        return QVariant(static_cast<qlonglong>(*whole));
    if (const auto* text = std::get_if<std::string>(&value)) {
        const auto converted = QString::fromStdString(*text);
        return converted.isNull() ? QVariant(QStringLiteral("")) : QVariant(converted); // a null text is NULL
    }
    if (const auto* blob = std::get_if<Blob>(&value))
        return QVariant(QByteArray::fromStdString(blob->bytes));
    return QVariant();
}

QString uriOf(const std::string& path, Connection::Access access)
{
    const char* modes[] = {"?mode=ro", "?mode=rw", "?mode=ro&immutable=1"};
    const auto url =
        QUrl::fromLocalFile(QString::fromStdString(path)).toEncoded(); // space, %, #, ? and beyond
    return QString::fromLatin1(url + modes[static_cast<std::size_t>(access)]);
}

} // namespace

struct Statement::Inside {
    std::string path;
    QSqlQuery query;
    StoreFailure failure;
};

Statement::Statement(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Statement::Statement(Statement&&) noexcept = default;
Statement& Statement::operator=(Statement&&) noexcept = default;
Statement::~Statement() = default;

bool Statement::tryRun(std::initializer_list<StoreValue> values)
{
    int place = 0;
    for (const auto& value : values)
        inside_->query.bindValue(place++, variantOf(value));
    if (inside_->query.exec())
        return true;
    inside_->failure = failureOf(inside_->query.lastError());
    inside_->query.finish();
    return false;
}

void Statement::run(std::initializer_list<StoreValue> values)
{
    if (!tryRun(values))
        throw storeError(inside_->path, inside_->failure);
}

bool Statement::next()
{
    if (inside_->query.next())
        return true;
    if (inside_->query.lastError().isValid()) {
        inside_->failure = failureOf(inside_->query.lastError());
        inside_->query.finish();
        throw storeError(inside_->path, inside_->failure);
    }
    return false;
}

void Statement::finish()
{
    inside_->query.finish();
}

std::int64_t Statement::whole(int column) const
{
    return inside_->query.value(column).toLongLong();
}

std::string Statement::text(int column) const
{
    return inside_->query.value(column).toString().toStdString();
}

std::string Statement::bytes(int column) const
{
    return inside_->query.value(column).toByteArray().toStdString();
}

bool Statement::isNull(int column) const
{
    return inside_->query.isNull(column);
}

const StoreFailure& Statement::failure() const
{
    return inside_->failure;
}

Connection::Connection(const std::string& path, Access access, int busyMs) : path_(path)
{
    static std::atomic<unsigned> count{0};
    name_ = "ledger " + std::to_string(++count);
    if (!QSqlDatabase::isDriverAvailable(QStringLiteral("QSQLITE")))
        throw errorAt(path, "ledger-failed",
                      {QS_SAY("core", "the SQLite driver of Qt is missing; install libqt6sql6-sqlite"), {}},
                      4);
    auto database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QString::fromStdString(name_));
    database.setConnectOptions(QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=%1").arg(busyMs));
    database.setDatabaseName(uriOf(path, access));
    if (database.open())
        return;
    const auto error = storeError(path, failureOf(database.lastError()));
    database = QSqlDatabase();
    QSqlDatabase::removeDatabase(QString::fromStdString(name_));
    throw error;
}

Connection::~Connection()
{
    QSqlDatabase::database(QString::fromStdString(name_), false).close();
    QSqlDatabase::removeDatabase(QString::fromStdString(name_));
}

Statement Connection::prepare(const char* sql)
{
    auto inside = std::make_unique<Statement::Inside>(Statement::Inside{
        path_, QSqlQuery(QSqlDatabase::database(QString::fromStdString(name_), false)), {}});
    inside->query.setForwardOnly(true);
    if (!inside->query.prepare(QString::fromUtf8(sql)))
        throw storeError(path_, failureOf(inside->query.lastError()));
    return Statement(std::move(inside));
}

void Connection::execute(const std::string& sql)
{
    auto statement = prepare(sql.c_str());
    statement.run();
    statement.finish();
}

std::int64_t Connection::wholeOf(const std::string& sql)
{
    auto statement = prepare(sql.c_str());
    statement.run();
    const auto value = statement.next() ? statement.whole(0) : 0;
    statement.finish();
    return value;
}

std::string Connection::textOf(const std::string& sql)
{
    auto statement = prepare(sql.c_str());
    statement.run();
    const auto value = statement.next() ? statement.text(0) : std::string();
    statement.finish();
    return value;
}

std::string Connection::damage()
{
    const auto said = textOf("PRAGMA integrity_check(1)");
    return said == "ok" ? std::string() : said;
}

Error storeError(const std::string& path, const StoreFailure& failure)
{
    switch (failure.code & 0xff) {
    case busy:
    case locked:
        return errorAt(path, "ledger-locked",
                       {QS_SAY("core", "another program holds the ledger; nothing was written; close it "
                                       "there and repeat"),
                        {}},
                       4);
    case readOnlyFile:
    case cantOpen:
        return errorAt(path, "ledger-unwritable",
                       {QS_SAY("core", "the ledger cannot be opened for writing here; check the rights of "
                                       "the file and its folder"),
                        {}},
                       4);
    case full:
        return errorAt(path, "ledger-full",
                       {QS_SAY("core", "the disk is full; nothing was written; make room and repeat"), {}},
                       4);
    case corrupt:
    case notADatabase:
        return errorAt(path, "ledger-not-a-database",
                       {QS_SAY("core", "this is not a ledger, or it is damaged (%1); put back the latest "
                                       "copy of the camp folder"),
                        {failure.text}},
                       3);
    default:
        return errorAt(path, "ledger-failed",
                       {QS_SAY("core", "the ledger failed: %1 (code %2); nothing was written"),
                        {failure.text, std::to_string(failure.code)}},
                       4);
    }
}

} // namespace quarterstep
