// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/connection.hpp"

#include "inventory/store/engine.hpp"
#include "inventory/store/link.hpp"

#include <chrono>

namespace quarterstep
{

namespace
{

/// Does `work`, which gives what went wrong; repeats it while others hold the ledger and the engine has
/// patience.
template <class Work>
std::optional<StoreFailure> patiently(const StoreEngine& engine, const Work& work)
{
    using namespace std::chrono;
    const auto trial = [&] {
        std::optional<StoreFailure> failure = work();
        if (failure)
            failure->kind = engine.kindOf(failure->code);
        return failure;
    };
    auto failure = trial();
    if (!failure)
        return failure;
    const auto end = steady_clock::now() + milliseconds(engine.patienceMs());
    while (failure && failure->kind == FailureKind::busy && steady_clock::now() < end)
        failure = trial();
    return failure;
}

} // namespace

struct Statement::Inside {
    std::string shown;
    const StoreEngine* engine = nullptr;
    std::unique_ptr<LinkStatement> link;
    StoreFailure failure;

    [[nodiscard]] bool run(const StoreValue* values, std::size_t count)
    {
        const auto said = patiently(*engine, [&] {
            return link->run(values, count) ? std::optional<StoreFailure>() : link->failure();
        });
        if (!said)
            return true;
        failure = *said;
        return false;
    }
};

Statement::Statement(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Statement::Statement(Statement&&) noexcept = default;
Statement& Statement::operator=(Statement&&) noexcept = default;
Statement::~Statement() = default;

bool Statement::tryRun(std::initializer_list<StoreValue> values)
{
    return inside_->run(values.begin(), values.size());
}

void Statement::run(std::initializer_list<StoreValue> values)
{
    if (!tryRun(values))
        throw storeError(inside_->shown, inside_->failure);
}

void Statement::run(const std::vector<StoreValue>& values)
{
    if (!inside_->run(values.data(), values.size()))
        throw storeError(inside_->shown, inside_->failure);
}

bool Statement::next()
{
    if (inside_->link->next())
        return true;
    if (const auto& said = inside_->link->failure()) {
        inside_->failure = *said;
        inside_->failure.kind = inside_->engine->kindOf(said->code);
        throw storeError(inside_->shown, inside_->failure);
    }
    return false;
}

void Statement::finish()
{
    inside_->link->finish();
}

std::int64_t Statement::whole(int column) const
{
    return inside_->link->whole(column);
}

std::string Statement::text(int column) const
{
    return inside_->link->text(column);
}

std::string Statement::bytes(int column) const
{
    return inside_->link->bytes(column);
}

bool Statement::isNull(int column) const
{
    return inside_->link->isNull(column);
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
};

Connection::Connection(const std::string& location, Access access, int busyMs)
    : engine_(StoreEngine::of(location)), shown_(engine_->shown())
{
    StoreFailure failure;
    link_ = engine_->connect(access, busyMs, failure);
    if (!link_) {
        failure.kind = engine_->kindOf(failure.code);
        if (failure.kind == FailureKind::lost)
            failure.kind = FailureKind::unreachable;
        throw storeError(shown_, failure);
    }
    if (engine_->preparesTransactions())
        transactions_ = std::make_unique<Transactions>(Transactions{
            prepare(engine_->beginWriting()), prepare(engine_->beginReading()), prepare("COMMIT")});
}

void Connection::setPatience(int ms)
{
    engine_->setPatience(ms);
}

Connection::~Connection() = default;

StoreError Connection::failed() const
{
    auto failure = link_->failure();
    failure.kind = engine_->kindOf(failure.code);
    return storeError(shown_, failure);
}

Statement Connection::prepare(const char* sql)
{
    auto link = link_->prepare(sql);
    if (!link)
        throw failed();
    return Statement(
        std::make_unique<Statement::Inside>(Statement::Inside{shown_, engine_.get(), std::move(link), {}}));
}

void Connection::execute(const std::string& sql)
{
    const auto said = patiently(
        *engine_, [&] { return link_->execute(sql) ? std::optional<StoreFailure>() : link_->failure(); });
    if (said)
        throw storeError(shown_, *said);
}

std::unique_ptr<LinkStatement> Connection::firstRow(const std::string& sql)
{
    std::unique_ptr<LinkStatement> rows;
    const auto said = patiently(*engine_, [&] {
        rows = link_->ask(sql);
        return rows ? std::optional<StoreFailure>() : link_->failure();
    });
    if (said)
        throw storeError(shown_, *said);
    return rows->next() ? std::move(rows) : nullptr;
}

std::int64_t Connection::wholeOf(const std::string& sql)
{
    const auto row = firstRow(sql);
    return row ? row->whole(0) : 0;
}

std::string Connection::textOf(const std::string& sql)
{
    const auto row = firstRow(sql);
    return row ? row->text(0) : std::string();
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
}

void Connection::beginReading()
{
    if (!transactions_)
        return execute(engine_->beginReading());
    transactions_->beginReading.run();
}

void Connection::commit()
{
    if (transactions_)
        return transactions_->commit.run();
    if (!link_->commit())
        throw failed();
}

void Connection::rollback() noexcept
{
    link_->rollback();
}

} // namespace quarterstep
