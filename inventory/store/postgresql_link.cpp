// SPDX-License-Identifier: GPL-3.0-or-later
// The only file that sees PostgreSQL's own interface. (Over 300 lines: one small class a part of it.)
#include "inventory/store/postgresql_link.hpp"

#include "inventory/store/payload.hpp"

#include <QLibrary>

#include <libpq-fe.h>

#include <cstdlib>
#include <vector>

namespace quarterstep
{

namespace
{

constexpr Oid booleanType = 16; // pg_type of PostgreSQL: never changes for the built-in types
constexpr Oid bytesType = 17;

/// The functions of the library that are used, found by their names.
class Client
{
  public:
    /// Stays loaded until the program ends; `isThere` says whether it is.
    static const Client& get()
    {
        static const Client client;
        return client;
    }

    [[nodiscard]] bool isThere() const { return isThere_; }

    decltype(&PQconnectdbParams) connect = nullptr;
    decltype(&PQfinish) close = nullptr;
    decltype(&PQstatus) status = nullptr;
    decltype(&PQerrorMessage) said = nullptr;
    decltype(&PQexec) execute = nullptr;
    decltype(&PQprepare) prepare = nullptr;
    decltype(&PQexecPrepared) run = nullptr;
    decltype(&PQresultStatus) resultStatus = nullptr;
    decltype(&PQresultErrorField) errorField = nullptr;
    decltype(&PQcmdStatus) command = nullptr;
    decltype(&PQclear) clear = nullptr;
    decltype(&PQntuples) rows = nullptr;
    decltype(&PQftype) type = nullptr;
    decltype(&PQgetvalue) value = nullptr;
    decltype(&PQgetlength) length = nullptr;
    decltype(&PQgetisnull) isNull = nullptr;

  private:
    Client()
    {
        find("PQconnectdbParams", connect);
        find("PQfinish", close);
        find("PQstatus", status);
        find("PQerrorMessage", said);
        find("PQexec", execute);
        find("PQprepare", prepare);
        find("PQexecPrepared", run);
        find("PQresultStatus", resultStatus);
        find("PQresultErrorField", errorField);
        find("PQcmdStatus", command);
        find("PQclear", clear);
        find("PQntuples", rows);
        find("PQftype", type);
        find("PQgetvalue", value);
        find("PQgetlength", length);
        find("PQgetisnull", isNull);
    }

    template <class Function>
    void find(const char* name, Function& function)
    {
        function = reinterpret_cast<Function>(library_.resolve(name)); // NOLINT: what a library gives by name
        isThere_ = isThere_ && function != nullptr;
    }

    QLibrary library_{QStringLiteral("pq"), 5}; // libpq.so.5
    bool isThere_ = true;
};

struct Clear {
    void operator()(PGresult* result) const { Client::get().clear(result); }
};
using Answer = std::unique_ptr<PGresult, Clear>;

/// Closed when the last statement of it is gone.
using Server = std::shared_ptr<PGconn>;

bool isGood(const Answer& result)
{
    const auto status = Client::get().resultStatus(result.get());
    return status == PGRES_COMMAND_OK || status == PGRES_TUPLES_OK || status == PGRES_EMPTY_QUERY;
}

/// The server says more in further lines, and how grave it is before the first; a finding is one line.
std::string firstLine(const char* said)
{
    const std::string text = said == nullptr ? "" : said;
    auto line = text.substr(0, text.find('\n'));
    while (!line.empty() && line.back() == ' ')
        line.pop_back();
    return line;
}

/// Without a code where the client itself failed: the server is not there any more.
StoreFailure failureOf(PGconn* connection, const Answer& result)
{
    const auto& client = Client::get();
    StoreFailure failure;
    const auto* state = client.errorField(result.get(), PG_DIAG_SQLSTATE);
    failure.code = state == nullptr ? "" : state;
    const auto* words = client.errorField(result.get(), PG_DIAG_MESSAGE_PRIMARY);
    failure.text = firstLine(words == nullptr ? client.said(connection) : words);
    return failure;
}

/// `?` outside quotes become `$1`, `$2` …, as the server counts its places.
std::string numberedPlaces(const std::string& sql)
{
    std::string numbered;
    bool inQuotes = false;
    int places = 0;
    for (const char c : sql) {
        inQuotes = inQuotes != (c == '\'');
        if (c == '?' && !inQuotes)
            numbered += "$" + std::to_string(++places);
        else
            numbered += c;
    }
    return numbered;
}

/// Values as the server takes them: whole numbers and texts as text, bytes as they are.
class Parameters
{
  public:
    Parameters(const StoreValue* values, std::size_t count)
        : texts_(count), values_(count), lengths_(count), binary_(count)
    {
        for (std::size_t i = 0; i < count; ++i)
            take(i, values[i]);
    }

