// SPDX-License-Identifier: GPL-3.0-or-later
// Hands over pairs as fast as it can and says each one that was acknowledged; made to be killed.
// usage: faults_driver FOLDER HAND-OVERS [careful | lazy-journal | in-place]
// The two last are wrong on purpose: they show that the harness sees what they lose.
// Exit: 0 all done, 1 stock ran out, 3 or 4 as the Error says.
#include "app/session/camp.hpp"
#include "inventory/store/connection.hpp"
#include "inventory/store/entry_id.hpp"
#include "inventory/store/payload.hpp"

#include <QCoreApplication>
#include <fcntl.h>
#include <unistd.h>

#include <cstdio>
#include <cstdlib>
#include <string>

using namespace quarterstep;

namespace
{

void acknowledge(const Entry& entry)
{
    const auto text = "acked " + std::to_string(entry.number) + " " + entry.id + "\n";
    if (write(STDOUT_FILENO, text.data(), text.size()) < 0)
        std::exit(5);
}

Entry handOver(int which)
{
    Entry entry;
    entry.person = "P-" + std::to_string(which);
    entry.fields = {{"profile", "adult-near"}};
    entry.movements = {{which % 3 == 0 ? "B" : "A", -1, "pair"}};
    return entry;
}

void careful(const std::string& folder, int count)
{
    auto camp = Camp::open(folder, Ledger::Mode::readWrite);
    for (int i = 0; i < count; ++i)
        acknowledge(camp.post(handOver(i)));
}

/// The same statements as the ledger's own, but the journal is not synced at each commit.
void lazyJournal(const std::string& folder, int count)
{
    std::string station;
    {
        auto camp = Camp::open(folder, Ledger::Mode::readWrite);
        station = camp.ledger().station();
    }
    Connection connection(folder + "/ledger.sqlite", Connection::Access::readWrite, 2000);
    connection.execute("PRAGMA synchronous = NORMAL");
    EntryIds ids;
    for (int i = 0; i < count; ++i) {
        auto entry = handOver(i);
        const auto id = ids.next(1'700'000'000'000 + i);
        auto last = connection.prepare("SELECT number, hash FROM entry ORDER BY number DESC LIMIT 1");
        last.run();
        (void)last.next();
        entry.number = last.whole(0) + 1;
        entry.id = idText(id);
        const auto before = last.bytes(1);
        last.finish();
        const auto payload = payloadOf({entry, "Box", station});
        connection.execute("BEGIN IMMEDIATE");
        auto insert =
            connection.prepare("INSERT INTO entry VALUES (NULL, ?, 1, ?, 'handed-over', 0, ?, NULL, ?, ?)");
        insert.run({Blob{id}, entry.number, entry.person, payload, Blob{chainHash(before, payload)}});
        insert.finish();
        auto move = connection.prepare("INSERT INTO movement VALUES (?, 1, 'Box', ?, -1, 'pair', 0, 0)");
        move.run({entry.number, entry.movements[0].line});
        move.finish();
        connection.execute("COMMIT");
        acknowledge(entry);
    }
}

/// The ledger as it should be, but stock.yaml is emptied and written again.
void inPlace(const std::string& folder, int count)
{
    (void)Camp::open(folder, Ledger::Mode::readWrite);
    auto ledger = Ledger::open(folder + "/ledger.sqlite", Ledger::Mode::readWrite);
    for (int i = 0; i < count; ++i) {
        const auto entry = ledger.post("Box", handOver(i));
        const auto file = readStockFile(stockPath(folder)).value;
        const auto now = ledger.snapshot("Box");
        std::vector<int> counts;
        for (const auto& balance : now.balances) // lines of the file are in the order of their names
            counts.push_back(balance.onHand);
        const auto bytes = spliceCounts(file, counts, now.position);
        const int descriptor = open(stockPath(folder).c_str(), O_WRONLY | O_TRUNC | O_CLOEXEC);
        if (write(descriptor, bytes.data(), bytes.size()) < 0)
            std::exit(5);
        close(descriptor);
        acknowledge(entry);
    }
}

} // namespace

int main(int count, char** arguments)
{
    const QCoreApplication application(count, arguments);
    if (count < 3)
        return 2;
    const std::string folder = arguments[1];
    const std::string way = count > 3 ? arguments[3] : "careful";
    try {
        const auto act = way == "lazy-journal" ? lazyJournal : way == "in-place" ? inPlace : careful;
        act(folder, std::atoi(arguments[2]));
    } catch (const Error& error) {
        std::fprintf(stderr, "%s: %s\n", error.finding().code.c_str(), error.what());
        return error.exitCode();
    }
    return 0;
}
