// SPDX-License-Identifier: GPL-3.0-or-later
// Older forms of the ledger, held and quarantined counts, words beside the chain, leftovers.
#include "inventory/store/connection.hpp"
#include "inventory/store/ledger.hpp"
#include "inventory/store/migrations.hpp"
#include "inventory/store/payload.hpp"
#include "inventory/store/place.hpp"
#include "tests/inventory/folder.hpp"
#include "tests/inventory/form_one.hpp"
#include "tests/inventory/stores.hpp"

#include <sys/stat.h>

#include <chrono>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

constexpr auto writing = Ledger::Mode::readWrite;
constexpr auto reading = Ledger::Mode::readOnly;
const std::string site = formOneSite;

int onHand(const Ledger& ledger, const std::string& line)
{
    for (const auto& balance : ledger.balances(site))
        if (balance.line == line)
            return balance.onHand;
    return -1;
}

struct Bench {
    TemporaryFolder folder;
    std::string path = folder / "ledger.sqlite";
    Ledger ledger;
    explicit Bench(const std::string& login = "station") : ledger(openLedger(path, writing, login))
    {
        ledger.introduce(site, {{"A", 5, 0, 0}, {"B", 2, 0, 0}});
    }

    [[nodiscard]] Balance of(const std::string& line) const
    {
        for (const auto& balance : ledger.balances(site))
            if (balance.line == line)
                return balance;
        return {};
    }
    Entry post(EntryKind kind, const std::vector<Movement>& movements,
               const std::map<std::string, std::string>& texts = {}, const std::string& person = "P-1")
    {
        Entry entry;
        entry.kind = kind;
        entry.person = person;
        entry.movements = movements;
        entry.texts = texts;
        return ledger.post(site, entry);
    }
};

/// The files a ledger is kept in; of a server those of its tables.
std::vector<std::string> filesOf(const std::string& path)
{
    if (!onServer())
        return {path, path + "-wal"};
    const auto raw = rawConnection(path);
    raw->execute("CHECKPOINT");
    std::vector<std::string> files;
    for (const auto& file : std::filesystem::directory_iterator(
             server().home() + "/d/base/" +
             raw->textOf("SELECT oid FROM pg_database WHERE datname = current_database()")))
        files.push_back(file.path().string());
    return files;
}

int rowsIn(const std::string& path, const std::string& sql)
{
    return static_cast<int>(Connection(path, Connection::Access::readWrite, 200).wholeOf(sql));
}

} // namespace

BOOST_AUTO_TEST_SUITE(forms)

BOOST_AUTO_TEST_CASE(a_ledger_of_form_1_is_brought_up_after_a_copy_was_made,
                     *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    const auto path = formOne(folder.path());
    {
        auto ledger = Ledger::open(path, writing);
        BOOST_TEST(ledger.migratedFrom() == path + ".form-1");
        BOOST_TEST(ledger.checkChain().ok);
        BOOST_TEST(ledger.checkChain().entries == 3);
        BOOST_TEST(onHand(ledger, "D-100-62") == 2);
        BOOST_TEST(ledger.entriesAfter(1).at(0).fields.at("reason") == "asked for it");
        BOOST_TEST(ledger.toForget("K-1").older == 1); // its reason stands in the chain
        BOOST_TEST(ledger.toForget("K-2").older == 0);
        Entry kept;
        kept.kind = EntryKind::held;
        kept.movements = {{"D-100-62", 0, "", 1, 0}};
        kept.texts = {{"note", "for the afternoon"}};
        BOOST_TEST(ledger.post(site, kept).number == 4);
        BOOST_TEST(ledger.checkChain().ok);
    }
    BOOST_TEST(Ledger::open(path, writing).migratedFrom() == "");
    struct stat status {
    };
    BOOST_REQUIRE(stat((path + ".form-1").c_str(), &status) == 0);
    BOOST_TEST((status.st_mode & 07777) == 0600);
    BOOST_TEST(rowsIn(path + ".form-1", "PRAGMA user_version") == 1);
    BOOST_TEST(rowsIn(path + ".form-1", "SELECT count(*) FROM entry") == 3);
    const auto copy = Ledger::open(path + ".form-1", reading);
    BOOST_TEST(copy.checkChain().ok);
}

