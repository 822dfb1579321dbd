// SPDX-License-Identifier: GPL-3.0-or-later
// The shared ledger against the server's own client: one station and eight on the same lines. The server is
// the bench's own, on the loopback address, its data on the disk of the temporary folders and synced. Ledger
// and client take turns.
#include "tests/bench/hand_overs.hpp"
#include "tests/bench/ledger_peers.hpp"
#include "tests/bench/plan.hpp"
#include "tests/bench/server_client.hpp"

#include "inventory/store/connection.hpp"

#include <filesystem>
#include <thread>

namespace quarterstep::bench
{

namespace
{

namespace fs = std::filesystem;

constexpr int stations = 8;

/// A ledger with two stations for each place at the table: the first half is ours, the second that of the
/// client.
class Table
{
  public:
    explicit Table(const test::TestServer& server) : server_(server)
    {
        (void)mkdtemp(folder_.data());
        server.makeLedger("bench");
        for (int i = 0; i < 2 * stations; ++i)
            fs::create_directory(placeOf(i));
        Ledger::open(server.address("bench", "keeper"), Ledger::Mode::readWrite, placeOf(0))
            .introduce("Box", fullBox());
        for (int i = 0; i < 2 * stations; ++i) // an entry each, in the order of the keys of stations
            station(i).post("Box", handOver("A"));
    }
    Table(const Table&) = delete;
    Table& operator=(const Table&) = delete;
    ~Table() { fs::remove_all(folder_); }

    [[nodiscard]] Ledger station(int i) const
    {
        const auto login = i == 0 ? "keeper" : "station";
        return Ledger::open(server_.address("bench", login), Ledger::Mode::readWrite, placeOf(i));
    }
    [[nodiscard]] std::string placeOf(int i) const { return folder_ + "/" + std::to_string(i); }
    [[nodiscard]] const std::string& folder() const { return folder_; }

  private:
    const test::TestServer& server_;
    std::string folder_ = (fs::temp_directory_path() / "qs-bench-XXXXXX").string();
};

/// Hand-overs a second of so many stations at once, without the time they take to connect: from when all are
/// there.
double ourRate(const Table& table, int count, std::size_t turns)
{
    std::vector<std::thread> threads;
    threads.reserve(static_cast<std::size_t>(count));
    std::vector<double> seconds(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i)
        threads.emplace_back([&, i] {
            auto ledger = table.station(i); // a connection belongs to its thread
            seconds[static_cast<std::size_t>(i)] =
                nanosecondsOf([&] {
                    for (std::size_t k = 0; k < turns; ++k)
                        ledger.post("Box", handOver(lineNames[k % lineNames.size()]));
                }) *
                1e-9;
        });
    for (auto& thread : threads)
        thread.join();
    return static_cast<double>(turns) * count / *std::max_element(seconds.begin(), seconds.end());
}

struct Rates {
    double ours = 0.0;
    double client = 0.0;
    double share =
        0.0; ///< of pairs of runs that followed each other: what else the machine does changes within minutes
};

Rates compare(const Table& table, const ServerClient& client, int count, std::size_t rounds,
              std::size_t turns)
{
    std::vector<double> ours;
    std::vector<double> theirs;
    for (std::size_t i = 0; i < rounds; ++i) {
        const auto one = [&] { ours.push_back(ourRate(table, count, turns)); };
        const auto other = [&] { theirs.push_back(client.rate(count, turns)); };
        i % 2 == 0 ? (one(), other()) : (other(), one());
    }
    std::vector<double> shares;
    shares.reserve(rounds);
    for (std::size_t i = 0; i < rounds; ++i)
        shares.push_back(ours[i] / theirs[i]);
    return {medianOf(ours), medianOf(theirs), medianOf(shares)};
}

std::string perSecond(double rate)
{
    return std::to_string(static_cast<long>(rate)) + " a second";
}

/// The log of one hand-over, appended and synced by nobody else: what the disk alone allows.
std::pair<std::size_t, double> diskFloor(const Table& table, Connection& keeper, std::size_t turns)
{
    constexpr int handOvers = 50;
    const auto place = keeper.textOf("SELECT pg_current_wal_insert_lsn()::text");
    (void)ourRate(table, 1, handOvers);
    const auto written =
        keeper.wholeOf("SELECT (pg_current_wal_insert_lsn() - '" + place + "'::pg_lsn)::bigint") / handOvers;
    const auto bytes = static_cast<std::size_t>(written);
    SyncedFile file(table.folder() + "/log");
    std::vector<double> times;
    times.reserve(turns);
    for (std::size_t i = 0; i < turns; ++i)
        times.push_back(nanosecondsOf([&] { file.append(bytes); }));
    return {bytes, 1e9 / medianOf(times)};
}

void judge(Plan& plan, const std::string& name, const Rates& rates, double limit, const std::string& floor,
           bool inMemory)
{
    plan.note(name + ": ours " + perSecond(rates.ours) + ", pgbench " + perSecond(rates.client) + floor);
    if (inMemory)
        return plan.note(name + ": on no disk, not judged: the temporary folders are in memory; set TMPDIR");
    const double share = rates.share;
    plan.keep({name, [share](const Medians&) { return share; }, Bound::atLeast, limit});
}

} // namespace

void planShared(Plan& plan)
{
    std::string why;
    const auto server = test::TestServer::start(why, true);
    if (!server)
        return plan.note("shared/hand-over: not measured: " + why);
    const Table table(*server);
    Connection keeper(server->address("bench", "keeper"), Connection::Access::readWrite, 2000);
    const auto payload = keeper.textOf("SELECT payload FROM entry ORDER BY position DESC LIMIT 1");
    const auto first =
        keeper.wholeOf("SELECT station FROM entry ORDER BY position DESC LIMIT 1") - stations + 1;
    const ServerClient client(*server, "bench", static_cast<int>(first), payload, table.folder());
    const auto turns = plan.size(60, 5); // short, so that a pair of runs meets the same machine
    const auto [bytes, floor] = diskFloor(table, keeper, plan.size(500, 5));
    const bool inMemory = isInMemory(table.folder());
    const auto beside =
        "; " + std::to_string(bytes) + " bytes of log appended and synced " + perSecond(floor);
    judge(plan, "shared/one-station", compare(table, client, 1, plan.size(25, 1), turns), 0.9, beside,
          inMemory);
    judge(plan, "shared/eight-stations", compare(table, client, stations, plan.size(9, 1), plan.size(40, 5)),
          0.8, beside, inMemory);
    const auto left = keeper.wholeOf("SELECT " + std::to_string(stations) + "::bigint * " +
                                     std::to_string(plenty) + " - sum(on_hand) FROM balance");
    if (left != keeper.wholeOf("SELECT count(*) FROM entry WHERE kind = 'handed-over'"))
        plan.disagree("hand-overs and pieces that left the box");
}

} // namespace quarterstep::bench
