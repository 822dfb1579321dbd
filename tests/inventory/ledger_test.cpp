// SPDX-License-Identifier: GPL-3.0-or-later
// The ledger: all or nothing, never below zero, taken back once, found when tampered with.
#include "inventory/store/connection.hpp"
#include "inventory/store/entry_id.hpp"
#include "inventory/store/ledger.hpp"
#include "inventory/store/payload.hpp"
#include "tests/inventory/folder.hpp"
#include "tests/inventory/stores.hpp"

#include <sys/stat.h>

#include <atomic>
#include <iostream>
#include <thread>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

struct TwoLines {
    TemporaryFolder folder;
    std::string path = folder / "ledger.sqlite";
    Ledger ledger;

    explicit TwoLines(const std::string& login = "station")
        : ledger(openLedger(path, Ledger::Mode::readWrite, login))
    {
        ledger.introduce("Box", {{"A", 5, 0, 0}, {"B", 2, 0, 0}});
    }

    [[nodiscard]] int count(const std::string& line) const
    {
        for (const auto& balance : ledger.balances("Box"))
            if (balance.line == line)
                return balance.onHand;
        return -1;
    }
    /// A connection that no rule of ours guards.
    void tamper(const std::string& sql) const
    {
        const auto raw = rawConnection(path);
        withoutGuards(*raw);
        raw->execute(sql);
    }
};

Entry given(const std::vector<Movement>& movements, const std::string& person = "P-1")
{
    Entry entry;
    entry.person = person;
    entry.movements = movements;
    entry.fields = {{"profile", "adult-near"}, {"rules_hash", "0011223344556677"}};
    return entry;
}

} // namespace

BOOST_AUTO_TEST_SUITE(ledger)

BOOST_AUTO_TEST_CASE(a_new_ledger_file_is_read_by_its_owner_alone, *utf::label("PROP") * filesOnly())
{
    const TwoLines camp;
    struct stat status {
    };
    BOOST_REQUIRE(stat(camp.path.c_str(), &status) == 0);
    BOOST_TEST((status.st_mode & 07777) == 0600);
    BOOST_REQUIRE(stat((camp.path + "-wal").c_str(), &status) == 0);
    BOOST_TEST((status.st_mode & 07777) == 0600);
}

BOOST_AUTO_TEST_CASE(a_closed_ledger_is_one_file, *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    {
        auto ledger = Ledger::open(folder / "ledger.sqlite", Ledger::Mode::readWrite);
        ledger.introduce("Box", {{"A", 5, 0, 0}});
    }
    {
        const auto reader = Ledger::open(folder / "ledger.sqlite", Ledger::Mode::readOnly);
        BOOST_TEST(reader.position() == 1);
    }
    int files = 0;
    for ([[maybe_unused]] const auto& file : std::filesystem::directory_iterator(folder.path()))
        ++files;
    BOOST_TEST(files == 1);
}

BOOST_AUTO_TEST_CASE(an_entry_comes_back_as_it_was_posted, *utf::label("PROP"))
{
    TwoLines camp;
    auto entry = given({{"A", -1, "pair"}, {"B", -2, "right"}}, "P-7 \"ü\" \\ \n");
    entry.actor = "keeper";
    const auto posted = camp.ledger.post("Box", entry);
    BOOST_TEST(posted.number == 2);
    BOOST_TEST(posted.id.size() == 36U);
    BOOST_TEST(posted.id[14] == '7');
    BOOST_TEST(posted.atMs > 1'600'000'000'000);
    const auto read = camp.ledger.entry(posted.id);
    BOOST_REQUIRE(read.has_value());
    BOOST_TEST(read->person == entry.person);
    BOOST_TEST(read->actor == "keeper");
    BOOST_TEST((read->fields == entry.fields));
    BOOST_TEST((read->movements == entry.movements));
    BOOST_TEST((read->kind == EntryKind::handedOver));
    BOOST_TEST(camp.count("A") == 4);
    BOOST_TEST(camp.count("B") == 0);
    BOOST_TEST(camp.ledger.entriesAfter(1).size() == 1U);
    BOOST_TEST(!camp.ledger.entry("no id at all").has_value());
}