    /// A text ends at its first NUL here, so one that has it is not sent: nothing is cut off unnoticed.
    [[nodiscard]] bool areWhole() const { return areWhole_; }
    [[nodiscard]] int count() const { return static_cast<int>(values_.size()); }
    [[nodiscard]] const char* const* values() const { return values_.data(); }
    [[nodiscard]] const int* lengths() const { return lengths_.data(); }
    [[nodiscard]] const int* binary() const { return binary_.data(); }

  private:
    void take(std::size_t i, const StoreValue& value)
    {
        if (std::holds_alternative<std::monostate>(value))
            return; // a null pointer is NULL
        if (const auto* whole = std::get_if<std::int64_t>(&value))
            texts_[i] = std::to_string(*whole);
        else if (const auto* text = std::get_if<std::string>(&value))
            texts_[i] = isAscii(*text) ? *text : validUtf8(*text);
        else
            texts_[i] = std::get<Blob>(value).bytes;
        binary_[i] = std::holds_alternative<Blob>(value) ? 1 : 0;
        areWhole_ = areWhole_ && (binary_[i] == 1 || texts_[i].find('\0') == std::string::npos);
        lengths_[i] = static_cast<int>(texts_[i].size());
        values_[i] = texts_[i].c_str();
    }

    std::vector<std::string> texts_;
    std::vector<const char*> values_;
    std::vector<int> lengths_;
    std::vector<int> binary_;
    bool areWhole_ = true;
};

int digitOf(char hexadecimal)
{
    return hexadecimal <= '9' ? hexadecimal - '0' : hexadecimal - 'a' + 10;
}

/// Rows of a statement that ran, all of them fetched.
class PostgresqlStatement : public LinkStatement
{
  public:
    PostgresqlStatement(Server server, std::string name) : server_(std::move(server)), name_(std::move(name))
    {
    }
    PostgresqlStatement(Server server, Answer rows) : server_(std::move(server)) { take(std::move(rows)); }
    PostgresqlStatement(const PostgresqlStatement&) = delete;
    PostgresqlStatement& operator=(const PostgresqlStatement&) = delete;
    ~PostgresqlStatement() override
    {
        // In a transaction that failed the server does not hear it, and forgets the statement with the
        // connection.
        if (!name_.empty())
            (void)Answer(Client::get().execute(server_.get(), ("DEALLOCATE " + name_).c_str()));
    }

    bool run(const StoreValue* values, std::size_t count) override
    {
        finish();
        failure_.reset();
        const Parameters parameters(values, count);
        if (!parameters.areWhole()) {
            failure_ = StoreFailure{FailureKind::other, "22021", "a text holds a NUL"};
            return false;
        }
        take(Answer(Client::get().run(server_.get(), name_.c_str(), parameters.count(), parameters.values(),
                                      parameters.lengths(), parameters.binary(), 0)));
        return !failure_;
    }

    bool next() override { return ++row_ < count_; }

    void finish() override
    {
        rows_.reset();
        count_ = 0;
    }

    [[nodiscard]] std::int64_t whole(int column) const override
    {
        const auto* value = Client::get().value(rows_.get(), row_, column);
        if (Client::get().type(rows_.get(), column) == booleanType)
            return *value == 't' ? 1 : 0;
        return std::strtoll(value, nullptr, 10); // nothing, where it is NULL
    }

    [[nodiscard]] std::string text(int column) const override
    {
        const auto value = sent(column);
        return isAscii(value) ? value : validUtf8(value);
    }

