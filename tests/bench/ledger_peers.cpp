// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/ledger_peers.hpp"

#include <fcntl.h>
#include <linux/magic.h>
#include <sqlite3.h>
#include <sys/vfs.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <random>
#include <stdexcept>
#include <unordered_map>

namespace quarterstep::bench
{

namespace
{

void require(bool done)
{
    if (!done)
        throw std::runtime_error("the plain peer failed");
}

void bindBytes(sqlite3_stmt* statement, int place, const std::string& bytes)
{
    require(sqlite3_bind_blob(statement, place, bytes.data(), static_cast<int>(bytes.size()), nullptr) ==
            SQLITE_OK);
}

void bindText(sqlite3_stmt* statement, int place, const std::string& text)
{
    require(sqlite3_bind_text(statement, place, text.data(), static_cast<int>(text.size()), nullptr) ==
            SQLITE_OK);
}

std::string textIn(sqlite3_stmt* statement, int column)
{
    return {static_cast<const char*>(sqlite3_column_blob(statement, column)),
            static_cast<std::size_t>(sqlite3_column_bytes(statement, column))};
}

} // namespace

double medianOf(std::vector<double> values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

bool isInMemory(const std::string& path)
{
    struct statfs system {
    };
    return statfs(path.c_str(), &system) == 0 && system.f_type == TMPFS_MAGIC;
}

struct BareLedger::Inside {
    sqlite3* database = nullptr;
    sqlite3_stmt* begin = nullptr;
    sqlite3_stmt* last = nullptr;
    sqlite3_stmt* entry = nullptr;
    sqlite3_stmt* movement = nullptr;
    sqlite3_stmt* commit = nullptr;
    std::string payload;
    std::string id = std::string(16, '\0');
    std::string hash = std::string(32, 'h');
    std::mt19937_64 random{17};

    sqlite3_stmt* prepare(const char* sql) const
    {
        sqlite3_stmt* statement = nullptr;
        require(sqlite3_prepare_v2(database, sql, -1, &statement, nullptr) == SQLITE_OK);
        return statement;
    }
    static void runOnce(sqlite3_stmt* statement)
    {
        require(sqlite3_step(statement) == SQLITE_DONE);
        sqlite3_reset(statement);
    }
};

BareLedger::BareLedger(const std::string& path, std::string payload) : inside_(std::make_unique<Inside>())
{
    auto& in = *inside_;
    in.payload = std::move(payload);
    require(sqlite3_open_v2(path.c_str(), &in.database, SQLITE_OPEN_READWRITE | SQLITE_OPEN_NOMUTEX,
                            nullptr) == SQLITE_OK);
    for (const char* sql :
         {"PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL", "PRAGMA foreign_keys = ON"})
        require(sqlite3_exec(in.database, sql, nullptr, nullptr, nullptr) == SQLITE_OK);
    in.begin = in.prepare("BEGIN IMMEDIATE");
    in.last = in.prepare("SELECT number, hash, id FROM entry WHERE station = ? ORDER BY number DESC LIMIT 1");
    in.entry =
        in.prepare("INSERT INTO entry (id, station, number, kind, at_ms, person, cancels, payload, hash) "
                   "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING position");
    in.movement = in.prepare("INSERT INTO movement (entry, place, site, line, delta, part, held, "
                             "quarantined) VALUES (?, ?, ?, ?, ?, ?, ?, ?)");
    in.commit = in.prepare("COMMIT");
}

BareLedger::~BareLedger()
{
    auto& in = *inside_;
    for (auto* statement : {in.begin, in.last, in.entry, in.movement, in.commit})
        sqlite3_finalize(statement);
    sqlite3_close(in.database);
}

void BareLedger::handOver(const std::string& line)
{
    auto& in = *inside_;
    static const std::string kind = "handed-over";
    static const std::string site = "Box";
    static const std::string part = "pair";
    static const std::string person = "P-1";
    Inside::runOnce(in.begin);
    sqlite3_bind_int64(in.last, 1, 1);
    require(sqlite3_step(in.last) == SQLITE_ROW);
    const auto number = sqlite3_column_int64(in.last, 0) + 1;
    sqlite3_reset(in.last);
    for (std::size_t i = 0; i < in.id.size(); i += 8) {
        const auto bits = in.random();
        std::copy_n(reinterpret_cast<const char*>(&bits), 8,
                    in.id.begin() + static_cast<std::ptrdiff_t>(i)); // NOLINT
    }
    bindBytes(in.entry, 1, in.id);
    sqlite3_bind_int64(in.entry, 2, 1);
    sqlite3_bind_int64(in.entry, 3, number);
    bindText(in.entry, 4, kind);
    sqlite3_bind_int64(in.entry, 5, 1'700'000'000'000);
    bindText(in.entry, 6, person);
    sqlite3_bind_null(in.entry, 7);
    bindText(in.entry, 8, in.payload);
    bindBytes(in.entry, 9, in.hash);
    require(sqlite3_step(in.entry) == SQLITE_ROW);
    const auto position = sqlite3_column_int64(in.entry, 0);
    require(sqlite3_step(in.entry) == SQLITE_DONE);
    sqlite3_reset(in.entry);
    sqlite3_bind_int64(in.movement, 1, position);
    sqlite3_bind_int64(in.movement, 2, 1);
    bindText(in.movement, 3, site);
    bindText(in.movement, 4, line);
    sqlite3_bind_int64(in.movement, 5, -1);
    bindText(in.movement, 6, part);
    sqlite3_bind_int64(in.movement, 7, 0);
    sqlite3_bind_int64(in.movement, 8, 0);
    Inside::runOnce(in.movement);
    Inside::runOnce(in.commit);
}

std::map<std::string, std::int64_t> BareLedger::sumsAfter(const std::string& site, std::int64_t position)
{
    auto* rows =
        inside_->prepare("SELECT line, delta, held, quarantined FROM movement WHERE entry > ? AND +site = ?");
    sqlite3_bind_int64(rows, 1, position);
    bindText(rows, 2, site);
    std::unordered_map<std::string, std::array<std::int64_t, 3>> sums;
    while (sqlite3_step(rows) == SQLITE_ROW) {
        auto& sum = sums[textIn(rows, 0)];
        for (int i = 0; i < 3; ++i)
            sum[static_cast<std::size_t>(i)] += sqlite3_column_int64(rows, i + 1);
    }
    sqlite3_finalize(rows);
    std::map<std::string, std::int64_t> onHand;
    for (const auto& [line, sum] : sums)
        onHand[line] = sum[0];
    return onHand;
}

SyncedFile::SyncedFile(const std::string& path)
    : descriptor_(open(path.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600))
{
    require(descriptor_ >= 0);
}

SyncedFile::~SyncedFile()
{
    close(descriptor_);
}

void SyncedFile::append(std::size_t bytes)
{
    static const std::string text(1U << 16U, 'x');
    require(write(descriptor_, text.data(), std::min(bytes, text.size())) > 0 && fdatasync(descriptor_) == 0);
}

} // namespace quarterstep::bench