BOOST_AUTO_TEST_CASE(an_entry_is_posted_whole_or_not_at_all, *utf::label("PROP"))
{
    TwoLines camp;
    QS_CHECK_ERROR("unknown-line", 3, camp.ledger.post("Box", given({{"A", -1, "pair"}, {"X", -1, "pair"}})));
    QS_CHECK_ERROR("stock-short", 1, camp.ledger.post("Box", given({{"A", -1, "pair"}, {"B", -3, "pair"}})));
    QS_CHECK_ERROR("unknown-line", 3, camp.ledger.post("Other box", given({{"A", -1, "pair"}})));
    BOOST_TEST(camp.count("A") == 5);
    BOOST_TEST(camp.count("B") == 2);
    BOOST_TEST(camp.ledger.position() == 1);
    BOOST_TEST(camp.ledger.post("Box", given({{"A", -1, "pair"}})).number == 2);
    BOOST_TEST(camp.ledger.checkChain().ok);
}

BOOST_AUTO_TEST_CASE(the_refusal_names_line_and_counts, *utf::label("REG"))
{
    TwoLines camp;
    try {
        camp.ledger.post("Box", given({{"B", -3, "pair"}}));
        BOOST_ERROR("three of two were handed over");
    } catch (const Error& error) {
        const std::vector<std::string> expected{"B", "2", "3"};
        BOOST_TEST(error.finding().sentence.arguments == expected, boost::test_tools::per_element());
    }
}

BOOST_AUTO_TEST_CASE(held_and_quarantined_pairs_are_not_handed_over, *utf::label("PROP"))
{
    TwoLines camp;
    camp.tamper("UPDATE balance SET held = 1, quarantined = 1 WHERE line = 'B'");
    QS_CHECK_ERROR("stock-short", 1, camp.ledger.post("Box", given({{"B", -1, "pair"}})));
    BOOST_TEST(camp.count("B") == 2);
    QS_CHECK_ERROR("ledger-failed", 4, camp.tamper("UPDATE balance SET held = 3 WHERE line = 'B'"));
    QS_CHECK_ERROR("ledger-failed", 4, camp.tamper("UPDATE balance SET held = -1 WHERE line = 'B'"));
}

BOOST_AUTO_TEST_CASE(eight_writers_on_the_last_pairs_hand_over_exactly_those, *utf::label("PROP"))
{
    TwoLines camp;
    camp.ledger.introduce("Box", {{"C", 20, 0, 0}});
    std::atomic<int> done{0};
    std::atomic<int> refused{0};
    std::atomic<int> other{0};
    std::vector<std::thread> writers;
    for (int i = 0; i < 8; ++i)
        writers.emplace_back([&] {
            auto ledger = openLedger(camp.path, Ledger::Mode::readWrite);
            for (int k = 0; k < 10; ++k) {
                const auto code = errorOf([&] { ledger.post("Box", given({{"C", -1, "pair"}})); }).first;
                ++(code == "nothing" ? done : code == "stock-short" ? refused : other);
            }
        });
    for (auto& writer : writers)
        writer.join();
    BOOST_TEST(done == 20);
    BOOST_TEST(refused == 60);
    BOOST_TEST(other == 0);
    BOOST_TEST(camp.count("C") == 0);
    const auto chain = camp.ledger.checkChain();
    BOOST_TEST(chain.ok, chain.what);
    BOOST_TEST(chain.entries == 22);
}

BOOST_AUTO_TEST_CASE(two_programs_that_make_the_ledger_at_once_share_it, *utf::label("PROP"))
{
    for (int round = 0; round < (onServer() ? 4 : 20); ++round) {
        TemporaryFolder folder;
        std::atomic<int> failed{0};
        std::vector<std::thread> openers;
        for (int i = 0; i < 4; ++i)
            openers.emplace_back([&] {
                const auto code = errorOf([&] {
                    openLedger(folder / "ledger.sqlite", Ledger::Mode::readWrite)
                        .introduce("Box", {{"A", 3, 0, 0}});
                });
                if (code.first == "nothing")
                    return;
                ++failed;
                std::cerr << code.first + "\n";
            });
        for (auto& opener : openers)
            opener.join();
        BOOST_TEST(failed == 0);
        const auto ledger = openLedger(folder / "ledger.sqlite", Ledger::Mode::readOnly);
        BOOST_TEST(ledger.position() == 1);
        BOOST_TEST(ledger.balances("Box").at(0).onHand == 3);
    }
}

