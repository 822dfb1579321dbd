// SPDX-License-Identifier: GPL-3.0-or-later
// The ledger in a file against SQLite's own interface with the same statements. Single hand-overs of the one
// and of the other take turns, so that whatever else the disk does meets both.
#include "tests/bench/hand_overs.hpp"
#include "tests/bench/ledger_peers.hpp"
#include "tests/bench/plan.hpp"

#include "inventory/store/connection.hpp"
#include "inventory/store/write_back.hpp"

#include <filesystem>
#include <fstream>
#include <iostream>

namespace quarterstep::bench
{

namespace
{

namespace fs = std::filesystem;

/// Gone at the end.
struct Folder {
    std::string path;
    explicit Folder(const fs::path& place = fs::temp_directory_path())
        : path((place / "qs-bench-XXXXXX").string())
    {
        (void)mkdtemp(path.data());
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { fs::remove_all(path); }
    [[nodiscard]] std::string operator/(const char* name) const { return path + "/" + name; }
};

/// Medians in nanoseconds, and what one hand-over writes into the journal.
struct HandOvers {
    double ours = 0.0;
    double bare = 0.0;
    double disk = 0.0;
    std::size_t journalBytes = 0;
};

HandOvers timeHandOvers(const Folder& folder, std::size_t turns)
{
    std::string payload;
    {
        auto first = Ledger::open(folder / "bare", Ledger::Mode::readWrite);
        first.introduce("Box", fullBox());
        first.post("Box", handOver("A"));
    }
    auto ledger = Ledger::open(folder / "ours", Ledger::Mode::readWrite);
    ledger.introduce("Box", fullBox());
    {
        Connection raw(folder / "bare", Connection::Access::readWrite, 200);
        payload = raw.textOf("SELECT payload FROM entry WHERE position = 2");
    }
    BareLedger bare(folder / "bare", payload);
    SyncedFile journal(folder / "journal");
    std::vector<double> ours;
    std::vector<double> theirs;
    std::vector<double> disk;
    const auto walSize = [&] { return fs::file_size(folder / "ours-wal"); };
    const auto walBefore = walSize();
    std::size_t walBytes = 0;
    for (std::size_t i = 0; i < turns; ++i) {
        const auto& line = lineNames[i % lineNames.size()];
        auto entry = handOver(line);
        const auto one = [&] {
            ours.push_back(nanosecondsOf([&] { ledger.post("Box", std::move(entry)); }));
        };
        const auto other = [&] { theirs.push_back(nanosecondsOf([&] { bare.handOver(line); })); };
        i % 2 == 0 ? (one(), other()) : (other(), one()); // neither always comes second
        if (i < 20)
            walBytes = (walSize() - walBefore) / (i + 1);
        disk.push_back(nanosecondsOf([&] { journal.append(walBytes); }));
    }
    return {medianOf(ours), medianOf(theirs), medianOf(disk), walBytes};
}

/// The promise is about a disk, where a hand-over lasts as long as its sync. In memory nothing is waited for,
/// and what putting an entry together and hashing it costs stands there alone: a figure, and no budget.
void compareHandOvers(Plan& plan)
{
    const auto micro = [](double nanoseconds) {
        return std::to_string(static_cast<long>(nanoseconds / 1000)) + " us";
    };
    const auto tell = [&](const char* where, const HandOvers& times) {
        plan.note(std::string("ledger/hand-over ") + where + ": ours " + micro(times.ours) + ", bare " +
                  micro(times.bare) + " (" + std::to_string(static_cast<int>(100 * times.bare / times.ours)) +
                  " %); the " + std::to_string(times.journalBytes) +
                  " bytes of its journal appended and synced " + micro(times.disk) + " (" +
                  std::to_string(static_cast<int>(100 * times.disk / times.ours)) + " % of ours)");
    };
    if (isInMemory("/dev/shm"))
        tell("in memory", timeHandOvers(Folder("/dev/shm"), plan.size(3000, 20)));
    const Folder folder;
    if (isInMemory(folder.path))
        return plan.note(
            "ledger/hand-over on a disk: not measured, the temporary folders are in memory; set TMPDIR");
    const auto times = timeHandOvers(folder, plan.size(3000, 20));
    tell("on a disk", times);
    const double share = times.bare / times.ours;
    plan.keep({"ledger/hand-over", [share](const Medians&) { return share; }, Bound::atLeast, 0.9});
}

/// What follows a hand-over and is no part of its promise: stock.yaml is written anew.
void measureWriteBack(Plan& plan)
{
    const Folder folder;
    std::string stock = "format: quarterstep stock 1\nsite: Box\nlines:\n";
    for (int i = 0; i < 500; ++i)
        stock += "  - {line: N" + std::to_string(i) +
                 ", kind: ready-made, power: +2.00, centres: 62, on hand: 100000}\n";
    std::ofstream(folder / "stock.yaml") << stock;
    auto ledger = Ledger::open(folder / "ledger.sqlite", Ledger::Mode::readWrite);
    auto file = writeBack(folder.path, ledger).file;
    std::vector<double> times;
    for (std::size_t i = 0; i < plan.size(200, 3); ++i) {
        ledger.post("Box", handOver("N" + std::to_string(i)));
        times.push_back(nanosecondsOf([&] { file = writeBack(folder.path, ledger, file).file; }));
    }
    plan.note("ledger/write-back: stock.yaml of 500 lines read, compared, spliced, synced and renamed " +
              std::to_string(static_cast<long>(medianOf(times) / 1000)) + " us");
}

void fill(const std::string& path, std::size_t rows)
{
    {
        auto ledger = Ledger::open(path, Ledger::Mode::readWrite);
        ledger.introduce("Box", fullBox());
    }
    Connection raw(path, Connection::Access::readWrite, 200);
    raw.execute("BEGIN");
    const auto count = std::to_string(rows);
    raw.execute("WITH RECURSIVE row (n) AS (SELECT 2 UNION ALL SELECT n + 1 FROM row WHERE n <= " + count +
                ") INSERT INTO entry (id, station, number, kind, at_ms, person, payload, hash) "
                "SELECT randomblob(16), 1, n, 'handed-over', n, 'P', '{}', randomblob(32) FROM row");
    raw.execute("WITH RECURSIVE row (n) AS (SELECT 2 UNION ALL SELECT n + 1 FROM row WHERE n <= " + count +
                ") INSERT INTO movement (entry, place, site, line, delta, part) "
                "SELECT n, 1, 'Box', char(65 + n % 8), -1, 'pair' FROM row");
    raw.execute("COMMIT");
}

/// From the counts of today back to those at the beginning, over every movement.
void compareReplays(Plan& plan)
{
    const Folder folder;
    const auto rows = plan.size(1'000'000, 1000);
    fill(folder / "long", rows);
    const auto ledger = Ledger::open(folder / "long", Ledger::Mode::readOnly);
    BareLedger bare(folder / "long", {});
    std::map<std::string, std::int64_t> sums;
    std::vector<Balance> counts;
    std::vector<double> ours;
    std::vector<double> theirs;
    for (std::size_t i = 0; i < plan.size(7, 1); ++i) {
        theirs.push_back(nanosecondsOf([&] { sums = bare.sumsAfter("Box", 1); }));
        ours.push_back(nanosecondsOf([&] { counts = ledger.balancesAt("Box", 1); }));
    }
    const auto today = ledger.balances("Box");
    for (std::size_t i = 0; i < counts.size(); ++i)
        if (counts[i].onHand != plenty || today[i].onHand - sums[counts[i].line] != plenty)
            plan.disagree("the counts of line " + counts[i].line + " at the beginning");
    const double share = medianOf(theirs) / medianOf(ours);
    plan.keep({"ledger/replay", [share](const Medians&) { return share; }, Bound::atLeast, 0.8});
    plan.note("ledger/replay: " + std::to_string(rows) + " movements in " +
              std::to_string(static_cast<long>(medianOf(ours) / 1e6)) + " ms, a loop of sqlite3_step " +
              std::to_string(static_cast<long>(medianOf(theirs) / 1e6)) + " ms");
}

} // namespace

void planLedger(Plan& plan)
{
    if (plan.wantsNamed("ledger/hand-over"))
        compareHandOvers(plan);
    if (plan.wantsNamed("ledger/write-back"))
        measureWriteBack(plan);
    if (plan.wantsNamed("ledger/replay"))
        compareReplays(plan);
}

} // namespace quarterstep::bench
