// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/connection.hpp"

#include "inventory/store/engine.hpp"

#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>

#include <atomic>
#include <chrono>

namespace quarterstep
{

namespace
{

StoreFailure failureOf(const StoreEngine& engine, const QSqlError& error)
{
    StoreFailure failure;
    failure.code = error.nativeErrorCode().toStdString();
    failure.text = error.text().toStdString();
    failure.kind = engine.kindOf(failure.code);
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

/// Runs `exec` of a query; repeats it while others hold the ledger and the engine has patience.
template <class Exec>
bool patiently(const StoreEngine& engine, QSqlQuery& query, const Exec& exec)
{
    using namespace std::chrono;
    if (exec())
        return true;
    const auto end = steady_clock::now() + milliseconds(engine.patienceMs());
    while (engine.kindOf(query.lastError().nativeErrorCode().toStdString()) == FailureKind::busy &&
           steady_clock::now() < end) {
        query.finish();
        if (exec())
            return true;
    }
    return false;
}

QSqlDatabase databaseOf(const std::string& handle)
{
    return QSqlDatabase::database(QString::fromStdString(handle), false);
}

} // namespace

struct Statement::Inside {
    std::string shown;
    const StoreEngine* engine = nullptr;
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
    if (patiently(*inside_->engine, inside_->query, [this] { return inside_->query.exec(); }))
        return true;
    inside_->failure = failureOf(*inside_->engine, inside_->query.lastError());
    inside_->query.finish();
    return false;
}

void Statement::run(std::initializer_list<StoreValue> values)
{
    if (!tryRun(values))
        throw storeError(inside_->shown, inside_->failure);
}

void Statement::run(const std::vector<StoreValue>& values)
{
    int place = 0;
    for (const auto& value : values)
        inside_->query.bindValue(place++, variantOf(value));
    run();
}

bool Statement::next()
{
    if (inside_->query.next())
        return true;
    if (inside_->query.lastError().isValid()) {
        inside_->failure = failureOf(*inside_->engine, inside_->query.lastError());
        inside_->query.finish();
        throw storeError(inside_->shown, inside_->failure);
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

/// Prepared once, where they are prepared at all.
struct Connection::Transactions {
    Statement beginWriting;
    Statement beginReading;
    Statement commit;
    Statement rollback;
};

Connection::Connection(const std::string& location, Access access, int busyMs)
    : engine_(StoreEngine::of(location)), shown_(engine_->shown())
{
    static std::atomic<unsigned> count{0};
    handle_ = "ledger " + std::to_string(++count);
    const auto driver = QString::fromLatin1(engine_->driver());
    if (!QSqlDatabase::isDriverAvailable(driver))
        throw errorAt(
            shown_, "ledger-failed",
            {QS_SAY("core", "the database driver of Qt is missing; install %1"), {engine_->package()}}, 4);
    auto database = QSqlDatabase::addDatabase(driver, QString::fromStdString(handle_));
    if (engine_->open(handle_, access, busyMs)) {
        if (engine_->preparesTransactions())
            transactions_ = std::make_unique<Transactions>(
                Transactions{prepare(engine_->beginWriting()), prepare(engine_->beginReading()),
                             prepare("COMMIT"), prepare("ROLLBACK")});
        return;
    }
    auto failure = failureOf(*engine_, database.lastError());
    if (failure.kind == FailureKind::lost)
        failure.kind = FailureKind::unreachable;
    const auto error = storeError(shown_, failure);
    database = QSqlDatabase();
    QSqlDatabase::removeDatabase(QString::fromStdString(handle_));
    throw error;
}

void Connection::setPatience(int ms)
{
    engine_->setPatience(ms);
}

Connection::~Connection()
{
    transactions_.reset();
    databaseOf(handle_).close();
    QSqlDatabase::removeDatabase(QString::fromStdString(handle_));
}

Statement Connection::prepare(const char* sql)
{
    auto inside = std::make_unique<Statement::Inside>(
        Statement::Inside{shown_, engine_.get(), QSqlQuery(databaseOf(handle_)), {}});
    inside->query.setForwardOnly(engine_->readsRowByRow());
    if (!inside->query.prepare(QString::fromUtf8(sql)))
        throw storeError(shown_, failureOf(*engine_, inside->query.lastError()));
    return Statement(std::move(inside));
}

void Connection::execute(const std::string& sql)
{
    QSqlQuery query(databaseOf(handle_));
    bool done = patiently(*engine_, query, [&] { return query.exec(QString::fromStdString(sql)); });
    while (done && query.nextResult()) { // of several statements in one text each has its own
    }
    done = done && !query.lastError().isValid();
    if (!done)
        throw storeError(shown_, failureOf(*engine_, query.lastError()));
}

std::int64_t Connection::wholeOf(const std::string& sql)
{
    QSqlQuery query(databaseOf(handle_));
    if (!patiently(*engine_, query, [&] { return query.exec(QString::fromStdString(sql)); }))
        throw storeError(shown_, failureOf(*engine_, query.lastError()));
    return query.next() ? query.value(0).toLongLong() : 0;
}

std::string Connection::textOf(const std::string& sql)
{
    QSqlQuery query(databaseOf(handle_));
    if (!patiently(*engine_, query, [&] { return query.exec(QString::fromStdString(sql)); }))
        throw storeError(shown_, failureOf(*engine_, query.lastError()));
    return query.next() ? query.value(0).toString().toStdString() : std::string();
}

std::string Connection::damage()
{
    return engine_->damage(*this);
}

void Connection::beginWriting()
{
    if (!transactions_) {
        try {
            return execute(engine_->beginWriting());
        } catch (const StoreError&) {
            rollback(); // it began, but the lock was not to be had
            throw;
        }
    }
    transactions_->beginWriting.run();
    transactions_->beginWriting.finish();
}

void Connection::beginReading()
{
    if (!transactions_)
        return execute(engine_->beginReading());
    transactions_->beginReading.run();
    transactions_->beginReading.finish();
}

void Connection::commit()
{
    if (!transactions_) {
        auto database = databaseOf(handle_);
        if (!database.commit())
            throw storeError(shown_, failureOf(*engine_, database.lastError()));
        return;
    }
    const bool done = transactions_->commit.tryRun();
    transactions_->commit.finish();
    if (!done)
        throw storeError(shown_, transactions_->commit.failure());
}

void Connection::rollback() noexcept
{
    if (!transactions_) {
        if (auto database = databaseOf(handle_); database.isOpen())
            (void)database.rollback();
        return;
    }
    (void)transactions_->rollback.tryRun();
    transactions_->rollback.finish();
}

} // namespace quarterstep