BOOST_AUTO_TEST_CASE(an_entry_is_taken_back_once_and_only_once, *utf::label("PROP"))
{
    TwoLines camp;
    const auto posted = camp.ledger.post("Box", given({{"A", -1, "pair"}, {"B", -1, "right"}}));
    Entry back;
    back.kind = EntryKind::enteredInError;
    back.cancels = posted.id;
    const auto taken = camp.ledger.post("Box", back);
    BOOST_TEST(camp.count("A") == 5);
    BOOST_TEST(camp.count("B") == 2);
    QS_CHECK_ERROR("entry-gone", 3, camp.ledger.post("Box", back));
    back.cancels = taken.id;
    QS_CHECK_ERROR("entry-gone", 3, camp.ledger.post("Box", back));
    back.cancels = "01234567-89ab-7def-8123-456789abcdef";
    QS_CHECK_ERROR("entry-gone", 3, camp.ledger.post("Box", back));
    BOOST_TEST(camp.ledger.position() == 3);
    BOOST_TEST(camp.ledger.checkChain().ok);
}

BOOST_AUTO_TEST_CASE(counts_of_an_earlier_position_are_found_again, *utf::label("PROP"))
{
    TwoLines camp;
    camp.ledger.post("Box", given({{"A", -1, "pair"}}));
    camp.ledger.introduce("Box", {{"C", 9, 0, 0}, {"A", 99, 0, 0}});
    camp.ledger.post("Box", given({{"C", -4, "pair"}}));
    const auto countsAt = [&](std::int64_t position) {
        std::string counts;
        for (const auto& balance : camp.ledger.balancesAt("Box", position))
            counts += balance.line + "=" + std::to_string(balance.onHand) + " ";
        return counts;
    };
    BOOST_TEST(countsAt(0) == "");
    BOOST_TEST(countsAt(1) == "A=5 B=2 ");
    BOOST_TEST(countsAt(2) == "A=4 B=2 ");
    BOOST_TEST(countsAt(3) == "A=4 B=2 C=9 ");
    BOOST_TEST(countsAt(4) == "A=4 B=2 C=5 ");
    BOOST_TEST(camp.ledger.snapshot("Box").position == 4);
    BOOST_TEST(camp.ledger.firstCounts("Box").at(2).onHand == 9);
}

