// SPDX-License-Identifier: GPL-3.0-or-later
// Ledgers of several camps and stations brought together.
#include "inventory/store/connection.hpp"
#include "inventory/store/merge.hpp"
#include "tests/inventory/folder.hpp"
#include "tests/inventory/form_one.hpp"
#include "tests/inventory/stores.hpp"

#include <algorithm>
#include <memory>
#include <set>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

/// A ledger of a site in a folder of its own.
struct Box {
    TemporaryFolder folder;
    std::string path = folder / "ledger.sqlite";
    Ledger ledger = openLedger(path, Ledger::Mode::readWrite, "keeper");
    std::string site;

    explicit Box(const std::string& name,
                 const std::vector<Balance>& counts = {{"A", 5, 0, 0}, {"B", 2, 0, 0}})
        : site(name)
    {
        ledger.introduce(site, counts);
    }
    /// A copy of another box, as a second station or wrongly as the moved first one.
    Box(const Box& other, bool second) : path(copied(other, folder, second)), site(other.site) {}
    static std::string copied(const Box& other, const TemporaryFolder& folder, bool second)
    {
        copyLedgerTo(other.ledger, other.path, folder / "ledger.sqlite", second);
        return folder / "ledger.sqlite";
    }
    Entry give(const std::string& line, int count = 1, const std::string& reason = "r")
    {
        Entry entry;
        entry.person = "P-1";
        entry.movements = {{line, -count, "pair"}};
        entry.texts = {{"reason", reason}};
        return ledger.post(site, entry);
    }
    MergeReport take(const Box& other, bool dryRun = false)
    {
        return mergeLedger(ledger, other.ledger, dryRun);
    }
    [[nodiscard]] Ledger reader() const { return openLedger(path, Ledger::Mode::readOnly); }
};

/// Counts of the sites and the ids and words of all entries: what must not depend on the order.
std::string contentOf(const Ledger& ledger, const std::vector<std::string>& sites)
{
    std::string text;
    for (const auto& name : sites)
        for (const auto& balance : ledger.balances(name))
            text += name + " " + balance.line + "=" + std::to_string(balance.onHand) + "," +
                    std::to_string(balance.held) + "," + std::to_string(balance.quarantined) + "\n";
    std::set<std::string> entries;
    for (const auto& entry : ledger.entriesAfter(0))
        if (entry.site != "Base")
            entries.insert(entry.id + (entry.texts.empty() ? "" : entry.texts.begin()->second));
    for (const auto& entry : entries)
        text += entry + "\n";
    return text;
}

} // namespace

BOOST_AUTO_TEST_SUITE(merging)