    [[nodiscard]] std::string bytes(int column) const override
    {
        auto value = sent(column);
        if (Client::get().type(rows_.get(), column) != bytesType)
            return value;
        std::string bytes;
        for (std::size_t i = 2; i + 1 < value.size(); i += 2) // after "\x", two digits a byte
            bytes += static_cast<char>(digitOf(value[i]) * 16 + digitOf(value[i + 1]));
        return bytes;
    }

    [[nodiscard]] bool isNull(int column) const override
    {
        return Client::get().isNull(rows_.get(), row_, column) != 0;
    }

    [[nodiscard]] const std::optional<StoreFailure>& failure() const override { return failure_; }

  private:
    void take(Answer rows)
    {
        row_ = -1;
        if (!isGood(rows)) {
            failure_ = failureOf(server_.get(), rows);
            return;
        }
        rows_ = std::move(rows);
        count_ = Client::get().rows(rows_.get());
    }

    [[nodiscard]] std::string sent(int column) const
    {
        const auto& client = Client::get();
        return {client.value(rows_.get(), row_, column),
                static_cast<std::size_t>(client.length(rows_.get(), row_, column))};
    }

    Server server_;
    std::string name_; ///< empty: asked once
    Answer rows_;
    int row_ = -1;
    int count_ = 0;
    std::optional<StoreFailure> failure_;
};

class PostgresqlLink : public StoreLink
{
  public:
    explicit PostgresqlLink(Server server) : server_(std::move(server)) {}

    std::unique_ptr<LinkStatement> prepare(const std::string& sql) override
    {
        auto name = "q" + std::to_string(++prepared_);
        const Answer result(
            Client::get().prepare(server_.get(), name.c_str(), numberedPlaces(sql).c_str(), 0, nullptr));
        if (keepsFailureOf(result))
            return nullptr;
        return std::make_unique<PostgresqlStatement>(server_, std::move(name));
    }

    std::unique_ptr<LinkStatement> ask(const std::string& sql) override
    {
        Answer result(Client::get().execute(server_.get(), sql.c_str()));
        if (keepsFailureOf(result))
            return nullptr;
        return std::make_unique<PostgresqlStatement>(server_, std::move(result));
    }

    /// Of several statements in one text the first that fails ends them all.
    bool execute(const std::string& sql) override
    {
        return !keepsFailureOf(Answer(Client::get().execute(server_.get(), sql.c_str())));
    }

    bool commit() override
    {
        const Answer result(Client::get().execute(server_.get(), "COMMIT"));
        if (keepsFailureOf(result))
            return false;
        if (std::string(Client::get().command(result.get())) != "ROLLBACK")
            return true;
        failure_ = {FailureKind::other, "25P02", "the transaction had failed and was rolled back"};
        return false;
    }

    void rollback() noexcept override
    {
        if (Client::get().status(server_.get()) == CONNECTION_OK)
            (void)Answer(Client::get().execute(server_.get(), "ROLLBACK"));
    }

    [[nodiscard]] const StoreFailure& failure() const override { return failure_; }

  private:
    [[nodiscard]] bool keepsFailureOf(const Answer& result)
    {
        if (isGood(result))
            return false;
        failure_ = failureOf(server_.get(), result);
        return true;
    }

    Server server_;
    unsigned prepared_ = 0;
    StoreFailure failure_;
};

} // namespace

std::unique_ptr<StoreLink> openPostgresqlLink(const std::string& shown, const ServerSettings& settings,
                                              StoreFailure& failure)
{
    const auto& client = Client::get();
    if (!client.isThere())
        throw errorAt(shown, "ledger-failed",
                      {QS_SAY("core", "the client library of the server is missing; install %1"), {"libpq5"}},
                      4);
    std::vector<const char*> keywords;
    std::vector<const char*> values;
    for (const auto& [keyword, value] : settings) {
        keywords.push_back(keyword.c_str());
        values.push_back(value.c_str());
    }
    keywords.push_back(nullptr);
    values.push_back(nullptr);
    const Server server(client.connect(keywords.data(), values.data(), 0),
                        client.close); // one that failed too
    if (client.status(server.get()) == CONNECTION_OK)
        return std::make_unique<PostgresqlLink>(server);
    failure.text = firstLine(client.said(server.get()));
    return nullptr;
}

} // namespace quarterstep