BOOST_AUTO_TEST_CASE(a_migrated_ledger_has_the_same_schema_as_a_new_one, *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    const TemporaryFolder second;
    const auto path = formOne(folder.path());
    const auto pathOfTwo = formTwo(second.path());
    (void)Ledger::open(path, writing);
    (void)Ledger::open(pathOfTwo, writing);
    (void)Ledger::open(folder / "new", writing);
    const auto shape = [](const std::string& file) {
        Connection connection(file, Connection::Access::readWrite, 200);
        auto query = connection.prepare("SELECT s.name, p.name || ' ' || p.type || ' ' || p.\"notnull\" || ' "
                                        "' || coalesce(p.dflt_value, '-') "
                                        "|| ' ' || p.pk FROM sqlite_schema AS s JOIN "
                                        "pragma_table_info(s.name) AS p ORDER BY s.name, p.cid");
        query.run();
        std::string text;
        while (query.next())
            text += query.text(0) + ": " + query.text(1) + "\n";
        query.finish();
        return text +
               connection.textOf("SELECT group_concat(sql, ';') FROM (SELECT sql FROM sqlite_schema WHERE "
                                 "type IN ('trigger', 'index') ORDER BY name)");
    };
    BOOST_TEST(shape(path) == shape(folder / "new"));
    BOOST_TEST(shape(pathOfTwo) == shape(folder / "new"));
}

BOOST_AUTO_TEST_CASE(a_ledger_of_form_2_is_read_as_it_is_and_brought_up_for_writing, *utf::label("PROP"))
{
    TemporaryFolder folder;
    const auto path = formTwo(folder.path());
    {
        const auto ledger = Ledger::open(path, reading);
        BOOST_TEST(ledger.checkChain().ok);
        BOOST_TEST(ledger.entriesAfter(0).size() == 5U);
        BOOST_TEST(ledger.entriesHolding().size() == 2U);
        BOOST_TEST(ledger.entriesOfPerson("K-2").at(0).texts.at("reason") == "sudden loss");
    }
    BOOST_TEST(rowsIn(path, "PRAGMA user_version") == 2);
    auto ledger = Ledger::open(path, writing);
    BOOST_TEST(ledger.migratedFrom() == path + ".form-2");
    BOOST_TEST(ledger.checkChain().ok);
    BOOST_TEST(ledger.entriesOfKinds({EntryKind::referred}).size() == 1U);
    BOOST_TEST(onHand(ledger, "A") == 53);
}

BOOST_AUTO_TEST_CASE(a_ledger_of_form_1_opened_for_reading_is_read_and_left_as_it_was,
                     *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    const auto path = formOne(folder.path());
    const auto before = readBytes(path);
    {
        const auto ledger = Ledger::open(path, reading);
        BOOST_TEST(ledger.checkChain().ok);
        BOOST_TEST(ledger.entriesAfter(0).size() == 3U);
        BOOST_TEST(ledger.card(site, "D-100-62").size() == 2U);
    }
    BOOST_TEST((readBytes(path) == before));
    BOOST_TEST(!std::filesystem::exists(path + ".form-1"));
}

BOOST_AUTO_TEST_CASE(a_moved_ledger_of_form_1_is_brought_up_only_when_it_is_claimed,
                     *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    const auto path = formOne(folder.path(), false);
    auto ledger = Ledger::open(path, writing);
    BOOST_TEST(ledger.moved());
    BOOST_TEST(ledger.checkChain().ok);
    BOOST_TEST(rowsIn(path, "PRAGMA user_version") == 1);
    ledger.claimPlace();
    BOOST_TEST(rowsIn(path, "PRAGMA user_version") == 3);
    BOOST_TEST(std::filesystem::exists(path + ".form-1"));
    Entry given;
    given.movements = {{"D-100-62", -1, "pair"}};
    BOOST_TEST(ledger.post(site, given).number == 4);
    BOOST_TEST(ledger.checkChain().ok);
}

BOOST_AUTO_TEST_CASE(when_the_copy_cannot_be_made_nothing_is_brought_up, *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    const auto path = formOne(folder.path());
    std::filesystem::create_directory(path + ".form-1"); // the name is taken: the next one is
    BOOST_TEST(Ledger::open(path, writing).migratedFrom() == path + ".form-1-2");
    TemporaryFolder other;
    writeBytes(other / "taken", "x");
    const auto ledger = Ledger::open(path, writing);
    QS_CHECK_ERROR("file-exists", 3, ledger.copyTo(other / "taken"));
    QS_CHECK_ERROR("file-unwritable", 4, ledger.copyTo(other / "no folder/copy"));
    BOOST_TEST(readBytes(other / "taken") == "x");
}