BOOST_AUTO_TEST_CASE(any_order_of_merging_gives_the_same_and_twice_changes_nothing, *utf::label("PROP"))
{
    Box north("North");
    Box south("South");
    north.give("A", 2);
    south.give("B");
    Entry hold;
    hold.kind = EntryKind::held;
    hold.movements = {{"A", 0, "", 1, 0}};
    south.ledger.post("South", hold);
    Box second(north, true);
    Entry out;
    out.kind = EntryKind::transferredOut;
    out.fields = {{"to", "South"}};
    out.movements = {{"A", -1, ""}};
    const auto sent = north.ledger.post("North", out);
    Entry in = out;
    in.kind = EntryKind::transferredIn;
    in.fields = {{"from", "North"}, {"sent", sent.id}};
    in.movements = {{"A", 1, ""}};
    south.ledger.post("South", in);
    second.give("B");
    Entry undo;
    undo.kind = EntryKind::enteredInError;
    undo.cancels = second.ledger.entriesAfter(0).at(1).id; // made by the first station
    second.ledger.post("North", undo);

    std::vector<const Box*> boxes{&north, &south, &second};
    std::sort(boxes.begin(), boxes.end());
    std::set<std::string> contents;
    int orders = 0;
    do {
        Box base("Base", {});
        for (const auto* box : boxes)
            (void)base.take(*box);
        const auto once = contentOf(base.ledger, {"North", "South"});
        for (const auto* box : boxes)
            BOOST_TEST(base.take(*box).added == 0);
        BOOST_TEST(contentOf(base.ledger, {"North", "South"}) == once);
        BOOST_TEST(base.ledger.checkChain().ok);
        BOOST_TEST(base.ledger.checkChain().entries == 3 + 4 + 2); // of north, south, the second station
        contents.insert(once);
        ++orders;
    } while (std::next_permutation(boxes.begin(), boxes.end()));
    BOOST_TEST(orders == 6);
    BOOST_TEST(contents.size() == 1U);
    BOOST_TEST(contents.begin()->find("North A=4,0,0") != std::string::npos);
    BOOST_TEST(contents.begin()->find("North B=1,0,0") != std::string::npos);
    BOOST_TEST(contents.begin()->find("South A=6,1,0") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(merging_goes_both_ways_and_through_a_third, *utf::label("PROP"))
{
    Box north("North");
    Box south("South");
    north.give("A");
    south.give("B");
    (void)north.take(south);
    (void)south.take(north);
    Box base("Base", {});
    BOOST_TEST(base.take(south).added == 4); // North's entries came with it
    BOOST_TEST(base.take(north).added == 0);
    north.give("A");
    const auto report = base.take(north);
    BOOST_TEST(report.added == 1);
    BOOST_TEST(report.known == 4);
    BOOST_TEST(report.bySite.at("North") == 1);
    BOOST_TEST(report.byStation.at(north.ledger.station()) == 1);
    BOOST_TEST(north.ledger.balances("North").at(0).onHand == base.ledger.balances("North").at(0).onHand);
}

BOOST_AUTO_TEST_CASE(a_ledger_of_form_1_is_taken_over_as_it_is, *utf::label("PROP"))
{
    TemporaryFolder folder;
    const auto old = Ledger::open(formOne(folder.path()), Ledger::Mode::readOnly);
    Box base("Base", {});
    BOOST_TEST(mergeLedger(base.ledger, old).added == formOneEntries);
    BOOST_TEST(base.ledger.checkChain().ok);
    BOOST_TEST(mergeLedger(base.ledger, old).known == formOneEntries);
    BOOST_TEST(base.ledger.balances(formOneSite).size() == 7U);
}

BOOST_AUTO_TEST_CASE(a_dry_run_says_what_would_come_and_writes_nothing, *utf::label("PROP"))
{
    Box north("North");
    Box base("Base", {});
    north.give("A");
    auto reader = base.reader();
    BOOST_TEST(mergeLedger(reader, north.ledger, true).added == 2);
    BOOST_TEST(base.ledger.position() == 0);
    QS_CHECK_ERROR("ledger-unwritable", 4, mergeLedger(reader, north.ledger));
    QS_CHECK_ERROR("merge-itself", 2, base.take(base));
}

BOOST_AUTO_TEST_CASE(a_second_station_on_the_same_pieces_is_told_and_an_oversold_line_refused,
                     *utf::label("PROP"))
{
    Box north("North");
    Box second(north, true);
    north.give("A");
    second.give("A");
    Box base("Base", {});
    BOOST_TEST(base.take(north).findings.empty());
    const auto report = base.take(second);
    BOOST_REQUIRE(report.findings.size() == 1U);
    BOOST_TEST(report.findings[0].code == "merge-two-stations");
    const auto last = north.give("B", 2);
    const auto other = second.give("B", 1);
    (void)base.take(north);
    const auto before = contentOf(base.ledger, {"North"});
    try {
        (void)base.take(second);
        BOOST_ERROR("the line was oversold");
    } catch (const Error& error) {
        BOOST_TEST(error.finding().code == "merge-below-zero");
        BOOST_TEST(error.finding().sentence.arguments.at(0) == "B");
        BOOST_TEST(error.finding().sentence.arguments.at(2) == other.id);
        BOOST_TEST(error.finding().sentence.arguments.at(3) == last.id);
    }
    BOOST_TEST(contentOf(base.ledger, {"North"}) == before);
    QS_CHECK_ERROR("merge-below-zero", 3, base.take(second, true));
}

BOOST_AUTO_TEST_CASE(a_copied_folder_used_twice_under_one_station_is_told_and_nothing_is_lost,
                     *utf::label("PROP"))
{
    Box north("North");
    north.give("A");
    Box copy(north, false);
    north.give("A");
    copy.give("B");
    Box base("Base", {});
    (void)base.take(north);
    const auto before = contentOf(base.ledger, {"North"});
    QS_CHECK_ERROR("merge-fork", 3, base.take(copy));
    QS_CHECK_ERROR("merge-fork", 3, north.take(copy));
    BOOST_TEST(contentOf(base.ledger, {"North"}) == before);
    BOOST_TEST(copy.ledger.checkChain().ok);
    BOOST_TEST(north.ledger.checkChain().ok);
}

BOOST_AUTO_TEST_CASE(a_copy_that_went_on_alone_is_taken_over_and_told, *utf::label("PROP"))
{
    Box north("North");
    north.give("A");
    Box copy(north, false);
    copy.give("B");
    const auto report = north.take(copy);
    BOOST_TEST(report.added == 1);
    BOOST_TEST(report.findings.at(0).code == "merge-own-station");
    BOOST_TEST(north.give("B").number == 4);
    BOOST_TEST(north.ledger.checkChain().ok);
}

BOOST_AUTO_TEST_CASE(the_same_id_with_another_content_is_refused_and_named, *utf::label("PROP"))
{
    Box north("North");
    const auto given = north.give("A");
    Box base("Base", {});
    (void)base.take(north);
    const auto raw = rawConnection(base.path);
    withoutGuards(*raw);
    raw->execute("UPDATE entry SET hash = " + bytesInSql(std::string(32, 'x')) +
                 " WHERE kind = 'handed-over'");
    try {
        (void)base.take(north);
        BOOST_ERROR("a changed entry was taken for the same");
    } catch (const Error& error) {
        BOOST_TEST(error.finding().code == "merge-other-hash");
        BOOST_TEST(error.finding().sentence.arguments.at(0) == given.id);
    }
    QS_CHECK_ERROR("merge-source-broken", 3, mergeLedger(north.ledger, base.ledger));
}

BOOST_AUTO_TEST_CASE(an_entry_taken_back_at_two_stations_is_named, *utf::label("PROP"))
{
    Box north("North");
    const auto given = north.give("A");
    Box second(north, true);
    Entry undo;
    undo.kind = EntryKind::enteredInError;
    undo.cancels = given.id;
    north.ledger.post("North", undo);
    second.ledger.post("North", undo);
    Box base("Base", {});
    (void)base.take(north);
    QS_CHECK_ERROR("merge-taken-back-twice", 3, base.take(second));
    BOOST_TEST(base.ledger.balances("North").at(0).onHand == 5);
}

BOOST_AUTO_TEST_CASE(what_was_forgotten_in_one_ledger_is_forgotten_in_the_other, *utf::label("PROP"))
{
    Box north("North");
    north.ledger.putPersons({{"P-1", "Somebody"}});
    north.give("A", 1, "said by Quintilla");
    Box base("Base", {});
    (void)base.take(north);
    BOOST_TEST(base.ledger.entriesAfter(1).at(0).texts.at("reason") == "said by Quintilla");
    BOOST_TEST(!base.ledger.person("P-1").has_value()); // names stay at their camp
    north.ledger.forgetPerson("P-1");
    BOOST_TEST(base.take(north).blanked == 1);
    BOOST_TEST(base.ledger.entriesAfter(1).at(0).texts.empty());
    BOOST_TEST((onServer() || readBytes(base.path).find("Quintilla") == std::string::npos));
    BOOST_TEST(base.ledger.checkChain().ok);
    Box other("Other", {});
    (void)other.take(north); // blank from the beginning
    BOOST_TEST(other.ledger.checkChain().ok);
}

BOOST_AUTO_TEST_SUITE_END()
