// SPDX-License-Identifier: GPL-3.0-or-later
// The ledger in a file against SQLite's own interface with the same statements. Single hand-overs of the one
// and of the other take turns, so that whatever else the disk does meets both.
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

constexpr int plenty = 2'000'000'000;
const std::vector<std::string> lineNames{"A", "B", "C", "D", "E", "F", "G", "H"};

/// On the disk the temporary folders are on; gone at the end.
struct Folder {
    std::string path = (fs::temp_directory_path() / "qs-bench-XXXXXX").string();
    Folder() { (void)mkdtemp(path.data()); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { fs::remove_all(path); }
    [[nodiscard]] std::string operator/(const char* name) const { return path + "/" + name; }
};

Entry handOver(const std::string& line)
{
    Entry entry;
    entry.person = "P-1";
    entry.actor = "Dispenser";
    entry.fields = {
        {"profile", "adult-near"}, {"profile_version", "1"},     {"rules_hash", "0011223344556677"},
        {"purpose", "near"},       {"final", "R +2.00 L +2.00"}, {"referral", "no"},
        {"verdict", "fits"},       {"checks", "power fit"},      {"cost_thousandths", "125"}};
    entry.movements = {{line, -1, "pair"}};
    return entry;
}

std::vector<Balance> fullBox()
{
    std::vector<Balance> counts;
    for (const auto& line : lineNames)
        counts.push_back({line, plenty, 0, 0});
    return counts;
}

void compareHandOvers(Plan& plan)
{
    const Folder folder;
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
    const auto turns = plan.size(3000, 20);
    const auto walSize = [&] { return fs::file_size(folder / "ours-wal"); };
    const auto walBefore = walSize();
    std::size_t walBytes = 0;
    for (std::size_t i = 0; i < turns; ++i) {
        const auto& line = lineNames[i % lineNames.size()];
        const auto one = [&] { ours.push_back(nanosecondsOf([&] { ledger.post("Box", handOver(line)); })); };
        const auto other = [&] { theirs.push_back(nanosecondsOf([&] { bare.handOver(line); })); };
        i % 2 == 0 ? (one(), other()) : (other(), one()); // neither always comes second
        if (i < 20)
            walBytes = (walSize() - walBefore) / (i + 1);
        disk.push_back(nanosecondsOf([&] { journal.append(walBytes); }));
    }
    const double share = medianOf(theirs) / medianOf(ours);
    plan.keep({"ledger/hand-over", [share](const Medians&) { return share; }, Bound::atLeast, 0.9});
    const auto micro = [](double nanoseconds) {
        return std::to_string(static_cast<long>(nanoseconds / 1000)) + " us";
    };
    plan.note("ledger/hand-over: ours " + micro(medianOf(ours)) + ", bare " + micro(medianOf(theirs)) +
              "; the " + std::to_string(walBytes) + " bytes of its journal appended and synced " +
              micro(medianOf(disk)) + " (" +
              std::to_string(static_cast<int>(100 * medianOf(disk) / medianOf(ours))) + " % of ours)");
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
    compareHandOvers(plan);
    measureWriteBack(plan);
    compareReplays(plan);
}

} // namespace quarterstep::bench
