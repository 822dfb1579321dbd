// SPDX-License-Identifier: GPL-3.0-or-later
// The only file that sees the SQL library.
#include "inventory/store/sql_link.hpp"

#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>

#include <atomic>

namespace quarterstep
{

namespace
{

StoreFailure failureIn(const QSqlError& error)
{
    StoreFailure failure;
    failure.code = error.nativeErrorCode().toStdString();
    // The server says more in further lines, and the driver its name; a finding is one line.
    const auto said = error.databaseText().isEmpty() ? error.text() : error.databaseText();
    failure.text = said.section(QLatin1Char('\n'), 0, 0).trimmed().toStdString();
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

class SqlStatement : public LinkStatement
{
  public:
    explicit SqlStatement(QSqlQuery query) : query_(std::move(query)) {}

    bool run(const StoreValue* values, std::size_t count) override
    {
        failure_.reset();
        for (std::size_t i = 0; i < count; ++i)
            query_.bindValue(static_cast<int>(i), variantOf(values[i]));
        if (query_.exec())
            return true;
        failure_ = failureIn(query_.lastError());
        query_.finish();
        return false;
    }

    bool next() override
    {
        if (query_.next())
            return true;
        if (query_.lastError().isValid()) {
            failure_ = failureIn(query_.lastError());
            query_.finish();
        }
        return false;
    }

    void finish() override { query_.finish(); }

    [[nodiscard]] std::int64_t whole(int column) const override { return query_.value(column).toLongLong(); }
    [[nodiscard]] std::string text(int column) const override
    {
        return query_.value(column).toString().toStdString();
    }
    [[nodiscard]] std::string bytes(int column) const override
    {
        return query_.value(column).toByteArray().toStdString();
    }
    [[nodiscard]] bool isNull(int column) const override { return query_.isNull(column); }
    [[nodiscard]] const std::optional<StoreFailure>& failure() const override { return failure_; }

  private:
    QSqlQuery query_;
    std::optional<StoreFailure> failure_;
};

class SqlLink : public StoreLink
{
  public:
    explicit SqlLink(QString handle) : handle_(std::move(handle)) {}
    SqlLink(const SqlLink&) = delete;
    SqlLink& operator=(const SqlLink&) = delete;
    ~SqlLink() override
    {
        database().close();
        QSqlDatabase::removeDatabase(handle_);
    }

    std::unique_ptr<LinkStatement> prepare(const std::string& sql) override
    {
        QSqlQuery query(database());
        if (query.prepare(QString::fromStdString(sql)))
            return std::make_unique<SqlStatement>(std::move(query));
        failure_ = failureIn(query.lastError());
        return nullptr;
    }

    std::unique_ptr<LinkStatement> ask(const std::string& sql) override
    {
        QSqlQuery query(database());
        if (query.exec(QString::fromStdString(sql)))
            return std::make_unique<SqlStatement>(std::move(query));
        failure_ = failureIn(query.lastError());
        return nullptr;
    }

    bool execute(const std::string& sql) override
    {
        QSqlQuery query(database());
        const bool done = query.exec(QString::fromStdString(sql));
        while (done && query.nextResult()) { // of several statements in one text each has its own
        }
        if (done && !query.lastError().isValid())
            return true;
        failure_ = failureIn(query.lastError());
        return false;
    }

    bool commit() override
    {
        auto used = database(); // only so the driver says that a COMMIT rolled back
        if (used.commit())
            return true;
        failure_ = failureIn(used.lastError());
        return false;
    }

    void rollback() noexcept override
    {
        if (auto used = database(); used.isOpen())
            (void)used.rollback();
    }

    [[nodiscard]] const StoreFailure& failure() const override { return failure_; }

  private:
    [[nodiscard]] QSqlDatabase database() const { return QSqlDatabase::database(handle_, false); }

    QString handle_;
    StoreFailure failure_;
};

} // namespace

std::unique_ptr<StoreLink> openSqlLink(const char* driver, const char* package, const std::string& shown,
                                       const SqlAccess& access, StoreFailure& failure)
{
    static std::atomic<unsigned> count{0};
    const auto name = QString::fromLatin1(driver);
    if (!QSqlDatabase::isDriverAvailable(name))
        throw errorAt(shown, "ledger-failed",
                      {QS_SAY("core", "the database driver of Qt is missing; install %1"), {package}}, 4);
    const auto handle = QStringLiteral("ledger %1").arg(++count);
    auto database = QSqlDatabase::addDatabase(name, handle);
    auto link = std::make_unique<SqlLink>(handle);
    database.setUserName(QString::fromStdString(access.login));
    database.setHostName(QString::fromStdString(access.host));
    if (access.port != 0)
        database.setPort(access.port);
    database.setDatabaseName(QString::fromStdString(access.database));
    database.setConnectOptions(QString::fromStdString(access.options));
    if (database.open())
        return link;
    failure = failureIn(database.lastError());
    database = QSqlDatabase(); // nothing may hold it when it is removed
    return nullptr;
}

} // namespace quarterstep