BOOST_AUTO_TEST_CASE(held_and_quarantined_pieces_are_counted_but_not_given, *utf::label("PROP"))
{
    Bench bench;
    bench.post(EntryKind::held, {{"A", 0, "", 3, 0}});
    bench.post(EntryKind::quarantined, {{"A", 0, "", 0, 1}}, {{"reason", "scratched"}});
    BOOST_TEST(bench.of("A").onHand == 5);
    BOOST_TEST(bench.of("A").held == 3);
    BOOST_TEST(bench.of("A").quarantined == 1);
    bench.post(EntryKind::handedOver, {{"A", -1, "pair"}});
    QS_CHECK_ERROR("stock-short", 1, bench.post(EntryKind::handedOver, {{"A", -1, "pair"}}));
    QS_CHECK_ERROR("stock-short", 1, bench.post(EntryKind::held, {{"A", 0, "", 1, 0}}));
    QS_CHECK_ERROR("stock-short", 1, bench.post(EntryKind::released, {{"A", 0, "", 0, -2}}));
    bench.post(EntryKind::handedOver, {{"A", -1, "pair", -1, 0}}); // one of those held
    BOOST_TEST(bench.of("A").held == 2);
    BOOST_TEST(bench.ledger.checkChain().ok);
    rawConnection(bench.path)->execute("UPDATE balance SET held = 0 WHERE line = 'A'");
    BOOST_TEST(!bench.ledger.checkChain().ok);
}

BOOST_AUTO_TEST_CASE(taking_back_turns_every_count_round, *utf::label("PROP"))
{
    Bench bench;
    const auto back = bench.post(EntryKind::returned, {{"A", 1, "pair", 0, 1}});
    BOOST_TEST(bench.of("A").quarantined == 1);
    Entry undo;
    undo.kind = EntryKind::enteredInError;
    undo.cancels = back.id;
    bench.ledger.post(site, undo);
    BOOST_TEST(bench.of("A").onHand == 5);
    BOOST_TEST(bench.of("A").quarantined == 0);
}

BOOST_AUTO_TEST_CASE(an_entry_that_is_not_of_its_kind_is_refused, *utf::label("PROP"))
{
    Bench bench;
    QS_CHECK_ERROR("entry-form", 3, bench.post(EntryKind::received, {{"A", -1, ""}}));
    QS_CHECK_ERROR("entry-form", 3, bench.post(EntryKind::handedOver, {}));
    QS_CHECK_ERROR("entry-form", 3, bench.post(EntryKind::writtenOff, {{"A", -1, ""}}));
    QS_CHECK_ERROR("entry-form", 3, bench.post(EntryKind::declined, {}, {}, ""));
    QS_CHECK_ERROR("entry-form", 3, bench.post(EntryKind::enteredInError, {}));
    BOOST_TEST(bench.ledger.position() == 1);
}

BOOST_AUTO_TEST_CASE(first_counts_are_not_taken_back, *utf::label("PROP"))
{
    Bench bench;
    Entry undo;
    undo.kind = EntryKind::enteredInError;
    undo.cancels = bench.ledger.entriesAfter(0).at(0).id;
    QS_CHECK_ERROR("entry-gone", 3, bench.ledger.post(site, undo));
}

BOOST_AUTO_TEST_CASE(words_stand_beside_the_chain_and_are_checked_while_they_are_there, *utf::label("PROP"))
{
    Bench bench;
    const auto posted =
        bench.post(EntryKind::handedOver, {{"A", -1, "pair"}}, {{"reason", "Überzogen \xff"}, {"note", ""}});
    const auto read = bench.ledger.entry(posted.id);
    BOOST_REQUIRE(read.has_value());
    BOOST_TEST(read->texts.size() == 1U);
    BOOST_TEST(read->texts.at("reason") == posted.texts.at("reason"));
    BOOST_TEST(bench.ledger.entriesAfter(1).at(0).texts.at("reason") == posted.texts.at("reason"));
    BOOST_TEST(bench.ledger.checkChain().ok);
    const auto raw = rawConnection(bench.path);
    BOOST_TEST(raw->textOf("SELECT payload FROM entry WHERE position = 2").find("berzogen") ==
               std::string::npos);
    QS_CHECK_ERROR("ledger-failed", 4, raw->execute("UPDATE remark SET words = 'other'"));
    QS_CHECK_ERROR("ledger-failed", 4, raw->execute("DELETE FROM remark"));
    withoutGuards(*raw);
    raw->execute("UPDATE remark SET words = 'other'");
    BOOST_TEST(bench.ledger.checkChain().firstBad.value_or(0) == 2);
}

