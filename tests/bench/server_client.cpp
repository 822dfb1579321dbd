// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/server_client.hpp"

#include <QProcess>
#include <QRegularExpression>

#include <fstream>
#include <stdexcept>

namespace quarterstep::bench
{

namespace
{

/// The statements of ledger_transaction.cpp. The id is made by the server, since the client has no random
/// bytes; payload and hash are as long as those of the ledger. Variables of a client outlast its turns, and
/// so does what it prepared.
const char* const turn =
    R"(\set station :client_id + FIRST
\set line :turn % 8 + 65
\set turn :turn + 1
\if :ready = 0
PREPARE last (bigint) AS SELECT number, hash, id FROM entry WHERE station = $1 ORDER BY number DESC LIMIT 1;
PREPARE entry (bytea, bigint, bigint, text, bigint, text, bytea, text, bytea) AS INSERT INTO entry (id, station, number, kind, at_ms, person, cancels, payload, hash) VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9) RETURNING position;
PREPARE movement (bigint, bigint, text, text, bigint, text, bigint, bigint) AS INSERT INTO movement (entry, place, site, line, delta, part, held, quarantined) VALUES ($1, $2, $3, $4, $5, $6, $7, $8);
\set ready 1
\endif
BEGIN \; SELECT pg_advisory_xact_lock(1364413511);
EXECUTE last (:station) \gset
\set number :number + 1
EXECUTE entry (uuid_send(gen_random_uuid()), :station, :number, 'handed-over', 1700000000000, 'P-1', NULL, 'PAYLOAD', 'HASH') \gset
EXECUTE movement (:position, 1, 'Box', chr(:line), -1, 'pair', 0, 0);
COMMIT;
)";

std::string filledIn(std::string text, const std::string& name, const std::string& value)
{
    return text.replace(text.find(name), name.size(), value);
}

} // namespace

ServerClient::ServerClient(const test::TestServer& server, std::string database, int firstStation,
                           const std::string& payload, const std::string& folder)
    : server_(server), database_(std::move(database)), script_(folder + "/hand-over.sql")
{
    auto text = filledIn(turn, "FIRST", std::to_string(firstStation));
    text = filledIn(text, "PAYLOAD", payload);
    std::ofstream(script_) << filledIn(text, "HASH", "\\x" + std::string(64, 'a'));
}

double ServerClient::rate(int clients, std::size_t turns) const
{
    const auto text = [](const std::string& word) { return QString::fromStdString(word); };
    QProcess program;
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("PGOPTIONS"),
                       QStringLiteral("-c search_path=quarterstep -c synchronous_commit=on"));
    program.setProcessEnvironment(environment);
    program.setProcessChannelMode(QProcess::MergedChannels);
    const auto words =
        QStringLiteral(
            "-n -h 127.0.0.1 -U station -D ready=0 -D turn=0 -M simple -p %1 -c %2 -j %2 -t %3 -f %4 %5")
            .arg(server_.port())
            .arg(clients)
            .arg(turns)
            .arg(text(script_), text(database_));
    program.start(text(server_.programs() + "/pgbench"), words.split(QLatin1Char(' ')));
    program.waitForFinished(-1);
    const auto said = program.readAll();
    static const QRegularExpression rate(
        QStringLiteral("tps = ([0-9.]+) \\(without initial connection time\\)"));
    const auto found = rate.match(QString::fromUtf8(said));
    if (program.exitCode() != 0 || !found.hasMatch() || !said.contains("number of failed transactions: 0 "))
        throw std::runtime_error("pgbench: " + said.toStdString());
    return found.captured(1).toDouble();
}

} // namespace quarterstep::bench
