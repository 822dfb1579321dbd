// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/shared_ledger.hpp"

#include "inventory/store/engine.hpp"
#include "inventory/store/migrations.hpp"
#include "inventory/store/schema.hpp"

#include <QUrl>
#include <QUrlQuery>

#include <algorithm>

namespace quarterstep
{

namespace
{

Error badAddress(const std::string& shown, const std::string& what)
{
    return errorAt(shown, "ledger-address",
                   {QS_SAY("core", "this is not the address of a shared ledger (%1); write "
                                   "postgresql://LOGIN@HOST:PORT/DATABASE"),
                    {what}},
                   3);
}

/// What may follow the question mark; the rest is set by the program.
bool isKnownOption(const QString& name)
{
    static const char* const known[] = {"sslmode", "sslrootcert", "sslcert", "sslkey", "connect_timeout"};
    return std::any_of(std::begin(known), std::end(known),
                       [&](const char* each) { return name == QLatin1String(each); });
}

} // namespace

LedgerAddress readLedgerAddress(const std::string& location)
{
    const QUrl url(QString::fromStdString(location), QUrl::StrictMode);
    LedgerAddress address;
    address.location = location;
    address.shown = url.toString(QUrl::RemovePassword | QUrl::RemoveQuery).toStdString();
    if (!isSharedLedger(location))
        throw badAddress(address.shown, "no postgresql://");
    if (!url.isValid())
        throw badAddress(location.substr(0, location.find(':') + 3), url.errorString().toStdString());
    const QUrlQuery query(url);
    if (!url.password().isEmpty() || query.hasQueryItem(QStringLiteral("password")))
        throw errorAt(
            address.shown, "ledger-password",
            {QS_SAY("core", "a password stands in the address, and stock.yaml is carried about and copied; "
                            "write it to ~/.pgpass (read by you alone) and take it out of the address"),
             {}},
            3);
    address.login = url.userName(QUrl::FullyDecoded).toStdString();
    address.host = url.host().toStdString();
    address.port = url.port(0);
    address.database = url.path(QUrl::FullyDecoded).mid(1).toStdString();
    if (address.database.empty() || address.database.find('/') != std::string::npos)
        throw badAddress(address.shown, "no database");
    bool timeout = false;
    for (const auto& [name, value] : query.queryItems(QUrl::FullyDecoded)) {
        if (name == QLatin1String("host"))
            address.host = value.toStdString();
        else if (isKnownOption(name))
            address.options.emplace_back(name.toStdString(), value.toStdString());
        else
            throw badAddress(address.shown, name.toStdString());
        timeout = timeout || name == QLatin1String("connect_timeout");
    }
    if (!timeout)
        address.options.emplace_back("connect_timeout", "5");
    return address;
}

std::string_view sharedLedgerScript()
{
    return postgresqlSchema();
}

void setUpSharedLedger(const std::string& address)
{
    (void)readLedgerAddress(address); // anything else would be taken for a file
    Connection connection(address, Connection::Access::readWrite, 2000);
    connection.beginWriting();
    try {
        if (connection.engine().state(connection) != LedgerState::empty)
            throw errorAt(
                connection.name(), "ledger-exists",
                {QS_SAY("core", "there is a ledger in this database already; nothing was changed"), {}}, 3);
        runScript(connection, postgresqlSchema());
        connection.commit();
    } catch (...) {
        connection.rollback();
        throw;
    }
}

} // namespace quarterstep