BOOST_AUTO_TEST_CASE(a_forgotten_person_leaves_no_byte_and_a_valid_chain, *utf::label("PROP"))
{
    Bench bench("keeper");
    const std::string name = "Umberta Quellenbach";
    const std::string words = "says the neighbour Xanthe saw it";
    bench.ledger.putPersons({{"P-1", name}});
    bench.post(EntryKind::handedOver, {{"A", -1, "pair"}}, {{"reason", words}});
    bench.post(EntryKind::handedOver, {{"B", -1, "pair"}}, {{"reason", "another person's"}}, "P-2");
    const auto before = bench.ledger.balances(site);
    const auto erased = bench.ledger.forgetPerson("P-1");
    BOOST_TEST(erased.known);
    BOOST_TEST(erased.texts == 1);
    BOOST_TEST(erased.entries == 1);
    bool othersWords = false;
    for (const auto& file : filesOf(bench.path)) {
        const auto bytes = readBytes(file);
        BOOST_TEST(bytes.find(name) == std::string::npos, file);
        BOOST_TEST(bytes.find(words) == std::string::npos, file);
        othersWords = othersWords || bytes.find("another person's") != std::string::npos;
    }
    BOOST_TEST(othersWords);
    BOOST_TEST((onServer() || std::filesystem::file_size(bench.path + "-wal") == 0U));
    BOOST_TEST(bench.ledger.checkChain().ok);
    BOOST_TEST(bench.ledger.entriesAfter(1).at(0).person == "P-1");
    BOOST_TEST(bench.ledger.entriesAfter(1).at(0).texts.empty());
    BOOST_TEST(bench.of("A").onHand == before.at(0).onHand);
    BOOST_TEST(!bench.ledger.forgetPerson("P-1").known);
}

BOOST_AUTO_TEST_CASE(all_of_several_entries_are_posted_or_none, *utf::label("PROP"))
{
    Bench bench;
    Entry out;
    out.kind = EntryKind::transferredOut;
    out.fields = {{"to", "Elsewhere"}};
    out.movements = {{"A", -2, ""}};
    auto tooMany = out;
    tooMany.movements = {{"B", -3, ""}};
    QS_CHECK_ERROR("stock-short", 1, bench.ledger.postAll(site, {out, tooMany}));
    QS_CHECK_ERROR("ledger-went-on", 4, bench.ledger.postAll(site, {out}, 7));
    BOOST_TEST(bench.ledger.position() == 1);
    BOOST_TEST(bench.ledger.postAll(site, {out, out}, 1).size() == 2U);
    BOOST_TEST(bench.of("A").onHand == 1);
}

BOOST_AUTO_TEST_CASE(a_stock_card_shows_every_movement_with_its_balance, *utf::label("DER"))
{
    Bench bench;
    bench.post(EntryKind::handedOver, {{"A", -1, "pair"}}, {{"reason", "why"}});
    bench.post(EntryKind::received, {{"A", 4, ""}, {"B", 1, ""}});
    bench.post(EntryKind::held, {{"A", 0, "", 1, 0}});
    const auto card = bench.ledger.card(site, "A");
    BOOST_REQUIRE(card.size() == 4U);
    const std::int64_t balances[] = {5, 4, 8, 8};
    for (std::size_t i = 0; i < card.size(); ++i)
        BOOST_TEST(card[i].balance == balances[i]);
    BOOST_TEST(card[1].entry.texts.at("reason") == "why");
    BOOST_TEST(card[3].movement.held == 1);
    BOOST_TEST(bench.ledger.card(site, "none").empty());
}

BOOST_AUTO_TEST_CASE(what_a_killed_program_left_unnamed_is_cleared_away_when_it_is_old,
                     *utf::label("PROP") * filesOnly())
{
    Bench bench;
    const auto old = bench.path + ".01234567-89ab-4def-8123-456789abcdef.new";
    const auto young = bench.path + ".11234567-89ab-4def-8123-456789abcdef.new";
    const auto full = bench.path + ".21234567-89ab-4def-8123-456789abcdef.new";
    const auto other = bench.path + ".spreadsheet.new";
    for (const auto& path : {old, young, full, other})
        writeBytes(path, path == full ? "something" : "");
    for (const auto& path : {old, full, other})
        std::filesystem::last_write_time(path, std::filesystem::file_time_type::clock::now() -
                                                   std::chrono::minutes(5));
    (void)Ledger::open(bench.path, reading);
    BOOST_TEST(std::filesystem::exists(old));
    (void)Ledger::open(bench.path, writing);
    BOOST_TEST(!std::filesystem::exists(old));
    for (const auto& path : {young, full, other})
        BOOST_TEST(std::filesystem::exists(path));
}

BOOST_AUTO_TEST_CASE(a_second_station_goes_on_under_a_number_row_of_its_own,
                     *utf::label("PROP") * filesOnly())
{
    Bench bench;
    TemporaryFolder there;
    bench.ledger.copyTo(there / "ledger.sqlite");
    auto second = Ledger::open(there / "ledger.sqlite", writing);
    BOOST_TEST(second.moved());
    second.becomeSecondStation();
    BOOST_TEST(!second.moved());
    BOOST_TEST(second.station() != bench.ledger.station());
    Entry given;
    given.movements = {{"A", -1, "pair"}};
    BOOST_TEST(second.post(site, given).number == 1);
    BOOST_TEST(second.checkChain().ok);
}

BOOST_AUTO_TEST_SUITE_END()