BOOST_AUTO_TEST_CASE(ids_rise_also_when_the_clock_goes_back, *utf::label("PROP"))
{
    EntryIds ids;
    std::string last;
    for (int i = 0; i < 20'000; ++i) {
        const auto next = ids.next(i < 10'000 ? 1'700'000'005'000 : 1'700'000'000'000);
        BOOST_REQUIRE(next > last);
        last = next;
    }
    EntryIds restarted;
    restarted.startAfter(last);
    BOOST_TEST((restarted.next(1'700'000'000'000) > last));
    BOOST_TEST(idBytes(idText(last)) == last);
    BOOST_TEST(idBytes("not an id").empty());
}

BOOST_AUTO_TEST_CASE(
    the_chain_is_sha_256_over_the_hash_before_and_the_text,
    *utf::label("REF") *
        utf::description("[fips180] SHA-256 of \"abc\" and of no bytes; digests from memory"))
{
    const auto hex = [](const std::string& bytes) {
        std::string text;
        for (const char c : bytes) {
            const auto value = static_cast<unsigned char>(c);
            text += "0123456789abcdef"[value >> 4];
            text += "0123456789abcdef"[value & 15];
        }
        return text;
    };
    BOOST_TEST(hex(chainHash("a", "bc")) ==
               "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    BOOST_TEST(hex(chainHash("", "")) == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

BOOST_AUTO_TEST_CASE(a_payload_is_compact_text_with_sorted_keys, *utf::label("DER"))
{
    Entry entry;
    entry.id = "id";
    entry.number = 3;
    entry.atMs = 12;
    entry.person = "P-1";
    entry.fields = {{"b", "2"}, {"a", "x"}};
    entry.movements = {{"A", -1, "pair"}};
    const auto payload = payloadOf({entry, "Box", "S"});
    BOOST_TEST(payload == R"({"actor":"","at":12,"cancels":"","fields":{"a":"x","b":"2"},"id":"id",)"
                          R"("kind":"handed-over","movements":[{"delta":-1,"line":"A","part":"pair"}],)"
                          R"("number":3,"person":"P-1","site":"Box","station":"S"})");
    BOOST_TEST(!readPayload("{}").has_value());
    BOOST_TEST(!readPayload("no JSON").has_value());
}

BOOST_AUTO_TEST_CASE(each_way_of_tampering_is_found_at_its_entry, *utf::label("PROP"))
{
    const auto zeros = bytesInSql(std::string(32, '\0'));
    const std::pair<std::string, std::int64_t> ways[] = {
        {"UPDATE entry SET payload = replace(payload, 'P-1', 'P-2') WHERE position = 3", 3},
        {"UPDATE entry SET hash = " + zeros + " WHERE position = 2", 2},
        {"UPDATE entry SET person = 'P-9' WHERE position = 4", 4},
        {"UPDATE entry SET kind = 'counted' WHERE position = 4", 4},
        {"UPDATE entry SET at_ms = at_ms + 1 WHERE position = 2", 2},
        {"UPDATE movement SET delta = -2 WHERE entry = 3", 3},
        {"UPDATE movement SET line = 'B' WHERE entry = 3", 3},
        {"DELETE FROM movement WHERE entry = 3", 3},
        {"INSERT INTO movement VALUES (2, 2, 'Box', 'A', 1, '', 0, 0)", 2},
        {"DELETE FROM entry WHERE position = 2", 3},
        {"UPDATE entry SET number = 9 WHERE position = 4", 9}};
    for (const auto& [sql, bad] : ways) {
        TwoLines camp;
        for (int i = 0; i < 4; ++i)
            camp.ledger.post("Box", given({{"A", -1, "pair"}}));
        BOOST_REQUIRE(camp.ledger.checkChain().ok);
        camp.tamper(sql);
        const auto chain = camp.ledger.checkChain();
        BOOST_TEST(!chain.ok, sql);
        BOOST_TEST(chain.firstBad.value_or(0) == bad, sql << ": " << chain.what);
    }
}

BOOST_AUTO_TEST_CASE(a_count_that_no_movement_explains_is_found, *utf::label("PROP"))
{
    TwoLines camp;
    camp.tamper("UPDATE balance SET on_hand = 4 WHERE line = 'B'");
    const auto chain = camp.ledger.checkChain();
    BOOST_TEST(!chain.ok);
    BOOST_TEST(chain.what.find("line B") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(entries_and_movements_refuse_to_be_changed, *utf::label("PROP"))
{
    TwoLines camp;
    const auto raw = rawConnection(camp.path);
    for (const auto* sql : {"UPDATE entry SET person = 'X'", "DELETE FROM entry",
                            "UPDATE movement SET delta = 0", "DELETE FROM movement", "DELETE FROM balance"})
        QS_CHECK_ERROR("ledger-failed", 4, raw->execute(sql));
}

BOOST_AUTO_TEST_CASE(a_person_is_forgotten_and_the_chain_holds, *utf::label("PROP"))
{
    TwoLines camp("keeper");
    camp.ledger.putPersons({{"P-1", "Somebody"}});
    camp.ledger.putPersons({{"P-1", "Somebody Else"}});
    camp.ledger.post("Box", given({{"A", -1, "pair"}}));
    BOOST_TEST(camp.ledger.person("P-1")->name == "Somebody Else");
    BOOST_TEST(camp.ledger.forgetPerson("P-1").known);
    BOOST_TEST(!camp.ledger.forgetPerson("P-1").known);
    BOOST_TEST(!camp.ledger.person("P-1").has_value());
    BOOST_TEST(camp.ledger.checkChain().ok);
}

BOOST_AUTO_TEST_SUITE_END()
